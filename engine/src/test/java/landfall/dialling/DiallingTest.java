// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

import static java.util.Objects.requireNonNull;
import static landfall.dialling.KnownTap.even;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import landfall.dialling.Correction.Kind;
import landfall.fault.Caution;
import landfall.grind.CamProfile;
import landfall.grind.Place;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.working.Pen;
import landfall.working.WorkingCheck;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

@DisplayName("Dialling in")
class DiallingTest {
    /** M10x1.5 plug, three flutes. */
    static final TapFacts M10 =
            TapFacts.straight(3, Length.ofMm(1.5), Angle.ofDeg(9), Length.ofMm(4.6), Angle.ofDeg(40));
    /** The rises of a radial cam for 6 degrees of working relief on it. */
    static final Aim RADIAL = new Aim(Length.ZERO, Length.ofMm(0.52777), Angle.ofDeg(60), Aim.Side.RADIAL, null);

    private static final KnownTap UNEVEN = new KnownTap(0.02, -0.4, 0.012, -0.007, new double[] {0.02, -0.005, -0.015});

    @Test
    void findsAStaticReliefOfSixDegreesOnTheTap() {
        // static 6 deg transverse on M10, kap 9, r 4.6: f' .48348 mm/rad, working 5.462 deg (method note, own check)
        DialFindings found = ask(still(-0.48348 * Math.cos(Math.toRadians(9))), Beside.NOTHING);
        ReliefFound relief = requireNonNull(found.relief());
        assertThat(relief.fall().mm()).isEqualTo(0.48348, within(1e-9));
        assertThat(relief.working().value().deg()).isEqualTo(5.4615, within(5e-4));
        assertThat(relief.verdict()).isEqualTo(ReliefFound.Verdict.SOUND);
        assertThat(codes(found)).doesNotContain("reliefRubs", "reliefLittle", "reliefMuch");
    }

    /** 1/2-13, 9 deg, r .23 in, 40 deg for 6 deg working: .11653, .018457, .018230 in (method note, own check). */
    @Test
    void givesTheRisesThatWouldGrindTheSameAgain() {
        TapFacts half =
                TapFacts.straight(4, Length.ofInch(1.0 / 13), Angle.ofDeg(9), Length.ofInch(0.23), Angle.ofDeg(40));
        double square = Length.ofInch(0.026437).mm() * Math.cos(Math.toRadians(9));
        Readings readings = KnownTap.even(4, -square, 0, 0).exact(even(40, 5), 0.001);
        DialFindings found = Dialling.of(new DialAsk(readings, CamProfile.straight(), half, Beside.NOTHING))
                .value();
        ReliefFound relief = requireNonNull(found.relief());
        assertThat(relief.working().value().deg()).isEqualTo(6, within(5e-4));
        assertThat(relief.asItWas().axialOnly().inch()).isEqualTo(0.11653, within(5e-6));
        assertThat(relief.asItWas().radialOnly().inch()).isEqualTo(0.018457, within(1e-6));
        assertThat(relief.asItWas().squareOnly().inch()).isEqualTo(0.018230, within(1e-6));
    }

    @Test
    void readingsWithoutASlopeAreRefused() {
        Readings flat = KnownTap.even(3, -0.5, 0, 0).exact(new double[] {0}, 0.001);
        DialAsk ask = new DialAsk(flat, CamProfile.straight(), M10, Beside.NOTHING);
        assertThatThrownBy(() -> Dialling.of(ask))
                .hasMessageStartingWith("readings: \"3 at one land angle\" must be at two or more land angles");
    }

    @Test
    void saysThatABareLandRubs() {
        DialFindings found = ask(still(0), Beside.NOTHING);
        assertThat(requireNonNull(found.relief()).verdict()).isEqualTo(ReliefFound.Verdict.RUBS);
        assertThat(codes(found)).contains("reliefRubs");
    }

    @Test
    void saysThatSixteenDegreesAreTooMuchAndThreeTooLittle() {
        assertThat(requireNonNull(ask(still(-1.3), Beside.NOTHING).relief()).verdict())
                .isEqualTo(ReliefFound.Verdict.MUCH);
        assertThat(requireNonNull(ask(still(-0.28), Beside.NOTHING).relief()).verdict())
                .isEqualTo(ReliefFound.Verdict.LITTLE);
    }

    @Test
    void sharesTheLoadByWhereTheEdgesStand() {
        KnownTap tap = KnownTap.even(3, -0.5, 0.015 * Math.cos(Math.toRadians(9)), 0);
        LandsFound lands = ask(tap.exact(even(40, 5), 1e-4), Beside.NOTHING).lands();
        assertThat(lands.lands())
                .extracting(land -> Math.round(10 * requireNonNull(land.share()).percent()) / 10.0)
                .containsExactly(42.8, 23.9, 33.3);
        assertThat(lands.worst()).isEqualTo(1.284, within(5e-4));
    }

    @Test
    void tellsSharesWellEvenWhereHeightAndRunOutAreNotToldApart() {
        Random random = new Random(8);
        int covered = 0;
        for (int trial = 0; trial < 2000; trial++) {
            Readings readings = KnownTap.even(3, -0.5, 0.004, 0.003).read(even(40, 5), 0.001, 0.002, random);
            DialAsk ask = new DialAsk(readings, CamProfile.straight(), M10, Beside.NOTHING);
            LandsFound lands = LandsFound.of(ask, Fits.fullest(readings, ask.cam()), null, Pen.NONE);
            double[] e = {
                0.004,
                0.004 * Math.cos(2 * Math.PI / 3) + 0.003 * Math.sin(2 * Math.PI / 3),
                0.004 * Math.cos(4 * Math.PI / 3) + 0.003 * Math.sin(4 * Math.PI / 3)
            };
            double step = (e[0] - e[2]) / Math.cos(Math.toRadians(9));
            double h0 = 0.5 * Math.tan(Math.toRadians(9));
            LoadShare share = requireNonNull(lands.lands().get(0).share());
            covered += Math.abs(share.percent() - 100 * (h0 + step) / (3 * h0)) <= share.uncertainty() ? 1 : 0;
            assertThat(share.uncertainty()).isLessThan(5);
        }
        assertThat(100.0 * covered / 2000).isBetween(93.5, 96.5);
    }

    @Test
    void takesTheReferenceOffAsAVector() {
        double share = Math.cos(Math.toRadians(9));
        KnownTap chamfer = KnownTap.even(3, -0.5, 0.010 * share, 0.020 * share);
        KnownTap thread = KnownTap.even(3, 0, 0.010, 0.008);
        Readings reference = thread.exact(Place.CREST, even(40, 3), 1e-4);
        DialFindings found = ask(chamfer.exact(even(40, 5), 1e-4), new Beside(reference, null, null));
        RunOut net = requireNonNull(found.runOut());
        assertThat(net.cosine().value().mm()).isEqualTo(0, within(1e-9));
        assertThat(net.sine().value().mm()).isEqualTo(0.012 * share, within(1e-9));
        FittedAngle direction = requireNonNull(net.direction());
        assertThat(direction.value().deg()).isEqualTo(90, within(1e-6));
    }

    @Test
    void aChamferThatRunsOutLikeItsThreadLoadsAllTeethAlike() {
        double share = Math.cos(Math.toRadians(9));
        Readings reference = KnownTap.even(3, 0, 0.03, -0.01).exact(Place.SHANK, new double[] {0}, 1e-4);
        KnownTap chamfer = KnownTap.even(3, -0.5, 0.03 * share, -0.01 * share);
        DialFindings found = ask(chamfer.exact(even(40, 5), 1e-4), new Beside(reference, null, null));
        assertThat(found.lands().worst()).isEqualTo(1, within(1e-6));
        assertThat(codes(found)).contains("shankNotThread").doesNotContain("runOutProvesNothing");
        assertThat(kinds(found)).containsExactly(Kind.RESEAT, Kind.READ_AGAIN);
        assertThat(requireNonNull(found.corrections().get(0).length()).mm())
                .isEqualTo(Math.hypot(0.03, 0.01), within(1e-9));
    }

    @Test
    void theUncertaintyAgainstAReferenceIsThatOfBothSets() {
        Random random = new Random(9);
        int covered = 0;
        double share = Math.cos(Math.toRadians(9));
        for (int trial = 0; trial < 4000; trial++) {
            Readings chamfer = KnownTap.even(3, -0.5, 0.03, 0.04).read(even(40, 6), 0.001, 0.002, random);
            Readings thread = KnownTap.even(3, 0, -0.02, 0.01).read(Place.CREST, even(30, 3), 0.001, 0.004, random);
            Against against = Against.of(
                    requireNonNull(Fits.orNull(chamfer, CamProfile.straight(), Terms.COMMON_ZERO)),
                    Fits.reference(thread),
                    share);
            covered += Math.abs(against.net().cosine().value().mm() - 0.03 - 0.02 * share)
                            <= against.net().cosine().uncertainty().mm()
                    ? 1
                    : 0;
        }
        assertThat(100.0 * covered / 4000).isBetween(94.0, 96.5);
    }

    @Test
    void putsTheCorrectionsInTheOrderToMakeThem() {
        AlongChamfer along = new AlongChamfer(
                List.of(
                        new AlongChamfer.Spot(Length.ofMm(0), Length.ofMm(0)),
                        new AlongChamfer.Spot(Length.ofMm(3), Length.ofMm(0.02)),
                        new AlongChamfer.Spot(Length.ofMm(6), Length.ofMm(0.04))),
                Length.ofMm(0.001));
        DialFindings found = ask(UNEVEN.exact(even(40, 6), 0.0005), new Beside(null, along, RADIAL));
        assertThat(kinds(found))
                .startsWith(Kind.REFERENCE, Kind.RESEAT, Kind.SWIVEL, Kind.INDEX)
                .endsWith(Kind.RADIAL, Kind.STOCK, Kind.READ_AGAIN);
        Correction swivel = found.corrections().get(2);
        assertThat(swivel.act())
                .isEqualTo("turn the swivel up, to a steeper chamfer; the dial then stands still along the chamfer");
        assertThat(requireNonNull(swivel.angle()).deg()).isEqualTo(Math.toDegrees(Math.atan(0.04 / 6)), within(1e-9));
        Correction seat = found.corrections().get(1);
        assertThat(requireNonNull(seat.length()).mm())
                .isEqualTo(Math.hypot(0.012, 0.007) / Math.cos(Math.toRadians(9)), within(1e-9));
        assertThat(seat.act()).contains("89.74 deg behind the edge of land 3");
    }

    @Test
    void asksForTheRiseThatTheWantedSlopeLacks() {
        // the chamfer falls .4 mm/rad square to it; wanted .52777 cos 9 = .52127: the radial rise lacks
        // (.52127 - .4)/cos 9 = .12279 mm/rad, over 60 deg .12858 mm
        DialFindings found = ask(still(-0.4), new Beside(null, null, RADIAL));
        Correction rise = only(found, Kind.RADIAL);
        assertThat(rise.act()).isEqualTo("increase the radial rise over one lobe");
        assertThat(requireNonNull(rise.length()).mm()).isEqualTo(0.12858, within(5e-6));
        assertThat(found.targets().get(0).reading().mm()).isZero();
        assertThat(found.targets().get(8).land().deg()).isEqualTo(40);
        assertThat(found.targets().get(8).reading().mm())
                .isEqualTo(-0.52777 * Math.cos(Math.toRadians(9)) * Math.toRadians(40), within(1e-9));
    }

    @Test
    void anAxialCamLacksMoreByTheTangentOfTheChamfer() {
        Aim axial = new Aim(Length.ofMm(3.3322), Length.ZERO, Angle.ofDeg(60), Aim.Side.AXIAL, null);
        double radial = requireNonNull(only(ask(still(-0.4), new Beside(null, null, RADIAL)), Kind.RADIAL)
                        .length())
                .mm();
        double rise = requireNonNull(only(ask(still(-0.4), new Beside(null, null, axial)), Kind.AXIAL)
                        .length())
                .mm();
        assertThat(rise * Math.tan(Math.toRadians(9))).isEqualTo(radial, within(1e-5));
    }

    @ParameterizedTest
    @EnumSource(names = {"END", "SHANK", "FLANK", "CREST"})
    void asksForNothingWhereTheDialShowsWhatIsWanted(Place place) {
        Aim both = new Aim(Length.ofMm(1.2), Length.ofMm(0.3), Angle.ofDeg(60), Aim.Side.AXIAL, null);
        double k = switch (place) {
            case END -> 1.2;
            case FLANK -> 1.2 - 1.5 / (2 * Math.PI);
            default -> 0.3;
        };
        DialFindings found =
                ask(KnownTap.even(3, k, 0, 0).exact(place, even(40, 5), 0.001), new Beside(null, null, both));
        assertThat(found.corrections()).isEmpty();
        assertThat(found.relief()).isNull();
        assertThat(found.lands().worst()).isNull();
    }

    @Test
    void aDialThatStandsStillOnTheWorkingChamferFollowsTheOldRelief() {
        DialFindings found =
                ask(KnownTap.even(3, 0, 0, 0).exact(Place.CHAMFER_WORKING, even(40, 5), 0.001), Beside.NOTHING);
        assertThat(codes(found)).contains("followsOldRelief");
        assertThat(found.targets())
                .allSatisfy(target -> assertThat(target.reading().mm()).isZero());
    }

    @Test
    void everyPrintedFormulaGivesItsFigure() {
        Readings reference = KnownTap.even(3, 0, 0.03, -0.01).exact(Place.CREST, even(40, 3), 0.001);
        AlongChamfer along = new AlongChamfer(
                List.of(
                        new AlongChamfer.Spot(Length.ofMm(0), Length.ofMm(0)),
                        new AlongChamfer.Spot(Length.ofMm(6), Length.ofMm(0.1))),
                Length.ofMm(0.001));
        for (Beside beside :
                List.of(Beside.NOTHING, new Beside(null, along, RADIAL), new Beside(reference, along, RADIAL))) {
            Readings readings = UNEVEN.read(even(40, 5), 0.001, 0.001, new Random(3));
            WorkingCheck.everyFormulaGivesItsFigure(
                    Dialling.of(new DialAsk(readings, CamProfile.straight(), M10, beside))
                            .steps());
        }
    }

    @Test
    void saysWhatTheseReadingsCannotTell() {
        DialFindings found = ask(still(-0.5), Beside.NOTHING);
        assertThat(codes(found))
                .contains(
                        "heightsLikeRunOut",
                        "directionNotTold",
                        "runOutProvesNothing",
                        "phaseNotTold",
                        "dialDecides",
                        "zeroedAtEveryEdge");
        Readings one = new Readings(
                still(-0.5).list().stream().filter(r -> r.land() == 2).toList(), Length.ofMm(0.001), 3);
        DialFindings alone = ask(one, Beside.NOTHING);
        assertThat(codes(alone)).contains("runOutNotTold", "landsNotRead");
        assertThat(alone.runOut()).isNull();
        assertThat(alone.lands().lands())
                .allSatisfy(land -> assertThat(land.share()).isNull());
    }

    @Test
    void everySentenceIsFilledIn() {
        Random random = new Random(6);
        Readings late = KnownTap.even(3, 0.4, 0.02, 0.01).read(Place.SHANK, even(40, 6), 0.001, 0.0005, random);
        Readings slipped = new Readings(
                Stream.concat(
                                UNEVEN.read(even(40, 6), 0.001, 0.001, random).list().stream(),
                                Stream.of(KnownTap.reading(2, 20, 0.9, Place.CHAMFER_STILL)))
                        .toList(),
                Length.ofMm(0.001),
                3);
        for (Readings readings : List.of(late, slipped)) {
            DialFindings found = ask(readings, new Beside(null, null, RADIAL));
            assertThat(found.cautions()).extracting(Caution::text).noneMatch(text -> text.contains("%s"));
            assertThat(found.corrections()).extracting(Correction::act).noneMatch(text -> text.contains("%d"));
        }
        assertThat(codes(ask(slipped, Beside.NOTHING))).contains("outlier");
    }

    @Test
    void readingsOfATapWithOtherFlutesAreRefused() {
        Readings four = KnownTap.even(4, 1, 0, 0).exact(even(40, 3), 0.01);
        assertThatThrownBy(() -> new DialAsk(four, CamProfile.straight(), M10, Beside.NOTHING))
                .hasMessage("flutes of the readings: \"4\" must be 3, as the tap has. To mend: check that the"
                        + " readings belong"
                        + " to this tap.");
    }

    @Test
    void aReferenceOnTheChamferIsRefused() {
        Readings chamfer = still(0);
        assertThatThrownBy(() -> new DialAsk(chamfer, CamProfile.straight(), M10, new Beside(chamfer, null, null)))
                .hasMessageContaining(
                        "To mend: dial the crests of the full thread behind the chamfer with a flat anvil, or"
                                + " the shank.");
    }

    private static Readings still(double k) {
        return KnownTap.even(3, k, 0, 0).exact(even(40, 5), 0.001);
    }

    private static DialFindings ask(Readings readings, Beside beside) {
        return Dialling.of(new DialAsk(readings, CamProfile.straight(), M10, beside))
                .value();
    }

    private static List<String> codes(DialFindings found) {
        return found.cautions().stream().map(Caution::code).toList();
    }

    private static List<Kind> kinds(DialFindings found) {
        return found.corrections().stream().map(Correction::kind).toList();
    }

    private static Correction only(DialFindings found, Kind kind) {
        List<Correction> those =
                found.corrections().stream().filter(c -> c.kind() == kind).toList();
        assertThat(those).hasSize(1);
        return those.get(0);
    }
}
