// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.cut;

import java.util.List;
import landfall.cut.CutWish;
import landfall.cut.CutWish.Opening;
import landfall.hole.HoleChoice;
import landfall.quantity.Length;
import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Ink;
import landfall.sheets.figure.Figures;
import landfall.sheets.hole.HoleShape;
import landfall.sheets.hole.HoleShape.Bore;
import landfall.sheets.hole.HoleShape.Depths;
import landfall.sheets.hole.HoleShape.Tool;
import landfall.sheets.hole.HoleView;
import landfall.tap.Tap;

/** The sketches of one cut. Ids begin with a prefix, so that a page can hold those of two. */
public record CutSketches(Tapping tapping, Figures figures, String prefix) {

    public Drawing slices(Ink ink) {
        return new SlicesView(tapping.tap(), tapping.cut(), figures).draw(prefix + "-slices", ink);
    }

    public Drawing torque(Ink ink) {
        return new TorqueView(tapping.cut(), figures).draw(prefix + "-torque", ink);
    }

    public Drawing section(Ink ink) {
        return new SectionView(tapping.tap(), tapping.cut().load().strength().section(), figures)
                .draw(prefix + "-section", ink);
    }

    /** The hole with this tap in it; with its depth stack where one was worked out. */
    public Drawing hole(Ink ink) {
        return new HoleView(shape(), tapping.tap().callOut().normal(), figures).draw(prefix + "-hole", ink);
    }

    private HoleShape shape() {
        Tap tap = tapping.tap();
        Tool tool = new Tool(
                tap.chamfer().pointDiameter(),
                tap.body().threadLength(),
                tap.body().shank(),
                "tap of the card");
        CutWish wish = tapping.cut().wish();
        boolean through = wish.how().opening() == Opening.THROUGH;
        HoleChoice choice = tapping.hole();
        if (choice != null) {
            HoleShape chosen = HoleShape.of(choice);
            String drill = tapping.isOfDrill() ? chosen.bore().drill() : "";
            return new HoleShape(
                    tap.thread(), new Bore(wish.hole(), through, drill), chosen.depths(), chosen.countersink(), tool);
        }
        Length chamfer = tap.thread().pitch().times(tap.chamfer().threads());
        Depths depths = new Depths(wish.depth(), wish.depth().plus(chamfer), null, null, Length.ZERO);
        return new HoleShape(tap.thread(), new Bore(wish.hole(), through, ""), depths, null, tool);
    }

    public List<Drawing> all(Ink ink) {
        return List.of(hole(ink), slices(ink), torque(ink), section(ink));
    }
}
