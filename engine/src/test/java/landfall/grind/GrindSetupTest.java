// SPDX-License-Identifier: Apache-2.0
package landfall.grind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import landfall.fault.Caution;
import landfall.fault.Finding;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.quantity.Turning;
import landfall.tap.ChamferGiven;
import landfall.tap.FluteForm;
import landfall.tap.FluteKind;
import landfall.tap.Flutes;
import landfall.tap.Make;
import landfall.tap.Tap;
import landfall.tap.TapMaterial;
import landfall.tap.Wear;
import landfall.working.WorkingCheck;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The regrind set-up")
class GrindSetupTest {
    private static final Fixture THREE_LOBES = Bench.fixture(Bench.cam(3, 60, 30));

    private static List<String> refusals(Tap tap, Fixture fixture, GrindWish wish) {
        return GrindSetup.of(tap, fixture, wish).findings().stream()
                .map(Finding::sentence)
                .toList();
    }

    private static Tap made(Tap tap, Make make) {
        return new Tap(tap.callOut(), tap.cutting(), tap.body(), tap.pitch(), make);
    }

    @Test
    void everyPrintedFormulaGivesItsFigure() {
        Random random = new Random(5);
        for (int i = 0; i < 60; i++) {
            int flutes = 2 + random.nextInt(4);
            double land = (0.25 + 0.2 * random.nextDouble()) * 360 / flutes;
            var thread = Bench.metric(4 + random.nextInt(20), 0.5 + 0.25 * random.nextInt(4));
            Flutes form = i % 3 == 0
                    ? new Flutes(
                            flutes,
                            i % 2 == 0 ? FluteKind.SPIRAL_RIGHT : FluteKind.SPIRAL_LEFT,
                            FluteForm.UNKNOWN,
                            Angle.ofDeg(15))
                    : Flutes.straight(flutes);
            Tap tap = Bench.tap(
                    thread,
                    form,
                    Angle.ofDeg(land),
                    new ChamferGiven(null, thread.major().minus(thread.pitch()), 1.5 + 4 * random.nextDouble()));
            Cam cam = new Cam(
                    flutes,
                    i % 4 == 0 ? new CamCurve.Circle(Angle.ofDeg(75)) : new CamCurve.Straight(),
                    new Lobe(Angle.ofDeg(i % 5), Angle.ofDeg(land + 6), Angle.ofDeg(5)),
                    Limits.ofMm(0, 30),
                    i % 3 == 1 ? null : Limits.ofMm(0, 0.3 + random.nextDouble()));
            GrindWish wish = new GrindWish(
                    i % 2 == 0 ? Angle.ofDeg(5 + random.nextDouble()) : null,
                    null,
                    i % 3 == 0 ? Wear.SPENT : Wear.of(Length.ofMm(0.1)),
                    i % 4 == 1 ? Length.ofMm(0.2) : null,
                    i % 5 == 1 ? Angle.ofDeg(4) : null);
            var worked = GrindSetup.of(tap, Bench.fixture(cam), wish).orThrow();
            WorkingCheck.everyFormulaGivesItsFigure(worked.steps());
        }
    }

    @Test
    void theRadialSlideIsPreferredAndTheShareOverTheLandIsTheFall() {
        GrindSetup setup = Bench.setup(Bench.m10Plug(3, 40), THREE_LOBES, Bench.working(6));
        Setting setting = setup.motion().setting();
        assertThat(setting.way()).isEqualTo(Setting.Way.RADIAL);
        assertThat(setting.rises().axial().mm()).isZero();
        assertThat(setting.rises().radialOverLand().mm())
                .isCloseTo(setup.shape().fall().radial().mm(), within(1e-12));
        assertThat(setting.rises().radial().mm())
                .isCloseTo(setting.rises().radialOverLand().mm() * 60 / 40, within(1e-12));
        assertThat(setting.swivel().deg()).isEqualTo(9);
    }

    @Test
    void anAxialSlideAloneCarriesTheWholeFall() {
        Cam cam = new Cam(
                3,
                new CamCurve.Straight(),
                new Lobe(Angle.ZERO, Angle.ofDeg(60), Angle.ofDeg(30)),
                Limits.ofMm(0, 8),
                null);
        GrindSetup setup = Bench.setup(Bench.m10Plug(3, 40), Bench.fixture(cam), Bench.working(6));
        assertThat(setup.motion().setting().way()).isEqualTo(Setting.Way.AXIAL);
        // check value: 2.3263 mm over 40 deg for a working relief of 6 deg on M10, chamfer 9 deg
        assertThat(setup.motion().setting().rises().axialOverLand().mm()).isCloseTo(2.3263, within(5e-5));
    }

    @Test
    void whenTheRadialSlideIsTooShortTheAxialOneTakesTheRest() {
        Cam cam = new Cam(
                3,
                new CamCurve.Straight(),
                new Lobe(Angle.ZERO, Angle.ofDeg(60), Angle.ofDeg(30)),
                Limits.ofMm(0, 2),
                Limits.ofMm(0, 0.4));
        GrindSetup setup = Bench.setup(Bench.m10Plug(3, 40), Bench.fixture(cam), Bench.working(6));
        Setting.Rises rises = setup.motion().setting().rises();
        assertThat(setup.motion().setting().way()).isEqualTo(Setting.Way.BOTH);
        assertThat(rises.radial().mm()).isEqualTo(0.4);
        double total = rises.axialOverLand().mm() * Math.tan(Math.toRadians(9))
                + rises.radialOverLand().mm();
        assertThat(total).isCloseTo(setup.shape().fall().radial().mm(), within(1e-12));
    }

    /** Spiral flutes, 35 deg on M10: holding f' = .53 the swivel is 13.09 deg; the axial slope is re-worked to 2.28. */
    @Test
    void onSpiralFlutesSwivelAndAxialGainAreSolvedTogether() {
        Flutes spiral = new Flutes(3, FluteKind.SPIRAL_RIGHT, FluteForm.UNKNOWN, Angle.ofDeg(35));
        Tap tap = Bench.tap(
                Bench.M10, spiral, Angle.ofDeg(40), Bench.chamferAt(Bench.M10, Angle.ofDeg(9), Length.ofMm(4.6)));
        Cam cam = new Cam(
                3,
                new CamCurve.Straight(),
                new Lobe(Angle.ZERO, Angle.ofDeg(60), Angle.ofDeg(30)),
                Limits.ofMm(0, 8),
                null);
        GrindSetup setup = Bench.setup(tap, Bench.fixture(cam), Bench.working(6));
        double perRadian = setup.shape().fall().perRadian().mm();
        double swivel = setup.motion().setting().swivel().rad();
        assertThat(Math.tan(swivel) - perRadian * 2 * Math.PI / 44.867)
                .isCloseTo(Math.tan(Math.toRadians(9)), within(1e-5));
        assertThat(Math.toDegrees(swivel)).isCloseTo(13.09, within(0.05));
        double slope = setup.motion().setting().rises().axial().mm() / Math.toRadians(60);
        assertThat(slope * Math.tan(swivel)).isCloseTo(perRadian, within(1e-12));
        assertThat(slope).isCloseTo(2.28, within(0.02));
    }

    @Test
    void theDialsReadWhatTheyShouldAtTheHeel() {
        GrindSetup setup = Bench.setup(Bench.m10Plug(3, 40), THREE_LOBES, Bench.working(6));
        double b = setup.motion().setting().rises().radialOverLand().mm();
        assertThat(reading(setup, Place.END, 40)).isZero();
        assertThat(reading(setup, Place.SHANK, 40)).isCloseTo(b, within(1e-12));
        assertThat(reading(setup, Place.FLANK, 40)).isCloseTo(-1.5 * 40 / 360, within(1e-12));
        assertThat(reading(setup, Place.CREST, 40)).isCloseTo(b, within(1e-12));
        assertThat(reading(setup, Place.CHAMFER_STILL, 40))
                .isCloseTo(-setup.shape().fall().square().mm(), within(1e-12));
        assertThat(reading(setup, Place.CHAMFER_WORKING, 40)).isCloseTo(0, within(1e-12));
        assertThat(setup.motion().dial()).allSatisfy(target -> {
            if (target.land().deg() == 0) {
                assertThat(target.reading().mm()).isZero();
            }
        });
        assertThat(setup.motion().dial().stream().map(DialTarget::land).distinct())
                .hasSize(9);
    }

    private static double reading(GrindSetup setup, Place place, double deg) {
        return setup.motion().dial().stream()
                .filter(target -> target.place() == place && target.land().deg() == deg)
                .findFirst()
                .orElseThrow()
                .reading()
                .mm();
    }

    /** Check values 33 and 35: stock for a wear land at a working relief of 6 deg. */
    @Test
    void theStockIsThatOfTheCheckValues() {
        GrindSetup metric = Bench.setup(Bench.m10Plug(3, 40), THREE_LOBES, Bench.working(6));
        assertThat(metric.work().stock().square().mm()).isCloseTo(0.02104, within(5e-6));
        assertThat(metric.work().stock().axial().mm()).isCloseTo(0.1345, within(5e-5));
        assertThat(metric.work().stock().radial().mm()).isCloseTo(0.0213, within(5e-6));
        Tap half = Bench.tap(
                Bench.HALF_13,
                Flutes.straight(3),
                Angle.ofDeg(40),
                Bench.chamferAt(Bench.HALF_13, Angle.ofDeg(9), Length.ofInch(0.23)));
        GrindWish wish = new GrindWish(Angle.ofDeg(6), null, Wear.of(Length.ofInch(0.008)), null, null);
        assertThat(Bench.setup(half, THREE_LOBES, wish).work().stock().axial().inch())
                .isCloseTo(0.00538, within(5e-6));
    }

    @Test
    void aLeftHandTapHasTheSameFiguresAndTheOtherSense() {
        Tap right = Bench.m10Plug(3, 40);
        Tap left = Bench.tap(
                Bench.leftHand(Bench.M10),
                Flutes.straight(3),
                Angle.ofDeg(40),
                right.cutting().chamfer());
        GrindSetup a = Bench.setup(right, THREE_LOBES, Bench.working(6));
        GrindSetup b = Bench.setup(left, THREE_LOBES, Bench.working(6));
        assertThat(b.shape()).isEqualTo(a.shape());
        assertThat(b.motion()).isEqualTo(a.motion());
        assertThat(b.work().stock()).isEqualTo(a.work().stock());
        assertThat(a.cuttingSense()).isEqualTo("clockwise seen from the shank");
        assertThat(b.cuttingSense()).isEqualTo("counter-clockwise seen from the shank");
    }

    @Test
    void thePassesAddUpToTheStockAndItsAllowance() {
        for (double wear = 0; wear < 0.6; wear += 0.05) {
            GrindWish wish = new GrindWish(Angle.ofDeg(6), null, Wear.of(Length.ofMm(wear)), null, null);
            GrindSetup setup = Bench.setup(Bench.m10Plug(3, 40), THREE_LOBES, wish);
            double sum = setup.work().passes().stream()
                    .mapToDouble(pass -> pass.count() * pass.infeed().mm())
                    .sum();
            double whole = setup.work().stock().after().wholeAxial().mm() * Math.sin(Math.toRadians(9));
            assertThat(sum).isCloseTo(whole, within(1e-9));
            assertThat(setup.work().passes())
                    .allSatisfy(pass -> assertThat(pass.infeed().mm()).isLessThan(0.0201));
        }
    }

    @Test
    void everythingThatCannotBeRelievedIsSaidAtOnce() {
        Flutes forming = new Flutes(4, FluteKind.FORMING, FluteForm.UNKNOWN, Angle.ZERO);
        Tap tap = Bench.tap(
                Bench.M10,
                forming,
                Angle.ofDeg(65),
                Bench.m10Plug(4, 65).cutting().chamfer());
        assertThat(refusals(made(tap, new Make(TapMaterial.CARBIDE, null, true)), THREE_LOBES, Bench.working(6)))
                .containsExactly(
                        "flutes.kind: \"forming\" has no cutting edge: there is nothing to relieve. To mend: retire "
                                + "a worn"
                                + " forming tap; its lobes need the maker's form.",
                        "interrupted: \"yes\" cannot be set here: every second tooth is away, so the load on the "
                                + "next one is"
                                + " not known. To mend: send it to a grinder with the tap's own cam, or set it by "
                                + "its old"
                                + " relief under a loupe.",
                        "wheel.marking: \"A80J6V\" must be a diamond wheel for a carbide tap. To mend: mount a "
                                + "diamond wheel"
                                + " with dust extraction, or send the tap out.",
                        "cam.lobes: \"3\" must be the number of flutes, 4. To mend: fit the cam with 4 lobes, or "
                                + "check the"
                                + " flutes on the tap's card.",
                        "cam.riseAngle: \"60.00 deg from a start at 0.00 deg\" must reach the heel, at 65.00 deg of "
                                + "land. To"
                                + " mend: fit a cam with a longer rise, start the rise later, or measure the land "
                                + "again.");
    }

    @Test
    void aFixtureThatCannotReachTheFallSaysWhatItCan() {
        Cam cam = new Cam(
                3,
                new CamCurve.Straight(),
                new Lobe(Angle.ZERO, Angle.ofDeg(60), Angle.ofDeg(30)),
                Limits.ofMm(0, 1),
                Limits.ofMm(0, 0.2));
        Tap tap = Bench.m10Plug(3, 40);
        assertThat(refusals(tap, Bench.fixture(cam), Bench.working(6)))
                .containsExactly(
                        "working-relief: \"a fall of 0.553 mm (0.0218 in) over the whole lobe: radial rise 0.553 mm"
                                + " (0.0218 in), or axial rise 3.489 mm (0.1374 in)\" must be within the fixture's "
                                + "reach, radial"
                                + " 0.000 mm (0.0000 in) to 0.200 mm (0.0079 in), axial 0.000 mm (0.0000 in) to "
                                + "1.000 mm (0.0394"
                                + " in). To mend: ask for a working relief of at most 3.73 deg, or fit a cam with "
                                + "more rise or a"
                                + " shorter rise angle.");
        // and the mend is true: a little less is reached
        assertThat(GrindSetup.of(tap, Bench.fixture(cam), Bench.working(3.72)).findings())
                .isEmpty();
        assertThat(GrindSetup.of(tap, Bench.fixture(cam), Bench.working(3.74)).findings())
                .hasSize(1);
    }

    @Test
    void aWheelOverItsMarkedSpeedIsRefused() {
        assertThat(catchFinding(() ->
                                new Wheel(Length.ofMm(150), null, Turning.ofRevPerMin(4000), Turning.ofRevPerMin(4100)))
                        .sentence())
                .isEqualTo(
                        "wheel.spindle: \"4100 rev/min\" must be at most the 4000 rev/min marked on the wheel. To mend:"
                                + " set a slower spindle speed or mount a wheel marked for this one; a wheel over "
                                + "its mark can"
                                + " burst.");
    }

    private static Finding catchFinding(Runnable act) {
        try {
            act.run();
        } catch (landfall.fault.OutOfRange e) {
            return e.finding();
        }
        throw new AssertionError("nothing was refused");
    }

    @Test
    void whatTheFiguresRaiseIsSaid() {
        Cam late = new Cam(
                3,
                new CamCurve.Straight(),
                new Lobe(Angle.ofDeg(10), Angle.ofDeg(62), Angle.ofDeg(55)),
                null,
                Limits.ofMm(0, 2));
        GrindSetup setup = Bench.setup(
                made(Bench.m10Plug(3, 70), new Make(TapMaterial.HSS, "TiN", false)),
                Bench.fixture(late),
                Bench.working(6));
        assertThat(setup.cautions().stream().map(Caution::code))
                .contains(
                        "gapNotClear",
                        "slopeDies",
                        "bareMargin",
                        "coatingLost",
                        "fallOfThisCam",
                        "guard",
                        "ringTest",
                        "localCode");
        assertThat(setup.motion().phase().bareMargin().deg())
                .isCloseTo(10 - setup.motion().phase().delta().deg() / 2, within(1e-12));
    }

    /** Note (c) on offset circles, first order: f'·(cos ψ − cos(B + ψ))/sin ψ at the top of the lobe. */
    @Test
    void anOffsetCircleIsSetByItsSlopeAtTheEdge() {
        Cam cam = new Cam(
                3,
                new CamCurve.Circle(Angle.ofDeg(60)),
                new Lobe(Angle.ZERO, Angle.ofDeg(60), Angle.ofDeg(30)),
                null,
                Limits.ofMm(0, 2));
        GrindSetup setup = Bench.setup(Bench.m10Plug(3, 40), Bench.fixture(cam), Bench.working(6));
        double expected = setup.shape().fall().perRadian().mm()
                * (Math.cos(Math.PI / 3) - Math.cos(2 * Math.PI / 3))
                / Math.sin(Math.PI / 3);
        assertThat(setup.motion().setting().rises().radial().mm()).isCloseTo(expected, within(1e-12));
    }

    @Test
    void aFluteThatCannotBeIsRefused() {
        Flutes deep = new Flutes(3, FluteKind.STRAIGHT, new FluteForm(Length.ofMm(9.1), null, null), Angle.ZERO);
        assertThat(catchFinding(() -> Bench.tap(
                                Bench.M10,
                                deep,
                                Angle.ofDeg(40),
                                Bench.m10Plug(3, 40).cutting().chamfer()))
                        .sentence())
                .isEqualTo("flutes.core: \"9.100 mm (0.3583 in)\" must be under the basic pitch diameter, 9.026 mm"
                        + " (0.3553 in). To mend: measure the core across the flute floors.");
    }
}
