// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class OutlineTest {
    private static final Spot CENTRE = Spot.at(20, 20);

    @Test
    void anArcEndsWhereItsAngleSaysAndIsWrittenAsAnArc() {
        Outline quarter = Outline.from(Spot.at(30, 20)).arc(CENTRE, 90);
        List<Spot> corners = quarter.corners();
        Spot end = corners.get(corners.size() - 1);
        assertThat(end.x()).isCloseTo(20, within(1e-9));
        assertThat(end.y()).isCloseTo(10, within(1e-9));
        assertThat(quarter.written()).isEqualTo("M30 20A10 10 0 0 0 20 10");
        assertThat(Outline.from(Spot.at(30, 20)).arc(CENTRE, -270).written()).isEqualTo("M30 20A10 10 0 1 1 20 10");
    }

    @Test
    void chordsOfAnArcSagLessThanTwoHundredths() {
        List<Spot> corners = Outline.from(Spot.at(60, 20)).arc(CENTRE, 200).corners();
        for (int i = 1; i < corners.size(); i++) {
            Spot middle = corners.get(i - 1).towards(corners.get(i), 0.5);
            assertThat(40 - CENTRE.distance(middle)).isBetween(0.0, 0.0201);
        }
    }

    /** Law: hatch lines so far apart cover an area of their length times their spacing. */
    @Test
    void hatchingCoversTheAreaItStandsIn() {
        double spacing = 0.2;
        assertThat(length(Outline.circle(CENTRE, 10), spacing) * spacing).isCloseTo(Math.PI * 100, within(1.5));
        Outline notched = Outline.rectangle(Spot.at(0, 0), 20, 10);
        assertThat(length(notched, spacing) * spacing).isCloseTo(200, within(2.0));
    }

    @Test
    void noHatchLineLeavesItsOutline() {
        Matcher ends = Pattern.compile("[ML]([-0-9.]+) ([-0-9.]+)")
                .matcher(new Hatching(45, 0.7).within(Outline.circle(CENTRE, 10)));
        int count = 0;
        while (ends.find()) {
            Spot spot = Spot.at(Double.parseDouble(ends.group(1)), Double.parseDouble(ends.group(2)));
            assertThat(CENTRE.distance(spot)).isLessThan(10.02);
            count++;
        }
        assertThat(count).isGreaterThan(40);
    }

    private static double length(Outline outline, double spacing) {
        Matcher segments = Pattern.compile("M([-0-9.]+) ([-0-9.]+)L([-0-9.]+) ([-0-9.]+)")
                .matcher(new Hatching(45, spacing).within(outline));
        double length = 0;
        while (segments.find()) {
            length += Math.hypot(
                    Double.parseDouble(segments.group(3)) - Double.parseDouble(segments.group(1)),
                    Double.parseDouble(segments.group(4)) - Double.parseDouble(segments.group(2)));
        }
        return length;
    }
}
