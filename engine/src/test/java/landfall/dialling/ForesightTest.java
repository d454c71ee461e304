// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

import static java.util.Objects.requireNonNull;
import static landfall.dialling.KnownTap.even;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import landfall.dialling.Correction.Kind;
import landfall.grind.CamProfile;
import landfall.grind.Place;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.working.WorkingCheck;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("What the dial reads after each correction")
class ForesightTest {
    private static final double COSINE = Math.cos(Math.toRadians(9));
    private static final double WANTED = -0.52777 * COSINE;
    private static final double[] HEIGHTS = {0.02, -0.005, -0.015};
    private static final KnownTap UNEVEN = new KnownTap(0.02, -0.4, 0.03, -0.02, HEIGHTS);
    private static final Readings CHAMFER = UNEVEN.exact(even(40, 6), 0.0001);
    /** The thread runs out by .02, -.01 radially: that much of the chamfer's comes from the seat. */
    private static final Readings THREAD = KnownTap.even(3, 0, 0.02, -0.01).exact(Place.CREST, even(40, 5), 0.0001);

    private static DialFindings found(Readings readings, Beside beside) {
        return Dialling.of(new DialAsk(readings, CamProfile.straight(), DiallingTest.M10, beside))
                .value();
    }

    private static Foreseen after(DialFindings found, Kind kind) {
        List<Foreseen> those = found.mend().foreseen().stream()
                .filter(foreseen -> foreseen.after() == kind)
                .toList();
        return those.get(those.size() - 1);
    }

    private static void shows(Foreseen foreseen, KnownTap tap) {
        double zero = tap.at(1, 0);
        for (Foreseen.AtLand at : foreseen.lands()) {
            assertThat(at.edge().mm()).isEqualTo(tap.at(at.land(), 0) - zero, within(1e-9));
            assertThat(at.heel().mm()).isEqualTo(tap.at(at.land(), 40) - zero, within(1e-9));
        }
    }

    @Test
    void isThatOfATapWithTheErrorTakenAway() {
        DialFindings found = found(CHAMFER, new Beside(THREAD, null, DiallingTest.RADIAL));
        shows(found.mend().foreseen().get(0), UNEVEN);
        double e = 0.03 - COSINE * 0.02;
        double f = -0.02 + COSINE * 0.01;
        shows(after(found, Kind.RESEAT), UNEVEN.runningOut(e, f));
        shows(after(found, Kind.INDEX), KnownTap.even(3, -0.4, e, f));
        shows(after(found, Kind.RADIAL), KnownTap.even(3, WANTED, e, f));
        shows(after(found, Kind.STOCK), KnownTap.even(3, WANTED, 0, 0));
    }

    @Test
    void goesInTheOrderOfTheCorrections() {
        DialFindings found = found(CHAMFER, new Beside(THREAD, null, DiallingTest.RADIAL));
        List<Integer> numbers =
                found.mend().foreseen().stream().map(Foreseen::number).toList();
        assertThat(numbers).isSorted().doesNotHaveDuplicates().startsWith(0);
        found.mend().foreseen().stream()
                .skip(1)
                .forEach(foreseen -> assertThat(
                                found.corrections().get(foreseen.number() - 1).kind())
                        .isEqualTo(foreseen.after()));
    }

    /** Without a fixture the chamfer is held against the relief that is wanted: k_w = -r tan(6 deg + η). */
    @Test
    void theReliefWantedIsATargetWithoutAFixture() {
        DialFindings found = found(CHAMFER, new Beside(null, null, null, Angle.ofDeg(6)));
        assertThat(requireNonNull(found.mend().wanted()).mm()).isEqualTo(WANTED, within(1e-5));
        assertThat(found.corrections()).extracting(Correction::kind).doesNotContain(Kind.RADIAL, Kind.AXIAL);
        assertThat(found(KnownTap.even(3, 0.5, 0, 0).exact(Place.SHANK, even(40, 5), 0.001), Beside.NOTHING)
                        .cautions())
                .extracting("code")
                .contains("targetNotTold", "sharesNotTold");
    }

    /** Bare to 10 deg, then .5 mm/rad: the rise to turn is told by the slope behind the margin, not by the mean. */
    @Test
    void aRiseThatBeginsLateIsMendedByItsOwnSlope() {
        List<Reading> list = new ArrayList<>();
        for (int land = 1; land <= 3; land++) {
            for (double deg : new double[] {0, 4, 8, 15, 22, 30, 40}) {
                double fall = -0.5 * Math.toRadians(Math.max(0, deg - 10));
                list.add(KnownTap.reading(land, deg, fall, Place.CHAMFER_STILL));
            }
        }
        Readings late = new Readings(list, Length.ofMm(0.0001), 3);
        Beside beside = new Beside(null, null, DiallingTest.RADIAL);
        DialFindings found = found(late, beside);
        assertThat(requireNonNull(found.relief()).verdict()).isEqualTo(ReliefFound.Verdict.BARE_MARGIN);
        Correction rise = found.corrections().stream()
                .filter(correction -> correction.kind() == Kind.RADIAL)
                .findFirst()
                .orElseThrow();
        assertThat(requireNonNull(rise.length()).mm())
                .isEqualTo((0.52777 - 0.5 / COSINE) * Math.toRadians(60), within(1e-4));
        assertThat(after(found, Kind.INDEX).lands().get(0).heel().mm())
                .isEqualTo(-0.5 * Math.toRadians(40), within(1e-4));
        WorkingCheck.everyFormulaGivesItsFigure(
                Dialling.of(new DialAsk(late, CamProfile.straight(), DiallingTest.M10, beside))
                        .steps());
    }

    @Test
    void twoLandsOfThreeTellEdgesAndSharesAsIfAllWereOfOneHeight() {
        KnownTap truth = KnownTap.even(3, -0.5, 0.012, 0.004);
        Readings two = new Readings(
                truth.exact(even(40, 5), 0.0001).list().stream()
                        .filter(reading -> reading.land() != 3)
                        .toList(),
                Length.ofMm(0.0001),
                3);
        DialFindings found = found(two, Beside.NOTHING);
        DialFindings all = found(truth.exact(even(40, 5), 0.0001), Beside.NOTHING);
        for (int i = 0; i < 3; i++) {
            LandFound land = found.lands().lands().get(i);
            assertThat(land.height()).isNull();
            assertThat(requireNonNull(land.edge()).value().mm()).isEqualTo(truth.at(i + 1, 0), within(1e-9));
            assertThat(requireNonNull(land.share()).percent())
                    .isEqualTo(
                            requireNonNull(all.lands().lands().get(i).share()).percent(), within(1e-6));
        }
        assertThat(found.cautions()).extracting("code").contains("heightsNotTold", "landsNotRead");
    }
}
