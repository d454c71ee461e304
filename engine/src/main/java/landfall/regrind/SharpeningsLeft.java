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
import landfall.tap.FluteKind;
import landfall.tap.Tap;
import landfall.working.Pen;
import landfall.working.Worked;
import org.jspecify.annotations.Nullable;

/**
 * Sharpenings left in a tap, by either way and by the best mixed plan.
 *
 * @param face null where faces are not ground on a straight slide: spiral flutes, spiral points
 * @param line the mixed plan; null where a count has no known limit
 */
public record SharpeningsLeft(
        Tap tap,
        LeftByWay.ByChamfer chamfer,
        LeftByWay.@Nullable ByFace face,
        @Nullable LifeLine line,
        List<Caution> cautions) {
    public SharpeningsLeft {
        cautions = List.copyOf(cautions);
    }

    /** The sharpenings left, or why this tap is not sharpened. */
    public static Answer<Worked<SharpeningsLeft>> of(Tap tap, LifeWish wish) {
        if (tap.flutes().kind() == FluteKind.FORMING) {
            return Answer.refused(new Finding(
                    "flutes.kind",
                    FluteKind.FORMING.code(),
                    "has no cutting edge to sharpen",
                    "replace a worn forming tap"));
        }
        try {
            return Answer.of(Worked.of(pen -> compute(tap, wish, pen)));
        } catch (OutOfRange e) {
            return Answer.refused(e.finding());
        }
    }

    private static SharpeningsLeft compute(Tap tap, LifeWish wish, Pen pen) {
        List<Caution> cautions = new ArrayList<>();
        GrindWish usual = new GrindWish(null, wish.cuts(), wish.wear(), null, null);
        ChamferShape shape = ChamferShape.of(tap, usual, cautions, pen);
        Stock stock = Stock.of(tap, shape.relief(), usual, pen);
        Margins margins = Margins.of(tap, cautions, pen);
        ChamferLife chamfer = new ChamferLife(tap, wish, stock, margins);
        LeftByWay.ByChamfer byChamfer = chamfer.count(cautions, pen);
        FaceLife faces = FaceLife.of(tap, wish, shape.relief().working(), cautions, pen);
        LeftByWay.ByFace byFace = faces == null ? null : faces.count(margins, wish.cap(), pen);
        LifeLine line = MixedPlan.of(chamfer, faces, margins, wish, pen);
        LifeCautions.add(byChamfer, cautions);
        TaperCautions.wear(tap, cautions);
        return new SharpeningsLeft(tap, byChamfer, byFace, line, cautions);
    }
}
