// SPDX-License-Identifier: Apache-2.0
package landfall.cost;

import java.util.List;
import landfall.fault.Caution;
import landfall.fault.OutOfRange;
import landfall.quantity.Length;
import landfall.quantity.Money;
import landfall.wear.Learned;
import landfall.wear.WearLaw;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;
import landfall.working.Worked;
import org.jspecify.annotations.Nullable;

/**
 * Sharpen a tap that is due, replace it, or scrap it. Its next run is held against the mean of a new tap's whole life:
 * the cheaper hole wins. That is the rule for replacing what wears out, where the new one is used as long as it pays.
 *
 * @param perHoleNew with new taps that are sharpened as long as they allow
 * @param perHoleNext in the next run of this tap; null where it allows none
 * @param gain what sharpening saves in that run against new taps, a loss below 0; null where it allows none
 */
public record NextStep(
        Verdict verdict,
        Money perHoleNew,
        @Nullable Money perHoleNext,
        @Nullable Money gain,
        List<Caution> cautions) {
    /** What to do. */
    public enum Verdict {
        SHARPEN,
        /** Scrap it and put a new one in its place. */
        REPLACE,
        /** The shelf has enough without it. */
        SCRAP
    }

    /**
     * The tap that is due.
     *
     * @param left sharpenings that it still allows
     * @param reground holes of a reground tap over those of a new one; 1 where nobody has told
     * @param missed whether the shelf misses it when it is gone
     */
    public record DueNow(int left, double reground, boolean missed) {
        public DueNow {
            if (left < 0) {
                throw new OutOfRange("sharpenings left", Integer.toString(left), "0 or more", "ask for the tap's life");
            }
            if (!(reground > 0 && reground <= 2)) {
                throw new OutOfRange(
                        "holes of a reground tap",
                        reground + " of a new one's",
                        "over 0 and at most 2",
                        "give the holes after a sharpening over the holes of a new tap, such as 0.9");
            }
        }
    }

    private static final Rule REGROUND = Rule.given("k_r", "1", "holes of a reground tap over those of a new one");
    private static final Rule REGROUND_USUAL = new Rule(
            "k_r",
            "1",
            "1",
            Source.of("common-practice", "a tap ground well cuts as a new one"),
            Trust.PRACTICE,
            "holes of a reground tap over those of a new one");

    public NextStep {
        cautions = List.copyOf(cautions);
    }

    /** @param limit at which taps are sharpened */
    public static Worked<NextStep> of(WearLaw law, Bench bench, SharpeningsAt sharpenings, Length limit, DueNow tap) {
        if (!(limit.mm() > 0)) {
            throw new OutOfRange("wear limit", limit.words(), "more than 0", "give the wear land to sharpen at");
        }
        Learned learned = law.learned().value();
        LimitPoint.Basis basis = new LimitPoint.Basis(
                learned.middle().expected(),
                learned.breaks().expected(),
                law.prior().subject().due());
        int count = sharpenings.count(limit);
        return Worked.of(pen -> {
            LimitPoint fresh = LimitPoint.at(limit, count, basis, bench, pen);
            return decide(fresh, bench, tap, law.cautions(), pen);
        });
    }

    private static NextStep decide(LimitPoint fresh, Bench bench, DueNow tap, List<Caution> cautions, Pen pen) {
        Verdict without = tap.missed ? Verdict.REPLACE : Verdict.SCRAP;
        if (tap.left == 0) {
            return new NextStep(without, fresh.perHole(), null, null, cautions);
        }
        CostRules rules = new CostRules(bench.currency());
        double k_r = pen.write(tap.reground == 1 ? REGROUND_USUAL : REGROUND, tap.reground);
        double holes = k_r * fresh.holes().aRun();
        double next = pen.write(
                rules.nextPerHole,
                (bench.sharpening().amount() + bench.breakage().amount() * fresh.risk()) / holes);
        double gain = pen.write(rules.gain, (fresh.perHole().amount() - next) * holes);
        return new NextStep(
                gain >= 0 ? Verdict.SHARPEN : without, fresh.perHole(), bench.in(next), bench.in(gain), cautions);
    }
}
