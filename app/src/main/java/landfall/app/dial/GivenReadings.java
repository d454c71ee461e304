// SPDX-License-Identifier: Apache-2.0
package landfall.app.dial;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import landfall.app.given.Cell;
import landfall.app.given.Cells;
import landfall.cards.form.Form;
import landfall.fault.Finding;

/**
 * The form of the page: the readings first, then the tap and the fixture that they were taken on.
 *
 * @param readings the readings, and those on the thread
 * @param dial where it stood and its division
 * @param tap what the fit cannot do without
 * @param fixture what says where the dial should stand
 * @param rest what may be left out
 */
public record GivenReadings(List<Cell> readings, List<Cell> dial, List<Cell> tap, List<Cell> fixture, List<Cell> rest) {

    private static final List<String> NAMES = List.of("thread", "name");

    static GivenReadings of(Form form, Map<String, String> typed, List<Finding> findings) {
        Cells cells = new Cells(form, typed, findings);
        List<Cell> readings = cells.of("readings", "reference");
        List<Cell> dial = cells.of("place", "resolution", "units");
        List<Cell> tap = cells.of("thread", "flutes.count", "land.width", "chamfer.angle", "chamfer.pointDiameter");
        List<Cell> fixture = cells.of(
                "cam.lobes",
                "cam.riseAngle",
                "cam.returnAngle",
                "cam.axial.from",
                "cam.axial.to",
                "cam.radial.from",
                "cam.radial.to",
                "wheel.diameter",
                "working-relief");
        return new GivenReadings(readings, dial, tap, fixture, cells.rest());
    }

    /** What was carried here by name: the tap's call-out and the fixture; empty when nothing was. */
    public String carried() {
        return Stream.of(tap, rest)
                .flatMap(List::stream)
                .filter(cell -> NAMES.contains(cell.path()) && !cell.value().isEmpty())
                .map(Cell::value)
                .collect(Collectors.joining(", "));
    }

    /** Whether tap and fixture stand open: nothing was carried here, or something of it is wrong. */
    public boolean isToBeGiven() {
        boolean wrong = Stream.of(tap, fixture).flatMap(List::stream).anyMatch(Cell::isWrong);
        return wrong
                || tap.stream()
                        .anyMatch(cell ->
                                cell.path().equals("thread") && cell.value().isEmpty());
    }

    /** Whether something under the fixture or the assumed fields is wrong and must be seen. */
    public boolean isRestWrong() {
        return rest.stream().anyMatch(Cell::isWrong);
    }
}
