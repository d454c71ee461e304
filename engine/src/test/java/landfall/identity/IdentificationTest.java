// SPDX-License-Identifier: Apache-2.0
package landfall.identity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import landfall.fault.Caution;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.tap.blank.TapBlank;
import landfall.thread.CallOut;
import landfall.thread.Family;
import landfall.thread.Hand;
import landfall.working.WorkingCheck;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("What is this tap?")
class IdentificationTest {
    private static final Length FINE = Length.ofMm(0.02);

    private static Identification inch(double major, double tpi) {
        return Identification.of(new Sighting(
                        Length.ofInch(major), Length.ofInch(1 / tpi), Length.ofInch(0.001), Sighting.Seen.NOTHING))
                .value();
    }

    private static Identification metric(double major, double pitch, Sighting.Seen seen) {
        return Identification.of(new Sighting(Length.ofMm(major), Length.ofMm(pitch), FINE, seen))
                .value();
    }

    @ParameterizedTest
    @CsvSource({
        "0.2550, 20, 1/4-20 UNC",
        "0.2530, 28, 1/4-28 UNF",
        "0.5060, 13, 1/2-13 UNC",
        "0.1925, 32, 10-32 UNF",
        "0.6320, 11, 5/8-11 UNC",
        "0.3780, 24, 3/8-24 UNF"
    })
    void aFreshInchTapIsWhatItSays(double major, double tpi, String name) {
        assertThat(inch(major, tpi).candidates().get(0).name()).isEqualTo(name);
    }

    @ParameterizedTest
    @CsvSource({
        "10.08, 1.5, M10x1.5",
        "6.05, 1, M6x1",
        "8.07, 1.25, M8x1.25",
        "12.1, 1.75, M12x1.75",
        "10.06, 1.25, M10x1.25"
    })
    void aFreshMetricTapIsWhatItSays(double major, double pitch, String name) {
        assertThat(metric(major, pitch, Sighting.Seen.NOTHING)
                        .candidates()
                        .get(0)
                        .name())
                .isEqualTo(name);
    }

    /** 1/2-12 BSW beside 1/2-13 UNC: the pitch tells; 1/4-20 BSW beside 1/4-20 UNC: only the flank angle does. */
    @Test
    void theLookThatTellsTwoApartIsNamed() {
        Identification both = inch(0.2545, 20);
        assertThat(both.candidates().stream().map(Candidate::name)).contains("1/4-20 UNC", "1/4-20 BSW");
        assertThat(both.tellApart().words()).contains("thread gauge to the flanks");
        var seen = new Sighting.Seen(null, null, Angle.ofDeg(55), null, Sighting.Helix.RIGHT);
        Identification told = Identification.of(new Sighting(Length.ofInch(0.2545), Length.ofInch(0.05), FINE, seen))
                .value();
        assertThat(told.candidates().get(0).name()).isEqualTo("1/4-20 BSW");
    }

    @Test
    void scoresAndOtherAreAllThereIs() {
        Random random = new Random(4);
        for (int i = 0; i < 100; i++) {
            var worked = Identification.of(new Sighting(
                    Length.ofMm(2 + 25 * random.nextDouble()),
                    Length.ofMm(0.4 + 1.5 * random.nextDouble()),
                    Length.ofMm(0.05 * random.nextDouble()),
                    Sighting.Seen.NOTHING));
            double sum = worked.value().candidates().stream()
                    .mapToDouble(Candidate::score)
                    .sum();
            assertThat(sum + worked.value().other()).isCloseTo(1, within(1e-9));
            WorkingCheck.everyFormulaGivesItsFigure(worked.steps());
        }
    }

    /** Every standard tap, fresh, with the crest in the middle of what new taps have, is among its own first three. */
    @Test
    void everyStandardTapIsFoundAgain() {
        List<CallOut> lost = Catalogue.all().stream()
                .filter(callOut -> callOut.thread().family() != Family.NPTF)
                .filter(callOut -> {
                    var thread = callOut.thread();
                    Identification found = Identification.of(new Sighting(
                                    thread.major().plus(thread.pitch().times(0.08)),
                                    thread.pitch(),
                                    Length.ofMm(0.01),
                                    new Sighting.Seen(
                                            null, null, thread.profile().includedAngle(), null, Sighting.Helix.RIGHT)))
                            .value();
                    return found.candidates().stream()
                            .limit(3)
                            .noneMatch(each -> each.callOut().thread().equals(thread));
                })
                .toList();
        assertThat(lost.stream().map(CallOut::normal))
                .hasSizeLessThan(Catalogue.all().size() / 50);
    }

    @Test
    void anUndersizeTapIsNotCalledWornBeforeItsRingsAreKnown() {
        Identification unknown = metric(9.65, 1.5, Sighting.Seen.NOTHING);
        assertThat(unknown.candidates().get(0).name()).isEqualTo("M10x1.5");
        assertThat(unknown.cautions().stream().map(Caution::code)).contains("ringsNotTold");
        Identification ringed = metric(9.65, 1.5, new Sighting.Seen(null, null, null, 1, Sighting.Helix.RIGHT));
        assertThat(ringed.candidates().get(0).name()).isEqualTo("M10x1.5");
        assertThat(ringed.cautions().stream().map(Caution::code)).doesNotContain("ringsNotTold");
    }

    @Test
    void aListedShankRaisesItsCandidate() {
        var bare = metric(8.05, 1.25, Sighting.Seen.NOTHING);
        var listed = metric(
                8.05,
                1.25,
                new Sighting.Seen(Length.ofMm(8), 4, null, null, new Sighting.Helix(Hand.LEFT, null, null)));
        assertThat(listed.candidates().get(0).score())
                .isGreaterThan(bare.candidates().get(0).score());
        assertThat(listed.candidates().get(0).name()).isEqualTo("M8x1.25-LH");
        assertThat(listed.candidates().get(0).why()).contains("shank as ISO 529");
    }

    @Test
    void nothingStandardIsSaid() {
        Identification none = metric(23.3, 1.13, Sighting.Seen.NOTHING);
        assertThat(none.candidates()).isEmpty();
        assertThat(none.other()).isEqualTo(1);
        assertThat(none.cautions().stream().map(Caution::code)).containsExactly("noStandardThread");
    }

    @Test
    void aPitchLargerThanTheTapIsRefused() {
        assertThatThrownBy(() -> metric(1, 1.5, Sighting.Seen.NOTHING))
                .hasMessage(
                        "major: \"1.000 mm (0.0394 in)\" must be more than one pitch of 1.500 mm (0.0591 in). To mend:"
                                + " measure over the crests, and the pitch over several threads.");
    }

    /**
     * Common practice, no source: a 1/2 in tap has a shank of .367; from 7/16 shanks lie under the root, to 3/8 over
     * nominal.
     */
    @Test
    void shanksAreAsTheTradeKnowsThem() {
        assertThat(TapBlank.of(Length.ofInch(0.5)).get(0).shank().inch()).isCloseTo(0.367, within(1e-9));
        for (TapBlank blank : TapBlank.all()) {
            if (blank.list().equals("USCTI 302")) {
                boolean over = blank.shank().mm() > blank.nominal().mm();
                assertThat(over).isEqualTo(blank.nominal().inch() <= 0.376);
            }
            assertThat(blank.square()).isLessThan(blank.shank());
            assertThat(blank.lengths().thread()).isLessThan(blank.lengths().overall());
        }
    }

    private static Identification seen(double major, double pitch, Sighting.Seen seen) {
        return metric(major, pitch, seen);
    }

    /** M16 pitch 1.5, lead 3: the groove stands at atan(3/(pi 14.98)) = 3.65 degrees, half of that with one start. */
    @ParameterizedTest
    @CsvSource({"3.65, M16xPh3P1.5", "1.83, M16x1.5", "5.45, M16xPh4.5P1.5"})
    void theLeadAngleTellsTheStarts(double degrees, String name) {
        var helix = new Sighting.Helix(Hand.RIGHT, null, Angle.ofDeg(degrees));
        var seen = new Sighting.Seen(null, null, null, null, helix);
        assertThat(seen(16.1, 1.5, seen).candidates().get(0).name()).isEqualTo(name);
    }

    @ParameterizedTest
    @CsvSource({
        "16.1, 1.5, M16xPh3P1.5-LH",
        "40.2, 7, Tr40x14(P7)-LH",
        "6.465, 1.27, 0.2500-0.05P-0.1L UNC-LH",
        "4.75, 0.81, '2 BA, 2 starts-LH'"
    })
    void handAndStartsThatWereSeenAreInTheName(double major, double pitch, String name) {
        var seen = new Sighting.Seen(null, null, null, null, new Sighting.Helix(Hand.LEFT, 2, null));
        assertThat(seen(major, pitch, seen).candidates().get(0).name()).isEqualTo(name);
    }

    @Test
    void aLeadAngleBetweenTwoCountsIsRefused() {
        var seen = new Sighting.Seen(null, null, null, null, new Sighting.Helix(Hand.RIGHT, null, Angle.ofDeg(2.7)));
        assertThatThrownBy(() -> seen(16.1, 1.5, seen))
                .hasMessage(
                        "lead-angle: \"2.70 deg, which is 1.48 starts\" must be near a whole number of starts. To mend:"
                                + " measure from the plane square to the axis, or count the starts at the end of the thread.");
    }

    @Test
    void theFirstTapsOfAHandSetAreNotCalledWorn() {
        var first = new Sighting.Seen(null, null, null, 1, Sighting.Helix.RIGHT);
        Identification told = seen(7.7, 1.25, first);
        assertThat(told.candidates().get(0).why()).contains("first tap of a hand set, undersize by design");
        assertThat(told.cautions()).extracting("code").doesNotContain("ringsNotTold");
        assertThat(seen(7.7, 1.25, Sighting.Seen.NOTHING).cautions())
                .extracting("code")
                .contains("ringsNotTold");
    }

    /**
     * An insert tap of 1/4-20 (crest .3177 to .3187 in a printed table) lies beside the next size of 20 threads an
     * inch.
     */
    @Test
    void anInsertTapIsNotTakenForTheNextSize() {
        Identification found = inch(0.3182, 20);
        assertThat(found.candidates()).extracting(Candidate::name).startsWith("STI 1/4-20 UNC", "5/16-20 UN");
        assertThat(found.cautions()).extracting("code").contains("insertTap");
        assertThat(found.tellApart().measure()).isEqualTo("crest");
    }
}
