// SPDX-License-Identifier: Apache-2.0
package landfall.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import landfall.fault.OutOfRange;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.thread.Family;
import landfall.thread.Hand;
import landfall.thread.Lead;
import landfall.thread.Profile;
import landfall.thread.ScrewThread;
import landfall.working.Pen;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("Measurement over three wires")
class ThreeWiresTest {
    private static ScrewThread inch(double d, double tpi, int starts) {
        return new ScrewThread(
                Family.UNIFIED, Profile.ISO_60, Length.ofInch(d), new Lead(Length.ofInch(1 / tpi), starts), Hand.RIGHT);
    }

    private static Length best(ScrewThread thread) {
        return ThreeWires.wires(thread, Pen.NONE).best();
    }

    @ParameterizedTest(name = "{0} x {1} tpi, wire {2}: {3}")
    @CsvFileSource(resources = "/reference/three-wires.csv")
    void agreesWithThePublishedSizes(double d, double tpi, double wire, double over) {
        ScrewThread thread = inch(d, tpi, 1);
        var m = ThreeWires.over(thread, Length.ofInch(wire), thread.pitchDiameter(), Pen.NONE);
        // the published ones leave the lead term out
        assertThat(m.over().minus(m.leadTerm()).inch()).isCloseTo(over, within(0.0001));
    }

    /** 0.57735 P, as in a US Army manual: .57735/8 = .072 at 8 threads per inch. */
    @Test
    void theBestWireTouchesAtThePitchLine() {
        assertThat(best(inch(1, 8, 1)).inch()).isCloseTo(0.57735 / 8, within(1e-6));
    }

    /** 5 % at two starts: .00046 in on 1/4-20, .00089 on 1/2-13 three starts; .00012 with one start (computed). */
    @Test
    void theLeadTermGrowsWithTheSquareOfTheStarts() {
        assertThat(leadTerm(inch(0.25, 20, 1))).isCloseTo(0.00012, within(5e-6));
        assertThat(leadTerm(inch(0.25, 20, 2))).isCloseTo(0.00046, within(5e-6));
        assertThat(leadTerm(inch(0.5, 13, 3))).isCloseTo(0.00089, within(5e-6));
        assertThat(leadTerm(inch(0.5, 13, 3))).isCloseTo(9 * leadTerm(inch(0.5, 13, 1)), within(1e-9));
    }

    private static double leadTerm(ScrewThread thread) {
        return ThreeWires.over(thread, best(thread), thread.pitchDiameter(), Pen.NONE)
                .leadTerm()
                .inch();
    }

    /**
     * Wire laid on the helicoid by brute force: 1/4-20 .260934 (formula .260941), 1/2-13 three starts .51749 (formula
     * .51754, no lead term .51665). The formula over-corrects at steep leads: the difference is expected, not zero.
     */
    @Test
    void theWireOnTheHelicoidAgreesWithBruteForceAndPartsFromTheFormulaAtSteepLeads() {
        ScrewThread one = inch(0.25, 20, 1);
        double shallow =
                WireOnHelicoid.over(one, best(one), one.pitchDiameter()).inch();
        assertThat(shallow).isCloseTo(0.260934, within(1.5e-6));
        var byFormula = ThreeWires.over(one, best(one), one.pitchDiameter(), Pen.NONE);
        assertThat(byFormula.numeric()).isFalse();
        assertThat(byFormula.over().inch()).isCloseTo(0.260941, within(1e-6));
        ScrewThread three = inch(0.5, 13, 3);
        var steep = ThreeWires.over(three, best(three), three.pitchDiameter(), Pen.NONE);
        assertThat(steep.numeric()).isTrue();
        assertThat(steep.over().inch()).isCloseTo(0.51749, within(1e-5));
    }

    /** The method note's example: 1/2-13, pitch diameter .4500 in, best wire. */
    @Test
    void theExampleOfTheMethodNote() {
        ScrewThread thread = inch(0.5, 13, 1);
        var m = ThreeWires.over(thread, best(thread), Length.ofInch(0.45), Pen.NONE);
        assertThat(m.wire().inch()).isCloseTo(0.044412, within(5e-7));
        assertThat(m.leadTerm().inch()).isCloseTo(0.00009862, within(5e-9));
        assertThat(m.over().inch()).isCloseTo(0.516716, within(1e-6));
    }

    @Test
    void withoutALeadTheWireOnTheHelicoidIsThePlainFormula() {
        ScrewThread flat = new ScrewThread(
                Family.METRIC, Profile.ISO_60, Length.ofMm(2000), new Lead(Length.ofMm(1.5), 1), Hand.RIGHT);
        var m = ThreeWires.over(flat, best(flat), flat.pitchDiameter(), Pen.NONE);
        assertThat(WireOnHelicoid.over(flat, best(flat), flat.pitchDiameter()).mm())
                .isCloseTo(m.over().mm(), within(1e-6));
    }

    @Test
    void pitchDiameterUndoesOver() {
        Random random = new Random(3);
        for (int i = 0; i < 60; i++) {
            ScrewThread thread = inch(0.2 + random.nextDouble(), 10 + random.nextInt(20), 1 + i % 3);
            var wires = ThreeWires.wires(thread, Pen.NONE);
            Length wire =
                    wires.least().plus(wires.greatest().minus(wires.least()).times(random.nextDouble()));
            Length E = thread.pitchDiameter().times(1 + 0.01 * random.nextDouble());
            Length M = ThreeWires.over(thread, wire, E, Pen.NONE).over();
            assertThat(ThreeWires.pitchDiameter(thread, wire, M, Pen.NONE)
                            .pitchDiameter()
                            .mm())
                    .isCloseTo(E.mm(), within(1e-6));
        }
    }

    @Test
    void otherProfilesHaveUsableWiresRoundTheirBestOne() {
        for (double included : new double[] {29, 30, 47.5, 55}) {
            Profile profile = new Profile("test", Angle.ofDeg(included), 0.3, 0.55, 0.2, 0.2);
            ScrewThread thread =
                    new ScrewThread(Family.METRIC, profile, Length.ofMm(20), new Lead(Length.ofMm(2), 1), Hand.RIGHT);
            var wires = ThreeWires.wires(thread, Pen.NONE);
            assertThat(wires.least()).isLessThan(wires.best());
            assertThat(wires.best()).isLessThan(wires.greatest());
        }
    }

    @Test
    void aWireThatCannotTouchIsRefusedWithTheBestOne() {
        var wires = ThreeWires.wires(inch(0.5, 13, 1), Pen.NONE);
        assertThatThrownBy(() -> ThreeWires.wire(wires, Length.ofInch(0.08), Pen.NONE))
                .isInstanceOf(OutOfRange.class)
                .hasMessage("wire: \"2.032 mm (0.0800 in)\" must be from 1.094 mm (0.0431 in) to 1.758 mm (0.0692"
                        + " in) for this"
                        + " pitch. To mend: use the best wire, 1.128 mm (0.0444 in), or one near it.");
    }

    @Test
    void aPitchDiameterThatCannotBeThisThreadsIsRefused() {
        ScrewThread quarter = inch(0.25, 20, 1);
        assertThatThrownBy(() -> ThreeWires.judge("pitch-diameter", Length.ofInch(2), Length.ofInch(2), quarter))
                .hasMessage(
                        "pitch-diameter: \"50.800 mm (2.0000 in)\" must be such that the pitch diameter lies within half a"
                                + " pitch of the basic one, 5.525 mm (0.2175 in). To mend: check the call-out, the wire and the"
                                + " reading.");
    }
}
