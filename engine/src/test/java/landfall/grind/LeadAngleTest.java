// SPDX-License-Identifier: Apache-2.0
package landfall.grind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.tap.Flutes;
import landfall.tap.Land;
import landfall.working.Pen;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Lead angles and the advance over a land")
class LeadAngleTest {
    private static final Flutes THREE = Flutes.straight(3);

    /** Check value 1: lead angles of 1/2-13 at major, pitch and minor diameter. */
    @Test
    void halfInchThirteenHasTheLeadAnglesOfTheCheckValues() {
        LeadAngle lead = LeadAngle.of(Bench.HALF_13, Angle.ofDeg(40), Pen.NONE);
        assertThat(lead.major().deg()).isCloseTo(2.8036, within(5e-5));
        assertThat(lead.pitch().deg()).isCloseTo(3.1142, within(5e-5));
        assertThat(lead.minor().deg()).isCloseTo(3.3626, within(5e-5));
    }

    /** The same for M10 x 1.5, derived: 2.7336, 3.0282, 3.2625 deg. */
    @Test
    void mTenHasItsLeadAngles() {
        LeadAngle lead = LeadAngle.of(Bench.M10, Angle.ofDeg(40), Pen.NONE);
        assertThat(lead.major().deg()).isCloseTo(2.7336, within(5e-5));
        assertThat(lead.pitch().deg()).isCloseTo(3.0282, within(5e-5));
        assertThat(lead.minor().deg()).isCloseTo(3.2625, within(5e-5));
    }

    /** Check value 3: a land of .150 in on .5 in is 34.377 deg and advances .0073456 in; metric twin 3.0 mm on M10. */
    @Test
    void theAdvanceOverALandAgrees() {
        Angle land = new Land.Arc(Length.ofInch(0.150)).angle(Bench.HALF_13.major(), THREE, Pen.NONE);
        assertThat(land.deg()).isCloseTo(34.377, within(5e-4));
        assertThat(LeadAngle.of(Bench.HALF_13, land, Pen.NONE).axialAdvance().inch())
                .isCloseTo(0.0073456, within(5e-8));
        Angle metric = new Land.Arc(Length.ofMm(3)).angle(Bench.M10.major(), THREE, Pen.NONE);
        assertThat(LeadAngle.of(Bench.M10, metric, Pen.NONE).axialAdvance().mm())
                .isCloseTo(0.143239, within(5e-7));
    }

    /**
     * Common practice, no source: 5/8-11 has about 2.65 deg on its major diameter; a 1/8 in land there advances .006
     * in.
     */
    @Test
    void fiveEighthsElevenIsAsTheTradeKnowsIt() {
        var thread = Bench.inch(0.625, 11);
        Angle land = new Land.Arc(Length.ofInch(0.125)).angle(thread.major(), THREE, Pen.NONE);
        LeadAngle lead = LeadAngle.of(thread, land, Pen.NONE);
        assertThat(lead.major().deg()).isCloseTo(2.65, within(0.005));
        assertThat(lead.axialAdvance().inch()).isCloseTo(0.006, within(0.0005));
    }

    @Test
    void aChordIsAlwaysShorterThanItsArc() {
        Length major = Bench.M10.major();
        for (double width = 0.5; width < 9; width += 0.5) {
            Length w = Length.ofMm(width);
            Flutes one = Flutes.straight(1);
            assertThat(new Land.Chord(w).angle(major, one, Pen.NONE).deg())
                    .isGreaterThan(new Land.Arc(w).angle(major, one, Pen.NONE).deg());
        }
    }
}
