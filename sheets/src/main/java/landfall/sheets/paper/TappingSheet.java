// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.paper;

import java.util.List;
import landfall.sheets.cut.Tapping;
import landfall.working.Step;

/** The sheet that a hole is drilled and tapped from: as a page to print, as PDF, and as plain text. */
public final class TappingSheet {
    private TappingSheet() {}

    /** XHTML with its drawings and its style inside; working: the steps of the answer, of which the chief are shown. */
    public static String html(Tapping tapping, List<Step> working, SheetOrder order) {
        return TappingPage.of(new TappingWords(tapping, working, order).content(), order.paper(), order.foot());
    }

    /** The same sheet as PDF: the same bytes for the same job and order. */
    public static byte[] pdf(Tapping tapping, List<Step> working, SheetOrder order) {
        return Press.print(html(tapping, working, order));
    }

    /** The same as plain text of 80 columns, without its drawings. */
    public static String text(Tapping tapping, List<Step> working, SheetOrder order) {
        return new TappingText(new TappingWords(tapping, working, order).content(), order.foot()).write();
    }
}
