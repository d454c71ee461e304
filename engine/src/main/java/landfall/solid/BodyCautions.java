// SPDX-License-Identifier: Apache-2.0
package landfall.solid;

import java.util.ArrayList;
import java.util.List;
import landfall.fault.Caution;
import landfall.tap.FluteKind;
import landfall.tap.Tap;

/** What a body leaves out, or draws without a measure. */
final class BodyCautions {
    private BodyCautions() {}

    static List<Caution> of(Tap tap) {
        List<Caution> cautions = new ArrayList<>();
        if (tap.body().shank() == null || tap.body().overallLength() == null) {
            cautions.add(new Caution(
                    "shankNotTold", "Shank or overall length not told: the body ends with its thread.", "body"));
        } else {
            cautions.add(new Caution(
                    "shankDrawn",
                    "How the flutes run out and the driving square are not on the card: the flutes run out evenly, the"
                            + " shank is drawn round.",
                    "body"));
        }
        if (tap.flutes().kind() == FluteKind.SPIRAL_POINT) {
            cautions.add(new Caution(
                    "spiralPointLeftOut",
                    "The slanting grind of the spiral point is not on the card: the flutes are drawn straight to the"
                            + " point.",
                    "flutes.kind"));
        }
        if (tap.make().interrupted()) {
            cautions.add(new Caution(
                    "teethDrawnWhole", "Every second tooth is away on this tap; all are drawn.", "interrupted"));
        }
        return cautions;
    }
}
