// SPDX-License-Identifier: Apache-2.0
package landfall.wear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Function;
import landfall.quantity.Band;
import landfall.quantity.Length;
import org.junit.jupiter.api.Test;

/**
 * Bands that say eight in ten hold eight in ten, over shops drawn from what practice thinks of shops. Of 600 shops 480
 * are expected inside, with a standard deviation of 9.8; four of those are allowed for.
 */
class ManyShopsTest {
    private static final int SHOPS = 600;
    private static final int FEWEST = 480 - 39;
    private static final int MOST = 480 + 39;

    @Test
    void ofTapsGroundWhenSomebodyFoundThemDue() {
        holds(shop -> shop.judged(10));
    }

    @Test
    void ofTapsWhoseWearLandsWereMeasured() {
        holds(shop -> shop.measured(10, (int) Math.ceil(1.5 * shop.middle())));
    }

    @Test
    void ofTapsSomeOfWhichStillGoOn() {
        holds(shop -> shop.taps(10, (int) Math.round(1.5 * shop.middle())));
    }

    @Test
    void ofTapsThatHaveBeenCutWithAndNobodyLookedAt() {
        int inside = 0;
        int asked = 0;
        for (int seed = 0; seed < SHOPS; seed++) {
            Shop shop = Shop.drawn(seed);
            WearLaw law = WearLaw.of(shop.judged(10), Shop.PRACTICE);
            double life = shop.life();
            int holes = (int) Math.max(1, 0.5 * shop.middle());
            boolean foundDue = life * Math.exp(Evidence.JUDGED * new Random(seed).nextGaussian()) <= holes;
            if (!foundDue) {
                asked++;
                Run own = Shop.run("own", Run.End.OPEN, holes, null);
                inside += holds(law.dueIn(own).value().life(), life) ? 1 : 0;
            }
        }
        assertThat(asked).isGreaterThan(SHOPS / 2);
        assertThat((double) inside / asked).isCloseTo(0.8, within(4 * 0.4 / Math.sqrt(asked)));
    }

    @Test
    void ofTapsWhoseOwnWearLandWasMeasured() {
        int inside = 0;
        for (int seed = 0; seed < SHOPS; seed++) {
            Shop shop = Shop.drawn(seed);
            Random loupe = new Random(seed);
            WearLaw law = WearLaw.of(shop.judged(10), Shop.PRACTICE);
            double life = shop.life();
            int holes = (int) Math.max(1, 0.6 * shop.middle());
            double land = holes / life * 0.2 * Math.exp(0.1 * loupe.nextGaussian()) + 0.02 * loupe.nextGaussian();
            Run own = Shop.run("own", Run.End.OPEN, holes, Length.ofMm(Math.max(0, land)));
            inside += holds(law.dueIn(own).value().life(), life) ? 1 : 0;
        }
        assertThat(inside).isBetween(FEWEST, MOST);
    }

    @Test
    void tenRecordsMissTheMiddleByMuchLessThanPracticeDoes() {
        double practice = 0;
        double ten = 0;
        double three = 0;
        for (int seed = 0; seed < SHOPS; seed++) {
            Shop shop = Shop.drawn(seed);
            practice += square(300 / shop.middle());
            ten += square(middle(shop.judged(10)) / shop.middle());
            three += square(middle(shop.judged(3)) / shop.middle());
        }
        assertThat(Math.sqrt(three / practice)).isLessThan(0.6);
        assertThat(Math.sqrt(ten / practice)).isLessThan(0.3);
    }

    @Test
    void chancesOfDueComeTrueAsOftenAsTheySay() {
        double said = 0;
        int came = 0;
        for (int seed = 0; seed < SHOPS; seed++) {
            Shop shop = Shop.drawn(seed);
            WearLaw law = WearLaw.of(shop.judged(10), Shop.PRACTICE);
            int job = (int) Math.ceil(shop.middle());
            said += law.survival(new Job(job, null)).value().due();
            came += shop.life() < job ? 1 : 0;
        }
        assertThat(Math.abs(came - said)).isLessThan(4 * Math.sqrt(SHOPS) / 2);
    }

    private static void holds(Function<Shop, List<Run>> records) {
        int lives = 0;
        int middles = 0;
        for (int seed = 0; seed < SHOPS; seed++) {
            Shop shop = Shop.drawn(seed);
            Learned learned = WearLaw.of(new ArrayList<>(records.apply(shop)), Shop.PRACTICE)
                    .learned()
                    .value();
            lives += holds(learned.life(), shop.life()) ? 1 : 0;
            middles += holds(learned.middle(), shop.middle()) ? 1 : 0;
        }
        assertThat(lives).as("lives inside").isBetween(FEWEST, MOST);
        assertThat(middles).as("middles inside").isBetween(FEWEST, MOST);
    }

    private static boolean holds(Band band, double x) {
        return band.low() <= x && x <= band.high();
    }

    private static double middle(List<Run> runs) {
        return WearLaw.of(runs, Shop.PRACTICE).learned().value().middle().expected();
    }

    private static double square(double ratio) {
        double ln = Math.log(ratio);
        return ln * ln;
    }
}
