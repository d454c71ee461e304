// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.paper;

import java.util.List;
import java.util.Set;
import landfall.fault.Answer;
import landfall.grind.GrindSetup;
import landfall.grind.GrindWish;
import landfall.quantity.Length;
import landfall.regrind.Check;
import landfall.regrind.Inspection;
import landfall.regrind.LifeWish;
import landfall.regrind.Looked;
import landfall.regrind.Reground;
import landfall.regrind.SharpeningsLeft;
import landfall.sheets.draw.Ink;
import landfall.sheets.figure.Figures;
import landfall.sheets.life.LifeView;
import landfall.sheets.life.LifeWords;
import landfall.sheets.paper.SheetContent.After;
import landfall.sheets.paper.SheetContent.Measure;
import landfall.working.Worked;

/** The leaf for afterwards: what to measure on the reground tap, and what is left in it. */
final class AfterWords {
    /** Checks that are made on every land. */
    private static final Set<String> BY_LAND = Set.of("chamferLength", "fall");

    private final GrindSetup setup;
    private final Figures figures;

    AfterWords(GrindSetup setup, Figures figures) {
        this.setup = setup;
        this.figures = figures;
    }

    After after() {
        if (!(SharpeningsLeft.of(setup.tap(), LifeWish.USUAL) instanceof Answer.Of<Worked<SharpeningsLeft>> of)) {
            return new After(measures(), null, List.of());
        }
        SharpeningsLeft left = of.value().value();
        return new After(
                measures(),
                new LifeView(left, figures).draw("life", Ink.PAPER),
                new LifeWords(left, figures).sentences());
    }

    private List<Measure> measures() {
        Length back = setup.work().stock().after().wholeAxial();
        Reground nothing = new Reground(List.of(), Length.ZERO, List.of(), null, null);
        int lands = setup.tap().flutes().count();
        GrindWish asGround = new GrindWish(setup.shape().relief().working(), null, null, null, null);
        Inspection.Asked asked = new Inspection.Asked(back, null, asGround, Looked.NOTHING);
        return Inspection.of(setup.tap(), nothing, asked).value().checks().stream()
                .map(check -> new Measure(check.with(), target(check), BY_LAND.contains(check.code()) ? lands : 1))
                .toList();
    }

    /** The length that was set goes before the rule that the lands are held to. */
    private String target(Check check) {
        Length length = setup.work().stock().after().chamferLength();
        return switch (check.code()) {
            case "chamferLength" -> figures.length(length) + "; " + check.rule();
            case "relief" -> "the falls above, " + check.rule();
            default -> check.rule();
        };
    }
}
