// SPDX-License-Identifier: Apache-2.0
package landfall.app.grind;

import java.util.List;
import java.util.Map;
import landfall.app.given.Cell;
import landfall.app.given.Cells;
import landfall.cards.form.Form;
import landfall.fault.Finding;

/**
 * The form of the page: what must be measured stands open, everything else lies under what was assumed.
 *
 * @param tap what is measured on the tap
 * @param fixture what the fixture can give
 * @param moreOfTap fields of the tap that may be left out
 * @param moreOfFixture fields of the fixture that may be left out
 * @param amiss what is not as it should be in chucking, cam and wheel
 * @param rest how the answer is wanted
 */
public record GivenTapAndFixture(
        List<Cell> tap,
        List<Cell> fixture,
        List<Cell> moreOfTap,
        List<Cell> moreOfFixture,
        List<Cell> amiss,
        List<Cell> rest) {

    static GivenTapAndFixture of(Form form, Map<String, String> typed, List<Finding> findings) {
        Cells cells = new Cells(form, typed, findings);
        List<Cell> tap = cells.of(
                "thread",
                "flutes.count",
                "flutes.kind",
                "land.width",
                "chamfer.angle",
                "chamfer.pointDiameter",
                "wear");
        List<Cell> fixture = cells.of(
                "cam.lobes",
                "cam.riseAngle",
                "cam.returnAngle",
                "cam.axial.from",
                "cam.axial.to",
                "cam.radial.from",
                "cam.radial.to",
                "wheel.diameter",
                "wheel.markedSpeed",
                "wheel.spindle");
        List<Cell> moreOfFixture = cells.restUnder("cam.", "wheel.", "dial.", "swivel.", "name");
        List<Cell> amiss = cells.of(
                "run-out", "run-out-high", "lobe-errors", "wheel-height", "wheel-face", "wheel-hollow", "wheel-wear");
        List<Cell> rest = cells.of("working-relief", "cuts", "units");
        return new GivenTapAndFixture(tap, fixture, cells.rest(), moreOfFixture, amiss, rest);
    }

    /** Whether something under the assumed fields is wrong and must be seen. */
    public boolean isAssumedWrong() {
        return moreOfTap.stream().anyMatch(Cell::isWrong)
                || moreOfFixture.stream().anyMatch(Cell::isWrong)
                || amiss.stream().anyMatch(Cell::isWrong);
    }
}
