// SPDX-License-Identifier: Apache-2.0
package landfall.app.cut;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import landfall.app.given.Cell;
import landfall.app.given.Cells;
import landfall.app.given.HoleEnds;
import landfall.cards.form.Form;
import landfall.fault.Finding;

/**
 * The form of the page.
 *
 * @param cut thread, material and hole
 * @param tap what is measured on the tap
 * @param work how it is turned; under what was assumed
 * @param moreOfTap fields of the tap that may be left out; under what was assumed
 */
public record GivenCut(List<Cell> cut, List<Cell> tap, List<Cell> work, List<Cell> moreOfTap) {
    static GivenCut of(Form form, Map<String, String> typed, List<Finding> findings) {
        Cells cells = new Cells(form, typed, findings);
        List<Cell> cut = new ArrayList<>(cells.of("thread", "cuts", "hole", "depth"));
        cut.add(HoleEnds.cell(typed));
        cut.addAll(cells.of("drive"));
        cells.of("blind", "through");
        List<Cell> tap = cells.of(
                "flutes.count",
                "flutes.kind",
                "flutes.core",
                "flutes.radius",
                "flutes.rake",
                "land.width",
                "chamfer.angle",
                "chamfer.pointDiameter",
                "shank.diameter",
                "threadLength");
        List<Cell> work = cells.of(
                "wear", "fluid", "holder", "spindle", "feed", "bar", "held", "square", "run-out", "heights", "units");
        return new GivenCut(cut, tap, work, cells.rest());
    }

    /** Whether something under the assumed fields is wrong and must be seen. */
    public boolean isAssumedWrong() {
        return work.stream().anyMatch(Cell::isWrong) || moreOfTap.stream().anyMatch(Cell::isWrong);
    }
}
