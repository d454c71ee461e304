// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

import static java.util.Objects.requireNonNull;
import static landfall.dialling.KnownTap.even;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import landfall.fault.OutOfRange;
import landfall.grind.CamCurve;
import landfall.grind.CamProfile;
import landfall.grind.Place;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

@DisplayName("The fit of dial readings")
class FitsTest {
    private static final CamProfile STRAIGHT = CamProfile.straight();
    private static final KnownTap TAP = new KnownTap(0.02, -0.52, 0.012, -0.007, new double[] {0.004, -0.001, -0.003});

    @ParameterizedTest(name = "{0} lands x {1} readings, dial {4} mm: u(k) {5}, u(E) {6}")
    @CsvFileSource(resources = "/reference/dial-fit-uncertainty.csv", ignoreLeadingAndTrailingWhitespace = true)
    void hasTheReferenceStandardUncertainties(
            int lands,
            int angles,
            double first,
            double last,
            double resolution,
            double slope,
            Double cosine,
            double room) {
        List<Reading> list = new ArrayList<>();
        for (int land = 1; land <= lands; land++) {
            for (int i = 0; i < angles; i++) {
                double rad = first + (last - first) * i / (angles - 1);
                list.add(KnownTap.reading(land, Math.toDegrees(rad), 0, Place.CHAMFER_STILL));
            }
        }
        Readings readings = new Readings(list, Length.ofMm(resolution), 4);
        Solution common =
                requireNonNull(Fits.orNull(readings, STRAIGHT, lands == 1 ? Terms.RISE_ONLY : Terms.COMMON_ZERO));
        DialFit fit = DialFit.of(common);
        assertThat(fit.slope().standard().mm()).isEqualTo(slope, within(room));
        RunOut runOut = fit.runOut();
        if (cosine != null) {
            assertThat(requireNonNull(runOut).cosine().standard().mm()).isEqualTo(cosine, within(room));
        } else {
            assertThat(runOut).isNull();
        }
    }

    @Test
    void givesBackTheErrorsThatExactReadingsWereMadeFrom() {
        DialFit fit = DialFit.of(Fits.fullest(TAP.exact(even(40, 4), 1e-6), STRAIGHT));
        assertThat(fit.slope().value().mm()).isEqualTo(-0.52, within(1e-12));
        assertThat(vector(fit)).containsExactly(new double[] {0.012, -0.007}, within(1e-12));
        for (int land = 1; land <= 3; land++) {
            Fitted height = requireNonNull(fit.height(land));
            assertThat(height.value().mm()).isEqualTo(TAP.heights()[land - 1], within(1e-12));
        }
    }

    @Test
    void givesBackTheErrorsUnderACircleCamAndAMeasuredOne() {
        CamCurve circle = new CamCurve.Circle(Angle.ofDeg(70));
        CamCurve points = new CamCurve.Points(List.of(
                new CamCurve.Point(Angle.ofDeg(0), 0),
                new CamCurve.Point(Angle.ofDeg(15), 0.3),
                new CamCurve.Point(Angle.ofDeg(60), 1)));
        for (CamCurve curve : List.of(circle, points)) {
            CamProfile cam = CamProfile.of(curve, Angle.ofDeg(60));
            List<Reading> list = new ArrayList<>();
            for (Reading reading :
                    KnownTap.even(4, 0, 0.01, 0.02).exact(even(42, 7), 1e-6).list()) {
                double rise = 0.3 * cam.at(reading.angle());
                list.add(new Reading(
                        reading.land(), reading.angle(), reading.value().plus(Length.ofMm(rise)), reading.place()));
            }
            DialFit fit = DialFit.of(Fits.fullest(new Readings(list, Length.ofMm(1e-6), 4), cam));
            assertThat(fit.slope().value().mm()).isEqualTo(0.3, within(1e-9));
            assertThat(vector(fit)).containsExactly(new double[] {0.01, 0.02}, within(1e-9));
        }
    }

    @Test
    void aCircleCamCountsItsSlopeAtTheStartOfTheRiseAndAMeasuredOneItsMean() {
        CamProfile circle = CamProfile.of(new CamCurve.Circle(Angle.ofDeg(90)), Angle.ofDeg(60));
        assertThat(circle.at(Angle.ofDeg(30))).isEqualTo(0.5, within(1e-12)); // psi 90: s = sin theta
        CamProfile straight = CamProfile.of(new CamCurve.Straight(), Angle.ofDeg(60));
        assertThat(straight.at(Angle.ofDeg(33))).isEqualTo(Angle.ofDeg(33).rad(), within(1e-12));
        assertThat(straight.at(Angle.ofDeg(70))).isEqualTo(Angle.ofDeg(60).rad(), within(1e-12));
    }

    @Test
    void aConstantAddedToAllReadingsChangesNothingElse() {
        Readings plain = TAP.read(even(40, 5), 0.001, 0.002, new Random(1));
        List<Reading> raised = plain.list().stream()
                .map(r -> new Reading(r.land(), r.angle(), r.value().plus(Length.ofMm(1.7)), r.place()))
                .toList();
        sameFit(plain, new Readings(raised, plain.resolution(), 3), 1);
    }

    @Test
    void theOrderOfTheReadingsChangesNothing() {
        Readings plain = TAP.read(even(40, 5), 0.001, 0.002, new Random(2));
        List<Reading> mixed = new ArrayList<>(plain.list());
        Collections.shuffle(mixed, new Random(3));
        sameFit(plain, new Readings(mixed, plain.resolution(), 3), 1);
    }

    @Test
    void readingsTwiceAsLargeFromADialTwiceAsCoarseGiveTwiceEverything() {
        Readings plain = TAP.read(even(40, 5), 0.001, 0.002, new Random(4));
        List<Reading> doubled = plain.list().stream()
                .map(r -> new Reading(r.land(), r.angle(), r.value().times(2), r.place()))
                .toList();
        sameFit(plain, new Readings(doubled, plain.resolution().times(2), 3), 2);
    }

    @Test
    void countingFromTheNextLandTurnsTheDirectionBackByOneLand() {
        KnownTap tap = KnownTap.even(4, -0.5, 0.02, 0.03);
        Readings plain = tap.read(even(40, 6), 0.001, 0.001, new Random(5));
        List<Reading> renamed = plain.list().stream()
                .map(r -> new Reading((r.land() + 2) % 4 + 1, r.angle(), r.value(), r.place()))
                .toList();
        FittedAngle before = direction(plain);
        FittedAngle after = direction(new Readings(renamed, plain.resolution(), 4));
        assertThat(Math.IEEEremainder(before.value().deg() - after.value().deg() - 90, 360))
                .isEqualTo(0, within(1e-9));
        assertThat(after.uncertainty().deg()).isEqualTo(before.uncertainty().deg(), within(1e-9));
    }

    @Test
    void fittingHeightsAsWellWidensTheRunOutFourfold() {
        Readings readings = KnownTap.even(3, -0.5, 0, 0).exact(even(40, 4), 0.01);
        Solution wide = requireNonNull(Fits.orNull(readings, STRAIGHT, Terms.HEIGHTS));
        Solution narrow = requireNonNull(Fits.orNull(readings, STRAIGHT, Terms.COMMON_ZERO));
        double ratio = wide.standard(wide.model.cosine()) / narrow.standard(narrow.model.cosine());
        assertThat(ratio).isBetween(3.5, 4.5);
        // .0041 to .0046 mm for a 0.01 dial on three lands, the figure of the method note
        assertThat(wide.standard(wide.model.cosine())).isBetween(0.0040, 0.0047);
    }

    @Test
    void withoutHeightsTheRunOutIsWrongWhereLandsDiffer() {
        Readings readings = TAP.exact(even(40, 4), 1e-6);
        Solution narrow = requireNonNull(Fits.orNull(readings, STRAIGHT, Terms.COMMON_ZERO));
        assertThat(DialFit.vector(narrow)[0]).isNotCloseTo(0.012, within(0.001));
    }

    @Test
    void twoLandsAnswerTheCommonZeroAndOneLandTheRiseAlone() {
        Readings all = TAP.exact(even(40, 4), 0.01);
        assertThat(Fits.fullest(only(all, 2), STRAIGHT).model.terms).isEqualTo(Terms.COMMON_ZERO);
        assertThat(Fits.fullest(only(all, 1), STRAIGHT).model.terms).isEqualTo(Terms.RISE_ONLY);
        assertThat(Fits.fullest(all, STRAIGHT).model.terms).isEqualTo(Terms.HEIGHTS);
    }

    @Test
    void anglesWithinTwoDegreesAnswerTheCommonZero() {
        assertThat(Fits.fullest(TAP.exact(even(2, 4), 0.01), STRAIGHT).model.terms)
                .isEqualTo(Terms.COMMON_ZERO);
    }

    @Test
    void readingsAtOneAngleAreRefusedWithTheMend() {
        Readings flat = TAP.exact(new double[] {10}, 0.01);
        assertThatThrownBy(() -> Fits.fullest(flat, STRAIGHT))
                .isInstanceOf(OutOfRange.class)
                .hasMessage(
                        "readings: \"3 at one land angle\" must be at two or more land angles, or there is no slope in"
                                + " them. To mend: read each land at its edge, twice between, and at its heel.");
    }

    private static Readings only(Readings readings, int lands) {
        return new Readings(
                readings.list().stream().filter(r -> r.land() <= lands).toList(), readings.resolution(), 3);
    }

    private static void sameFit(Readings left, Readings right, double factor) {
        DialFit a = DialFit.of(Fits.fullest(left, STRAIGHT));
        DialFit b = DialFit.of(Fits.fullest(right, STRAIGHT));
        assertThat(b.slope().value().mm()).isEqualTo(factor * a.slope().value().mm(), within(1e-12));
        assertThat(b.slope().uncertainty().mm())
                .isEqualTo(factor * a.slope().uncertainty().mm(), within(1e-12));
        assertThat(vector(b)[0]).isEqualTo(factor * vector(a)[0], within(1e-12));
        assertThat(vector(b)[1]).isEqualTo(factor * vector(a)[1], within(1e-12));
        assertThat(b.spread().mm()).isEqualTo(factor * a.spread().mm(), within(1e-12));
    }

    private static double[] vector(DialFit fit) {
        RunOut runOut = requireNonNull(fit.runOut());
        return new double[] {runOut.cosine().value().mm(), runOut.sine().value().mm()};
    }

    private static FittedAngle direction(Readings readings) {
        RunOut runOut =
                requireNonNull(DialFit.of(Fits.fullest(readings, STRAIGHT)).runOut());
        return requireNonNull(runOut.direction());
    }
}
