// SPDX-License-Identifier: Apache-2.0
package landfall.app.figure;

import java.util.List;

/**
 * One figure as it stands on a page.
 *
 * @param path where it stands in the answer, {@code setting.axial}
 * @param other the value in the other system of units, empty where both read the same
 * @param working the step that made it, its inputs after it
 */
public record FigureView(
        String path, String label, String value, String unit, String other, TrustMark trust, List<StepView> working) {

    /** How far the figure is to be trusted, as a word and whether it is an estimate. */
    public record TrustMark(String word, boolean estimate) {}

    /** For the page: an id made of the path. */
    public String id() {
        return "how-" + path.replace('.', '-');
    }
}
