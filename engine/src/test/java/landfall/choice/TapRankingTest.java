// SPDX-License-Identifier: Apache-2.0
package landfall.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import landfall.choice.Unfit.Why;
import landfall.history.Happening;
import landfall.history.SharpeningWay;
import landfall.hole.HoleEnd;
import landfall.material.Materials;
import landfall.material.WorkMaterial;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.tap.Body;
import landfall.tap.FluteKind;
import landfall.thread.CallOut;
import landfall.thread.callout.CallOuts;
import landfall.wear.Job;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Which tap on record")
class TapRankingTest {
    private static final WorkMaterial C45 = Materials.find("material", "C45").orThrow();
    private static final CallOut M8 = CallOuts.read("M8x1.25-6H").orThrow();
    private static final Length DEPTH = Length.ofMm(16);

    private static TapWish wish(HoleEnd end, boolean byHand) {
        return new TapWish(M8, C45, new TapWish.Place(DEPTH, end), new TapWish.Drive(byHand, null));
    }

    private static List<Ranked> rank(OnHand... taps) {
        return TapRanking.rank(wish(HoleEnd.BLIND, false), new Job(20, DEPTH), List.of(taps));
    }

    private static List<String> marks(List<Ranked> ranked) {
        return ranked.stream().map(one -> one.tap().mark()).toList();
    }

    private static List<Why> why(Ranked one) {
        return one.unfit().stream().map(Unfit::why).toList();
    }

    private static OnHand spiral(String mark, Happening... then) {
        return Crib.tap(mark, "M8x1.25-6H", FluteKind.SPIRAL_RIGHT, C45, then);
    }

    private static OnHand limited(String mark, @Nullable Length min, @Nullable Length max, Happening... then) {
        return Crib.tap(mark, M8, Crib.build(FluteKind.SPIRAL_RIGHT, 2.5, new Limits(min, max)), C45, List.of(then));
    }

    @Test
    void practiceChoosesTheKindAndTheSharperOfTwoAlikeStandsFirst() {
        OnHand sharp = spiral("T2", Crib.holes(10, C45, 16));
        OnHand worn = spiral("T1", Crib.holes(60, C45, 16));
        OnHand point = Crib.tap("T0", "M8x1.25", FluteKind.SPIRAL_POINT, C45);
        assertThat(marks(rank(point, worn, sharp))).containsExactly("T2", "T1", "T0");
        assertThat(rank(point).get(0).words().cautions().get(0)).contains("onto the bottom of a blind hole");
    }

    /** M8-6H: class 2 is advised, 7.226 to 7.250 mm; the hole has 7.188 to 7.348 mm (ISO 965-1). */
    @Test
    void theLimitThatIsAdvisedGoesBeforeAnotherThatIsInsideAndAnUnknownOne() {
        OnHand advised = limited("A", Length.ofMm(7.226), Length.ofMm(7.250));
        OnHand inside = limited("B", Length.ofMm(7.260), Length.ofMm(7.290));
        OnHand untold = spiral("C");
        OnHand over = limited("D", Length.ofMm(7.300), Length.ofMm(7.360));
        List<Ranked> ranked = rank(over, untold, inside, advised);
        assertThat(marks(ranked)).containsExactly("A", "B", "C", "D");
        assertThat(why(ranked.get(3))).containsExactly(Why.LIMIT);
        assertThat(ranked.get(3).unfit().get(0).says())
                .isEqualTo("Its pitch diameter is up to 7.360 mm (0.2898 in), over the greatest of the hole,"
                        + " 7.348 mm (0.2893 in).");
    }

    @Test
    void aTapThatWasGroundThinIsJudgedByWhatWasMeasured() {
        Happening thin = new Happening.Measured(new Happening.Sizes(null, Length.ofMm(7.18), null, null));
        Ranked one =
                rank(limited("A", Length.ofMm(7.226), Length.ofMm(7.250), thin)).get(0);
        assertThat(why(one)).containsExactly(Why.LIMIT);
        assertThat(one.unfit().get(0).says()).contains("under the least of the hole");
    }

    /** A wear land of 0.25 mm is over the 0.2 mm at which an M8 is due. */
    @Test
    void aDullTapIsToldWithItsChanceAndIsNoLongerDullWhenItIsSharpened() {
        Happening worn = new Happening.Measured(new Happening.Sizes(Length.ofMm(0.25), null, null, null));
        Happening sharpened = new Happening.Sharpened(SharpeningWay.CHAMFER, null, null, null);
        OnHand dull = spiral("T1", Crib.holes(200, C45, 16), worn);
        OnHand ground = spiral("T2", Crib.holes(200, C45, 16), worn, sharpened);
        List<Ranked> ranked = rank(dull, ground);
        assertThat(marks(ranked)).containsExactly("T2", "T1");
        assertThat(ranked.get(0).unfit()).isEmpty();
        assertThat(why(ranked.get(1))).containsExactly(Why.DULL);
        assertThat(ranked.get(1).isOnlyDull()).isTrue();
        assertThat(ranked.get(1).unfit().get(0).says())
                .isEqualTo("Dull: its wear land was measured as 0.250 mm (0.0098 in), over the 0.200 mm (0.0079 in) at"
                        + " which such a tap is due.");
    }

    /** Practice gives C45 450 diameters, 225 holes of 16 mm; nobody found it dull after 200. */
    @Test
    void aTapThatMayLastAShortJobIsTooDullForALongOne() {
        OnHand bought = spiral("T1", new Happening.Bought(null, null), Crib.holes(200, C45, 16));
        Ranked few = TapRanking.rank(wish(HoleEnd.BLIND, false), new Job(5, DEPTH), List.of(bought))
                .get(0);
        Ranked many = TapRanking.rank(wish(HoleEnd.BLIND, false), new Job(400, DEPTH), List.of(bought))
                .get(0);
        assertThat(few.unfit()).isEmpty();
        assertThat(why(many)).containsExactly(Why.DULL);
        assertThat(many.unfit().get(0).says())
                .matches("Too dull for 400 holes: the chance that it is due before the last one is \\d+ %\\.");
    }

    @Test
    void noTapIsLeftOutAndEachThatCannotDoItSaysEveryReasonWhy() {
        Happening lent = new Happening.Lent("the shop next door");
        Happening failed = new Happening.Inspected(false, null);
        Body body = new Body(Length.ofMm(18), Length.ofMm(80), Length.ofMm(8), null, null);
        OnHand.Build build = new OnHand.Build(FluteKind.SPIRAL_RIGHT, 2.5, null, body, "");
        OnHand shortTap = Crib.tap("SHORT", M8, build, C45, List.of());
        List<Ranked> ranked = rank(
                Crib.tap("FINE", "M8x1-6H", FluteKind.SPIRAL_RIGHT, C45),
                Crib.tap("LEFT", "M8x1.25-6H-LH", FluteKind.SPIRAL_RIGHT, C45),
                spiral("LENT", lent),
                spiral("FAILED", failed, lent),
                spiral("BROKEN", new Happening.Broken(null, false)),
                spiral("SCRAP", new Happening.Scrapped(null)),
                shortTap,
                spiral("GOOD"));
        assertThat(ranked).hasSize(8).first().matches(Ranked::isFit);
        assertThat(ranked.get(0).tap().mark()).isEqualTo("GOOD");
        assertThat(ranked)
                .extracting(one -> one.tap().mark() + " " + why(one))
                .contains(
                        "FINE [THREAD]",
                        "LEFT [THREAD]",
                        "LENT [LENT]",
                        "FAILED [LENT, FAILED]",
                        "BROKEN [BROKEN]",
                        "SCRAP [SCRAPPED]",
                        "SHORT [REACH]");
        assertThat(ranked)
                .filteredOn(one -> one.tap().mark().equals("LENT"))
                .first()
                .satisfies(one -> assertThat(one.unfit().get(0).says())
                        .isEqualTo("It is lent to the shop next door: ask for it back."));
    }

    @Test
    void aFormingTapIsUnfitForWhatDoesNotFlow() {
        WorkMaterial iron = Materials.find("material", "EN-GJL-250").orThrow();
        TapWish wish = new TapWish(M8, iron, new TapWish.Place(DEPTH, HoleEnd.THROUGH), TapWish.Drive.UNKNOWN);
        Ranked one = TapRanking.rank(
                        wish, new Job(5, DEPTH), List.of(Crib.tap("F", "M8x1.25", FluteKind.FORMING, iron)))
                .get(0);
        assertThat(why(one)).containsExactly(Why.FORMING);
    }

    /**
     * Any crib, in any order: fit above unfit; the order does not hang on the order given; more holes, never higher.
     */
    @Test
    void theLawsOfTheOrder() {
        Random chance = new Random(11);
        for (int round = 0; round < 25; round++) {
            List<OnHand> taps = some(chance);
            TapWish wish = wish(chance.nextBoolean() ? HoleEnd.BLIND : HoleEnd.THROUGH, chance.nextBoolean());
            Job job = new Job(1 + chance.nextInt(200), DEPTH);
            List<Ranked> ranked = TapRanking.rank(wish, job, taps);
            assertThat(marks(ranked)).doesNotHaveDuplicates().hasSize(taps.size());
            boolean unfit = false;
            for (Ranked one : ranked) {
                assertThat(unfit && one.isFit()).isFalse();
                unfit |= !one.isFit();
            }
            List<OnHand> mixed = new ArrayList<>(taps);
            Collections.shuffle(mixed, chance);
            assertThat(marks(TapRanking.rank(wish, job, mixed))).isEqualTo(marks(ranked));
        }
    }

    private static List<OnHand> some(Random chance) {
        List<OnHand> taps = new ArrayList<>();
        FluteKind[] kinds = FluteKind.values();
        for (int i = 0; i < 12; i++) {
            List<Happening> happened = new ArrayList<>();
            if (chance.nextBoolean()) {
                happened.add(Crib.holes(1 + chance.nextInt(900), C45, 16));
            }
            if (chance.nextInt(5) == 0) {
                happened.add(new Happening.Lent("bench 4"));
            }
            String callOut = chance.nextInt(4) == 0 ? "M10" : "M8x1.25";
            taps.add(Crib.tap(
                    "T" + i, callOut, kinds[chance.nextInt(kinds.length)], C45, happened.toArray(Happening[]::new)));
        }
        return taps;
    }

    @Test
    void ofTwoAlikeTheSharperStandsFirstHoweverMuchTheyHaveCut() {
        Random chance = new Random(12);
        for (int round = 0; round < 60; round++) {
            int few = chance.nextInt(700);
            int many = few + 1 + chance.nextInt(300);
            OnHand sharper = few == 0 ? spiral("Z") : spiral("Z", Crib.holes(few, C45, 16));
            OnHand duller = spiral("A", Crib.holes(many, C45, 16));
            List<Ranked> ranked = TapRanking.rank(
                    wish(HoleEnd.BLIND, false), new Job(1 + chance.nextInt(120), DEPTH), List.of(duller, sharper));
            assertThat(marks(ranked)).as("%d against %d holes", few, many).containsExactly("Z", "A");
        }
    }

    @Test
    void aCallOutOfTheScrewAloneIsAFaultOfTheCaller() {
        TapWish screw =
                new TapWish(CallOuts.read("M8x1.25-6g").orThrow(), C45, TapWish.Place.UNKNOWN, TapWish.Drive.UNKNOWN);
        assertThatThrownBy(() -> TapRanking.rank(screw, new Job(1, null), List.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("no limits of a hole: M8x1.25-6g");
    }
}
