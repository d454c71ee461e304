// SPDX-License-Identifier: Apache-2.0
package landfall.thread.insert;

import landfall.thread.CallOut;
import landfall.thread.Profile;
import landfall.thread.Side;
import landfall.thread.metric.MetricReader;
import landfall.thread.scan.Cursor;
import landfall.thread.scan.InchHead;
import landfall.thread.unified.UnifiedReader;
import landfall.working.Pen;

/** Reads what follows STI (or EG, as German drawings mark it): a Unified or metric call-out of a hole. */
public final class InsertReader {
    private InsertReader() {}

    public static InsertCallOut read(Cursor c) {
        c.separators();
        int start = c.at();
        CallOut nominal;
        if (c.take('M')) {
            nominal = MetricReader.read(c);
        } else {
            InchHead head = InchHead.read(c);
            c.separators();
            nominal = UnifiedReader.read(c, head);
        }
        return of(c, start, nominal);
    }

    /** The insert hole of a nominal thread that was read; refused where there is no such hole. */
    public static InsertCallOut of(Cursor c, int start, CallOut nominal) {
        if (!nominal.thread().profile().equals(Profile.ISO_60)) {
            throw c.refuse(
                    start,
                    "asks for an insert hole of a thread that has none at character " + (start + 1),
                    "name a Unified or metric thread, as in STI 1/4-20 UNC-2B or STI M6x1-5H");
        }
        if (nominal.classes().size() > 1
                || nominal.limits(Side.INTERNAL, Pen.NONE).isEmpty()) {
            throw c.refuse(start, "gives an insert hole the class of a screw", "give 2B or 3B, 4H5H or 5H, or none");
        }
        return new InsertCallOut(nominal);
    }
}
