// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.paper;

import java.util.List;
import landfall.dialling.DialAsk;
import landfall.dialling.DialFindings;
import landfall.fault.Caution;
import landfall.tap.Tap;

/** The sheet of a dialling-in: what to turn, the dials as read, every reading. As a page to print, and as PDF. */
public final class DialSheet {
    private DialSheet() {}

    /**
     * What was dialled and found.
     *
     * @param cautions what the readings cannot tell, and what was assumed
     */
    public record Dialling(Tap tap, DialAsk ask, DialFindings found, List<Caution> cautions) {
        public Dialling {
            cautions = List.copyOf(cautions);
        }
    }

    /** XHTML with its drawings and its style inside; needs nothing beside it. */
    public static String html(Dialling dialling, SheetOrder order) {
        return new ReadingsPage(dialling, order).write();
    }

    /** The same sheet as PDF: the same bytes for the same readings and order. */
    public static byte[] pdf(Dialling dialling, SheetOrder order) {
        return Press.print(html(dialling, order));
    }
}
