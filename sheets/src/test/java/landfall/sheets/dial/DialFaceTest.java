// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.dial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import landfall.grind.GrindSetup;
import landfall.grind.Place;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.quantity.UnitSystem;
import landfall.sheets.dial.DialKind.Numbering;
import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Ink;
import landfall.sheets.draw.Spot;
import landfall.sheets.draw.Svg;
import landfall.sheets.draw.TextBox;
import landfall.sheets.paper.ShopTaps;
import org.junit.jupiter.api.Test;

class DialFaceTest {
    private static final DialKind HUNDREDTHS = DialKind.ofResolution(Length.ofMm(0.01));
    private static final Spot CENTRE = Spot.at(22.5, 24.4);

    private static Drawing face(Needle needle) {
        return new DialFace(HUNDREDTHS).draw(needle, "dial", Ink.PAPER);
    }

    private static Spot tip(Drawing drawing, String word) {
        return Svg.places(Svg.paths(drawing, word).get(0)).get(0);
    }

    /** Clockwise from the top by the share of a turn that the reading is, whatever its size and sign. */
    @Test
    void theNeedleStandsAtItsReading() {
        Random random = new Random(5);
        for (int i = 0; i < 200; i++) {
            Length reading = Length.ofMm((random.nextDouble() - 0.5) * 8);
            Spot tip = tip(face(Needle.of("heel", Angle.ofDeg(30), reading)), "solid");
            double clockwise = 90 - CENTRE.direction(tip);
            assertThat(Math.IEEEremainder(clockwise - 360 * reading.mm(), 360)).isCloseTo(0, within(0.05));
        }
    }

    @Test
    void whatWasReadStandsHollowBesideItWithTheTurnInWords() {
        Needle needle = Needle.of("heel", Angle.ofDeg(37.2), Length.ofMm(0.27))
                .read(Length.ofMm(0.24), "raise the slide 0.030 mm");
        Drawing drawing = face(needle);
        Spot hollow = tip(drawing, "sheet");
        assertThat(90 - CENTRE.direction(hollow)).isCloseTo(0.24 * 360, within(0.1));
        assertThat(drawing.texts()).extracting(TextBox::text).contains("+0.270 mm", "raise the slide 0.030 mm");
        assertThat(drawing.svg())
                .contains("Needle should stand at +0.270 mm: 27 div forward; forward is clockwise."
                        + " It was read at +0.240 mm. raise the slide 0.030 mm.");
    }

    @Test
    void turnsAreCountedAndSpelled() {
        assertThat(HUNDREDTHS.turnsAndDivisions(Length.ofMm(-2.326))).isEqualTo("2 turns + 32.6 div back");
        assertThat(HUNDREDTHS.turnsAndDivisions(Length.ofMm(1.045))).isEqualTo("1 turn + 4.5 div forward");
        assertThat(HUNDREDTHS.turnsAndDivisions(Length.ofMm(3))).isEqualTo("3 turns + 0 div forward");
        assertThat(HUNDREDTHS.turnsAndDivisions(Length.ofMm(0.0001))).isEqualTo("needle at 0");
    }

    @Test
    void aTurnIsAMillimetreOrATenthOfAnInchOnTheCommonDials() {
        assertThat(HUNDREDTHS.perTurn()).isEqualTo(Length.ofMm(1));
        assertThat(DialKind.ofResolution(Length.ofInch(0.001)).perTurn().inch()).isCloseTo(0.1, within(1e-12));
    }

    @Test
    void aDialSpeaksTheUnitThatItIsGraduatedIn() {
        for (double inch : new double[] {0.0001, 0.0005, 0.001}) {
            assertThat(DialKind.ofResolution(Length.ofInch(inch)).units()).isEqualTo(UnitSystem.INCH);
        }
        for (double mm : new double[] {0.0005, 0.001, 0.002, 0.005, 0.01, 0.02}) {
            assertThat(DialKind.ofResolution(Length.ofMm(mm)).units()).isEqualTo(UnitSystem.METRIC);
        }
        assertThat(new DialRow(ShopTaps.leftHand()).words()).contains("One turn 0.0500 in.");
    }

    @Test
    void balancedDialsCountBothWays() {
        DialKind balanced = new DialKind(Length.ofMm(0.01), 100, Numbering.BALANCED);
        assertThat(balanced.numeral(90)).isEqualTo("10");
        assertThat(balanced.numeral(50)).isEqualTo("50");
        assertThat(HUNDREDTHS.numeral(90)).isEqualTo("90");
    }

    @Test
    void aDialThatCannotBeIsRefusedWithTheMend() {
        assertThatThrownBy(() -> DialKind.ofResolution(Length.ZERO))
                .hasMessage("dial division: \"0.0 mm\" must be more than 0. To mend: read it off the dial's face.");
        assertThatThrownBy(() -> new DialKind(Length.ofMm(0.01), 15, Numbering.CONTINUOUS))
                .hasMessage("dial divisions in one turn: \"15\" must be a multiple of ten from 20 to 200."
                        + " To mend: count the graduations once round the face.");
    }

    @Test
    void aRadialSetUpIsDialledOnTheShankAtEdgeMiddleHeelAndTopOfTheLobe() {
        GrindSetup setup = ShopTaps.plug();
        DialRow row = new DialRow(setup);
        assertThat(row.places()).containsExactly(Place.SHANK);
        assertThat(row.needles()).extracting(Needle::where).containsExactly("edge", "mid-land", "heel", "top of lobe");
        assertThat(row.needles().get(3).wanted())
                .isEqualTo(setup.motion().setting().rises().radial());
        assertThat(row.needles().get(2).wanted().mm())
                .isCloseTo(setup.motion().setting().rises().radialOverLand().mm(), within(1e-12));
        assertThat(row.words())
                .startsWith("Dial at B, shank (+ towards the stylus).")
                .contains("One turn 1.000 mm.");
    }

    @Test
    void withBothSlidesEachHasItsHeelAndItsTop() {
        assertThat(new DialRow(ShopTaps.bothSlides()).needles())
                .extracting(Needle::where)
                .containsExactly("end, heel", "end, top of lobe", "shank, heel", "shank, top of lobe");
    }

    @Test
    void everyTextOfEveryFaceFits() {
        for (GrindSetup setup :
                List.of(ShopTaps.plug(), ShopTaps.leftHand(), ShopTaps.bothSlides(), ShopTaps.oneArc())) {
            for (Drawing drawing : new DialRow(setup).draw("d", Ink.PAPER)) {
                for (TextBox text : drawing.texts()) {
                    assertThat(text.left()).as(text.text()).isGreaterThanOrEqualTo(0);
                    assertThat(text.right()).as(text.text()).isLessThanOrEqualTo(DialFace.SIZE.x());
                    assertThat(text.foot()).as(text.text()).isLessThanOrEqualTo(DialFace.SIZE.y());
                }
            }
        }
    }
}
