// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;

/** What holds for the lettering of every drawing. */
public final class Fitting {
    private Fitting() {}

    /** Every text lies in its drawing and no two share more than a hair. */
    public static void everyTextFitsAndNoTwoOverlap(Drawing drawing) {
        List<TextBox> texts = drawing.texts();
        for (int i = 0; i < texts.size(); i++) {
            TextBox text = texts.get(i);
            assertThat(text.left()).as("left of %s", text).isGreaterThanOrEqualTo(-0.05);
            assertThat(text.top()).as("top of %s", text).isGreaterThanOrEqualTo(0);
            assertThat(text.right())
                    .as("right of %s", text)
                    .isLessThanOrEqualTo(drawing.size().x());
            assertThat(text.foot())
                    .as("foot of %s", text)
                    .isLessThanOrEqualTo(drawing.size().y() + 0.05);
            for (TextBox other : texts.subList(i + 1, texts.size())) {
                assertThat(text.overlaps(other)).as("%s over %s", text, other).isFalse();
            }
        }
    }
}
