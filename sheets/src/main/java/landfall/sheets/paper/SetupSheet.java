// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.paper;

import landfall.envelope.Errors;
import landfall.envelope.GrindRun;
import landfall.grind.GrindSetup;

/** The set-up sheet that a grinder is set from: as a page to print, and as PDF. */
public final class SetupSheet {
    private SetupSheet() {}

    /** XHTML with its drawings and its style inside; needs nothing beside it. */
    public static String html(GrindSetup setup, SheetOrder order) {
        return html(setup, GrindRun.of(setup, Errors.NONE), order);
    }

    /** The same where something is known to be amiss: with the run that was made of it. */
    public static String html(GrindSetup setup, GrindRun run, SheetOrder order) {
        return SheetPage.of(new SetupWords(setup, run, order).content(), order.paper(), order.foot());
    }

    /** The same sheet as PDF: the same bytes for the same set-up and order. */
    public static byte[] pdf(GrindSetup setup, SheetOrder order) {
        return Press.print(html(setup, order));
    }

    /** The same sheet as PDF, with the run that was made. */
    public static byte[] pdf(GrindSetup setup, GrindRun run, SheetOrder order) {
        return Press.print(html(setup, run, order));
    }
}
