// SPDX-License-Identifier: Apache-2.0
package landfall.regrind;

import java.util.ArrayList;
import java.util.List;
import landfall.fault.Answer;
import landfall.fault.Caution;
import landfall.fault.Finding;
import landfall.fault.OutOfRange;
import landfall.grind.ChamferShape;
import landfall.grind.GrindWish;
import landfall.grind.Stock;
import landfall.quantity.Length;
import landfall.tap.Centres;
import landfall.tap.FluteKind;
import landfall.tap.Tap;
import landfall.working.Pen;
import landfall.working.Worked;

/**
 * Chamfer, face, cut off, or scrap.
 *
 * <p>Among the ways that mend all the damage and leave what the tap must keep, the one is taken that costs the least
 * share of what there is to lose; the chamfer where that is not known or alike.
 *
 * @param chosen the way to go
 * @param all every way, with what it costs or why it is barred
 */
public record Decision(Choice chosen, List<Choice> all, List<Caution> cautions) {
    public Decision {
        all = List.copyOf(all);
        cautions = List.copyOf(cautions);
    }

    /** The way to go with a tap, or why it is not sharpened at all. */
    public static Answer<Worked<Decision>> of(Tap tap, Damage damage) {
        return of(tap, damage, Circumstances.UNKNOWN);
    }

    /** The same where more is told. */
    public static Answer<Worked<Decision>> of(Tap tap, Damage damage, Circumstances around) {
        if (tap.flutes().kind() == FluteKind.FORMING) {
            return Answer.refused(new Finding(
                    "flutes.kind",
                    FluteKind.FORMING.code(),
                    "has no cutting edge to sharpen",
                    "replace a worn forming tap"));
        }
        try {
            return Answer.of(Worked.of(pen -> compute(tap, damage, around, pen)));
        } catch (OutOfRange e) {
            return Answer.refused(e.finding());
        }
    }

    private static Decision compute(Tap tap, Damage damage, Circumstances around, Pen pen) {
        List<Caution> cautions = new ArrayList<>();
        GrindWish wish = new GrindWish(null, around.cuts(), damage.wear(), damage.chip(), null);
        ChamferShape shape = ChamferShape.of(tap, wish, cautions, pen);
        Stock stock = Stock.of(tap, shape.relief(), wish, pen);
        Margins margins = Margins.of(tap, cautions, pen);
        Ways ways = new Ways(new Ways.On(tap, damage, around), stock, margins, cautions, pen);
        List<Choice> mends = List.of(ways.chamfer(), ways.face(shape.relief()), ways.cutOff());
        List<Choice> all = new ArrayList<>(mends);
        all.add(ways.scrap(mends.stream().noneMatch(Choice::isOpen)));
        Choice chosen = all.get(all.size() - 1);
        for (Choice choice : all) {
            if (choice.isOpen() && choice.way() != Way.SCRAP && costs(choice) < costs(chosen)) {
                chosen = choice;
            }
        }
        if (chosen.way() == Way.CHAMFER && stock.after().endFirst()) {
            cautions.add(new Caution(
                    "endFirst",
                    "The stock is over a pitch, or the point would come down to the core: grind the end back first.",
                    "s_all"));
        }
        TaperCautions.wear(tap, cautions);
        Length cut = chosen.thread();
        if (chosen.way() == Way.CUT_OFF && cut != null) {
            cautions.add(new Caution(
                    "cutSquare",
                    "Cut square with a thin wheel, cool, then grind the point and the chamfer."
                            + centre(tap)
                            + " The web is thicker there.",
                    "s_off"));
            TaperCautions.depthStop(tap, cut, cautions);
        }
        if (chosen.way() == Way.CHAMFER && cut != null && stock.after().endFirst()) {
            TaperCautions.depthStop(tap, cut, cautions);
        }
        return new Decision(chosen, all, cautions);
    }

    /** The centre at the point goes with the end that is cut off. */
    private static String centre(Tap tap) {
        Centres centres = tap.body().centres();
        if (centres == null) {
            return " Where the centre goes with the end, hold the tap in a collet or lap a new one (common practice).";
        }
        return switch (centres) {
            case HOLES ->
                " Its centre hole goes with the end: lap a new one, or hold it by its shank from now on and write"
                        + " centres none on its card (common practice).";
            case MALE ->
                " Its male centre goes with the end: hold it in a collet from now on and write centres none on its"
                        + " card (common practice).";
            case NONE -> " Held by its shank, for it has no centre (common practice).";
        };
    }

    /** Scrap costs all; an unknown cost ranks in the order of the ways, behind what is known to be cheap. */
    private static double costs(Choice choice) {
        if (choice.way() == Way.SCRAP) {
            return Double.POSITIVE_INFINITY;
        }
        Double share = choice.share();
        return share != null ? share : 1 + choice.way().ordinal();
    }
}
