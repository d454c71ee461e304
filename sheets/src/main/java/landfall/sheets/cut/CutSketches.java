// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.cut;

import java.util.List;
import landfall.cut.CutForecast;
import landfall.cut.CutWish.Opening;
import landfall.hole.HoleChoice;
import landfall.quantity.Length;
import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Ink;
import landfall.sheets.figure.Figures;
import landfall.sheets.hole.HoleShape;
import landfall.sheets.hole.HoleView;
import landfall.tap.Tap;
import org.jspecify.annotations.Nullable;

/** The sketches of one cut. Ids begin with a prefix, so that a page can hold those of two. */
public record CutSketches(Tap tap, CutForecast cut, Figures figures, String prefix) {

    public Drawing slices(Ink ink) {
        return new SlicesView(tap, cut, figures).draw(prefix + "-slices", ink);
    }

    public Drawing torque(Ink ink) {
        return new TorqueView(cut, figures).draw(prefix + "-torque", ink);
    }

    public Drawing section(Ink ink) {
        return new SectionView(tap, cut.load().strength().section(), figures).draw(prefix + "-section", ink);
    }

    /** The hole with this tap in it; with its depth stack where one was worked out. */
    public Drawing hole(@Nullable HoleChoice choice, Ink ink) {
        return new HoleView(shape(choice), tap.callOut().normal(), figures).draw(prefix + "-hole", ink);
    }

    private HoleShape shape(@Nullable HoleChoice choice) {
        HoleShape.Tool tool = new HoleShape.Tool(
                tap.chamfer().pointDiameter(),
                tap.body().threadLength(),
                tap.body().shank(),
                "tap of the card");
        if (choice != null) {
            return HoleShape.of(choice).with(tool);
        }
        Length depth = cut.wish().depth();
        Length chamfer = tap.thread().pitch().times(tap.chamfer().threads());
        return new HoleShape(
                tap.thread(),
                new HoleShape.Bore(cut.wish().hole(), cut.wish().how().opening() == Opening.THROUGH, ""),
                new HoleShape.Depths(depth, depth.plus(chamfer), null, null, Length.ZERO),
                null,
                tool);
    }

    public List<Drawing> all(Ink ink) {
        return List.of(hole(null, ink), slices(ink), torque(ink), section(ink));
    }
}
