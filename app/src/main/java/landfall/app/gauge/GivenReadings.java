// SPDX-License-Identifier: Apache-2.0
package landfall.app.gauge;

import java.util.List;
import landfall.app.given.Cell;
import landfall.app.given.Cells;

/**
 * The form of the page by the tool in the hand. A field that the question does not have is left out.
 *
 * @param thread what is gauged
 * @param wires over three wires, either way round
 * @param anvil a tap with an odd number of flutes in a V-anvil
 * @param bench what was found with plugs and pins
 * @param rest how well it was read, and in which units to answer
 */
public record GivenReadings(List<Cell> thread, List<Cell> wires, List<Cell> anvil, List<Cell> bench, List<Cell> rest) {

    static GivenReadings of(Cells cells) {
        List<Cell> thread = cells.of("thread", "part");
        List<Cell> wires = cells.of("wire", "over", "pitch-diameter");
        List<Cell> anvil = cells.of("flutes", "reading", "height", "bearing", "crest");
        List<Cell> bench = cells.of("go", "go-turns", "not-go-turns", "pin", "standoff", "marking");
        return new GivenReadings(thread, wires, anvil, bench, cells.rest());
    }

    /** Whether something under the assumed fields is wrong and must be seen. */
    public boolean isRestWrong() {
        return rest.stream().anyMatch(Cell::isWrong);
    }
}
