// SPDX-License-Identifier: Apache-2.0
package landfall.tap.mark;

import java.util.List;
import java.util.Optional;
import landfall.fault.Caution;
import landfall.fault.OutOfRange;
import landfall.quantity.Limits;
import landfall.quantity.UnitSystem;
import landfall.thread.CallOut;
import landfall.thread.ScrewThread;
import landfall.working.Pen;

/**
 * The limits of a tap that its mark stands for.
 *
 * @param pitch of its pitch diameter; an end that the mark leaves open is null
 * @param major of its major diameter over the crests; open where no rule is held
 */
public record TapZone(TapMark mark, Limits pitch, Limits major, List<Caution> cautions) {
    static final Limits OPEN = new Limits(null, null);

    public TapZone {
        cautions = List.copyOf(cautions);
    }

    /** The tap's limits; refused where the mark does not belong to the thread or its table is not held. */
    public static TapZone of(TapMark mark, CallOut callOut, Pen pen) {
        ScrewThread thread = callOut.thread();
        if (mark instanceof TapMark.Limit limit) {
            return limit.mark().system() == UnitSystem.INCH
                    ? GroundTap.zone(limit, thread, pen)
                    : MetricTap.zone(limit, callOut, pen);
        }
        if (mark instanceof TapMark.SevenG sevenG) {
            return MetricTap.zone(sevenG, callOut, pen);
        }
        if (mark instanceof TapMark.Own own) {
            return own(own, pen);
        }
        if (thread.family().system() != UnitSystem.INCH) {
            throw new OutOfRange(
                    "marking",
                    mark.words(),
                    "D5, ISO 2 or 6H on a metric thread",
                    "read the mark again, or give the tap's own limits");
        }
        return mark instanceof TapMark.Oversize oversize
                ? GroundTap.zone(oversize, thread, pen)
                : CutThreadTap.zone(mark, thread, pen);
    }

    private static TapZone own(TapMark.Own own, Pen pen) {
        Optional.ofNullable(own.pitch().min()).ifPresent(min -> pen.write(TapZoneRules.OWN_MIN, min.mm()));
        Optional.ofNullable(own.pitch().max()).ifPresent(max -> pen.write(TapZoneRules.OWN_MAX, max.mm()));
        return new TapZone(own, own.pitch(), OPEN, List.of());
    }
}
