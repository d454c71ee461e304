// SPDX-License-Identifier: Apache-2.0
package landfall.grind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import landfall.dialling.Aim;
import landfall.dialling.Beside;
import landfall.dialling.DialAsk;
import landfall.dialling.DialFindings;
import landfall.dialling.Dialling;
import landfall.dialling.Reading;
import landfall.dialling.Readings;
import landfall.dialling.TapFacts;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.tap.Body;
import landfall.tap.Cutting;
import landfall.tap.FluteForm;
import landfall.tap.FluteKind;
import landfall.tap.Flutes;
import landfall.tap.Land;
import landfall.tap.Make;
import landfall.tap.PitchZone;
import landfall.tap.Tap;
import landfall.tap.ThreadRelief;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The targets of a set-up and the findings of a dialling-in are one law, read from its two ends. */
@DisplayName("What grind says a dial should read")
class DialTargetsTest {
    private static final Length DIVISION = Length.ofMm(0.001);

    /** One set-up, by its words. */
    record Case(String words, Tap tap, Fixture fixture, Angle found) {
        @Override
        public String toString() {
            return words;
        }
    }

    static Stream<Case> cases() {
        List<Case> cases = new ArrayList<>();
        CamCurve circle = new CamCurve.Circle(Angle.ofDeg(80));
        CamCurve points = new CamCurve.Points(List.of(
                new CamCurve.Point(Angle.ZERO, 0),
                new CamCurve.Point(Angle.ofDeg(25), 0.5),
                new CamCurve.Point(Angle.ofDeg(60), 1)));
        for (ThreadRelief relief :
                List.of(ThreadRelief.NONE, relieved(ThreadRelief.Kind.ECCENTRIC, 2, 0), relieved(KIND_CON, 3, 14))) {
            for (CamCurve curve : List.of(new CamCurve.Straight(), circle, points)) {
                for (double start : new double[] {-4, 0, 7}) {
                    for (FluteKind kind : List.of(FluteKind.STRAIGHT, FluteKind.SPIRAL_RIGHT)) {
                        for (boolean axial : new boolean[] {false, true}) {
                            String words = "%s, %s, rise from %s deg, %s flutes, %s"
                                    .formatted(
                                            relief.kind().code(),
                                            curve.getClass().getSimpleName(),
                                            start,
                                            kind.code(),
                                            axial ? "axial" : "radial");
                            cases.add(new Case(words, tap(kind, relief), fixture(curve, start, axial), null));
                        }
                    }
                }
            }
        }
        cases.add(new Case(
                "relief found",
                tap(FluteKind.STRAIGHT, ThreadRelief.NONE),
                fixture(circle, 3, false),
                Angle.ofDeg(7.5)));
        return cases.stream();
    }

    private static final ThreadRelief.Kind KIND_CON = ThreadRelief.Kind.CON_ECCENTRIC;

    private static ThreadRelief relieved(ThreadRelief.Kind kind, double slope, double margin) {
        return new ThreadRelief(kind, Angle.ofDeg(slope), Angle.ofDeg(margin));
    }

    private static Tap tap(FluteKind kind, ThreadRelief relief) {
        Flutes flutes = new Flutes(3, kind, FluteForm.UNKNOWN, kind.isSpiral() ? Angle.ofDeg(15) : Angle.ZERO);
        return new Tap(
                new Bench.Bare(Bench.M10),
                new Cutting(
                        flutes,
                        new Land.Span(Angle.ofDeg(40)),
                        Bench.chamferAt(Bench.M10, Angle.ofDeg(9), Length.ofMm(4.6)),
                        relief),
                Body.UNKNOWN,
                PitchZone.UNKNOWN,
                Make.PLAIN_HSS);
    }

    private static Fixture fixture(CamCurve curve, double start, boolean axial) {
        Fixture bench = Bench.fixture(Bench.cam(3, 60, 20));
        Cam cam = new Cam(
                3,
                curve,
                new Lobe(Angle.ofDeg(start), Angle.ofDeg(60), Angle.ofDeg(20)),
                axial ? Limits.ofMm(0, 8) : null,
                axial ? null : Limits.ofMm(0, 2));
        return new Fixture("bench", cam, bench.wheel(), DIVISION, null);
    }

    @ParameterizedTest
    @MethodSource("cases")
    void isWhatDialNeedsNoCorrectionFor(Case given) {
        GrindSetup setup = setup(given);
        for (Place place : Place.values()) {
            DialFindings found = dialled(given, setup, place, 1);
            assertThat(found.corrections().stream()
                            .filter(correction -> correction.length() != null || correction.angle() != null))
                    .as(place.code())
                    .isEmpty();
            assertThat(found.fits().outliers()).as(place.code()).isEmpty();
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void isWhatDialGivesAsItsOwnTargets(Case given) {
        GrindSetup setup = setup(given);
        for (Place place : Place.values()) {
            DialFindings found = dialled(given, setup, place, 1);
            List<DialTarget> targets = at(setup, place);
            for (int i = 0; i < targets.size(); i++) {
                assertThat(found.targets().get(i).reading().mm())
                        .as(place.code() + " at " + targets.get(i).land().deg())
                        .isEqualTo(targets.get(i).reading().mm(), within(1e-9));
            }
        }
    }

    /** A rise a tenth too small is missed by that tenth, on every form of crest and of cam. */
    @ParameterizedTest
    @MethodSource("cases")
    void tellsTheMissingTenthOfARise(Case given) {
        GrindSetup setup = setup(given);
        boolean axial = setup.fixture().cam().axial() != null;
        Length rise = axial
                ? setup.motion().setting().rises().axial()
                : setup.motion().setting().rises().radial();
        for (Place place : axial ? List.of(Place.END, Place.FLANK) : List.of(Place.SHANK, Place.CREST)) {
            DialFindings found = dialled(given, setup, place, 0.9);
            Length by = found.corrections().get(0).length();
            assertThat(by).as(place.code()).isNotNull();
            assertThat(by.mm()).as(place.code()).isEqualTo(rise.mm() / 10, within(1e-6));
            assertThat(found.corrections().get(0).act()).startsWith("increase");
        }
    }

    private static GrindSetup setup(Case given) {
        GrindWish wish = new GrindWish(Angle.ofDeg(6), null, null, null, given.found());
        return Bench.setup(given.tap(), given.fixture(), wish);
    }

    private static List<DialTarget> at(GrindSetup setup, Place place) {
        return setup.motion().dial().stream()
                .filter(target -> target.place() == place)
                .toList();
    }

    /** The targets as readings on all three lands, with only a share of the rise set. */
    private static DialFindings dialled(Case given, GrindSetup setup, Place place, double share) {
        List<DialTarget> still = at(setup, place == Place.FLANK ? Place.END : Place.SHANK);
        List<DialTarget> targets = at(setup, place);
        List<Reading> list = new ArrayList<>();
        for (int land = 1; land <= 3; land++) {
            for (int i = 0; i < targets.size(); i++) {
                Length missing = share == 1
                        ? Length.ZERO
                        : (place == Place.END ? targets : still)
                                .get(i)
                                .reading()
                                .times(1 - share);
                Length reading = targets.get(i).reading().minus(missing);
                list.add(new Reading(land, targets.get(i).land(), reading, place));
            }
        }
        CamProfile cam =
                CamProfile.of(setup.fixture().cam(), setup.motion().phase().bareMargin());
        Beside beside = new Beside(null, null, Aim.of(setup, given.found()));
        return Dialling.of(new DialAsk(new Readings(list, DIVISION, 3), cam, TapFacts.of(given.tap()), beside))
                .value();
    }
}
