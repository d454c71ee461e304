// SPDX-License-Identifier: Apache-2.0
package landfall.choice;

import java.util.Locale;
import java.util.Optional;
import landfall.choice.Unfit.Why;
import landfall.history.Standing;
import landfall.history.Status;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.tap.FluteKind;
import landfall.thread.Hand;
import landfall.thread.ScrewThread;
import landfall.thread.Side;
import landfall.thread.SideLimits;
import landfall.wear.Due;
import landfall.wear.Job;
import landfall.wear.Survival;
import landfall.working.Pen;
import org.jspecify.annotations.Nullable;

/** Holds one tap after the other against one hole. */
final class Fitness {
    private static final double LIKELY = 0.5;
    private static final double PERHAPS = 0.1;
    private static final double RISKY = 0.05;
    private static final double SAME_MM = 1e-6;
    /** Cards give limits to a micrometre, the marks give more. */
    private static final double MARKED_MM = 1e-3;

    private static final double LONG_CHAMFER = 5;

    private final TapWish wish;
    private final Job job;
    private final Limits hole;
    private final TapLimit limit;
    private final Optional<Reach> usual;

    private Fitness(TapWish wish, Job job, Limits hole) {
        this.wish = wish;
        this.job = job;
        this.hole = hole;
        this.limit = TapLimit.of(wish.callOut(), Pen.NONE);
        this.usual = Reach.of(wish.callOut().thread(), wish.byHand(), Pen.NONE);
    }

    static Fitness of(TapWish wish, Job job) {
        Limits pitch = wish.callOut()
                .limits(Side.INTERNAL, Pen.NONE)
                .map(SideLimits::pitch)
                .orElseThrow(() -> new IllegalArgumentException(
                        "no limits of a hole: " + wish.callOut().normal()));
        return new Fitness(wish, job, pitch);
    }

    Ranked judge(OnHand tap) {
        Verdict verdict = new Verdict();
        place(tap.standing(), verdict);
        ScrewThread wanted = wish.callOut().thread();
        ScrewThread thread = tap.callOut().thread();
        if (!thread.equals(wanted)) {
            boolean otherHand = thread.hand() != wanted.hand();
            verdict.no(
                    Why.THREAD,
                    "Its thread is " + tap.callOut().withoutClass().normal()
                            + (otherHand ? (thread.hand() == Hand.LEFT ? ", left-hand." : ", right-hand.") : "."));
            return verdict.on(tap, null);
        }
        kind(tap.build().flutes(), verdict);
        limits(tap, verdict);
        chamfer(tap.build().chamferThreads(), verdict);
        reach(tap, verdict);
        Boolean passed = tap.standing().condition().passed();
        if (Boolean.FALSE.equals(passed)) {
            verdict.no(Why.FAILED, "It did not pass its last inspection.");
        } else if (Boolean.TRUE.equals(passed)) {
            verdict.reason("It passed its last inspection.");
        }
        return verdict.on(tap, wear(tap, verdict));
    }

    private static void place(Standing standing, Verdict verdict) {
        String with = standing.place().isEmpty() ? "" : " to " + standing.place();
        switch (standing.status()) {
            case BROKEN -> verdict.no(Why.BROKEN, "It is broken.");
            case SCRAPPED -> verdict.no(Why.SCRAPPED, "It is scrapped.");
            case LENT -> verdict.no(Why.LENT, "It is lent" + with + ": ask for it back.");
            case ISSUED -> verdict.against(Verdict.FAIR, "It is issued" + with + ": ask for it before you begin.");
            case ON_HAND -> {}
        }
    }

    private void kind(FluteKind kind, Verdict verdict) {
        Weighing weighing = new Weighing(wish, kind);
        verdict.points(weighing.points());
        weighing.reasons().forEach(verdict::reason);
        weighing.cautions().forEach(verdict::caution);
        if (kind == FluteKind.FORMING
                && (wish.material() == null || !wish.material().canBeFormed())) {
            verdict.no(Why.FORMING, "It is a forming tap, and this material is not known to flow.");
        }
    }

    /** Judged by its measured pitch diameter where it was measured since it was ground, else by its card. */
    private void limits(OnHand tap, Verdict verdict) {
        Length measured = tap.standing().condition().sizes().pitchDiameter();
        Limits own =
                measured != null ? new Limits(measured, measured) : tap.build().pitch();
        if (own == null) {
            verdict.against(
                    Verdict.SLIGHT,
                    "Its limit is not on its card: look for " + limit.words() + ", and gauge the first hole.");
            return;
        }
        if (over(own.max(), hole.max()) || over(own.min(), hole.max())) {
            verdict.no(
                    Why.LIMIT,
                    "Its pitch diameter is up to " + words(own.max(), own.min()) + ", over the greatest of the hole, "
                            + words(hole.max(), null) + ".");
        } else if (over(hole.min(), own.max()) || (own.max() == null && over(hole.min(), own.min()))) {
            verdict.no(
                    Why.LIMIT,
                    "Its pitch diameter is " + words(own.max(), own.min()) + " at most, under the least of the hole, "
                            + words(hole.min(), null) + ".");
        } else if (over(hole.min(), own.min())) {
            verdict.against(Verdict.SLIGHT, "It may cut under the least pitch diameter: gauge the first hole.");
        } else if (isAdvised(own)) {
            verdict.forIt(Verdict.FAIR, "Its limit is the one that is advised, " + limit.words() + ".");
        } else {
            verdict.caution("Its limit is inside the class, and is not the one advised, " + limit.words() + ".");
        }
    }

    private boolean isAdvised(Limits own) {
        Limits advised = limit.pitch();
        return advised != null && same(own.min(), advised.min()) && same(own.max(), advised.max());
    }

    private static boolean same(@Nullable Length one, @Nullable Length other) {
        return one != null && other != null && Math.abs(one.mm() - other.mm()) < MARKED_MM;
    }

    private static boolean over(@Nullable Length one, @Nullable Length other) {
        return one != null && other != null && one.mm() > other.mm() + SAME_MM;
    }

    private static String words(@Nullable Length one, @Nullable Length other) {
        Length told = one != null ? one : other;
        return told == null ? "not told" : told.words();
    }

    private void chamfer(@Nullable Double threads, Verdict verdict) {
        if (threads != null && !wish.through() && threads > LONG_CHAMFER) {
            verdict.against(
                    Verdict.FAIR,
                    String.format(
                            Locale.ROOT,
                            "Its chamfer of %.1f threads is long for a blind hole: the drill must go deeper for it.",
                            threads));
        }
    }

    /** Certain by its own thread length where the shank stays outside; a usual blank is only a hint. */
    private void reach(OnHand tap, Verdict verdict) {
        Length depth = wish.place().depth();
        if (depth == null) {
            return;
        }
        Double own = tap.build().chamferThreads();
        double chamfer = own != null ? own : Lead.of(wish, tap.build().flutes()).usual();
        Length needed = depth.plus(wish.callOut().thread().pitch().times(chamfer));
        Length thread = tap.build().body().threadLength();
        if (thread != null && needed.compareTo(thread) <= 0) {
            verdict.reason("It reaches: its thread is " + thread.words() + " long.");
        } else if (thread != null && shankStaysOut(tap)) {
            verdict.no(
                    Why.REACH,
                    "Its point must go " + needed.words() + " deep; its thread is " + thread.words()
                            + " long, and its shank is thicker than the hole.");
        } else if (usual.isEmpty()) {
            verdict.against(
                    Verdict.SLIGHT, "Its reach is not known: its point must go " + needed.words() + " deep. Measure.");
        } else if (needed.compareTo(usual.get().depth()) <= 0) {
            verdict.caution("By a usual blank it reaches " + needed.words() + "; it was not measured.");
        } else {
            verdict.against(
                    Verdict.FAIR,
                    "Its point must go " + needed.words() + " deep, a usual tap of its size reaches "
                            + usual.get().depth().words() + ": measure it before you count on it.");
        }
    }

    private boolean shankStaysOut(OnHand tap) {
        Length shank = tap.build().body().shank();
        Length neck = tap.build().body().neck();
        return shank != null
                && neck == null
                && shank.compareTo(wish.callOut().thread().minorDiameter()) >= 0;
    }

    private Ranked.@Nullable Worn wear(OnHand tap, Verdict verdict) {
        OnHand.Wearing wearing = tap.wearing();
        Status status = tap.standing().status();
        if (wearing == null || status.ended()) {
            return null;
        }
        Due due = wearing.law().dueIn(wearing.run()).value();
        Survival survival = wearing.law().survival(wearing.run(), job).value();
        Length land = tap.standing().condition().sizes().wearLand();
        Length limitOfWear = wearing.law().prior().subject().due();
        if (over(land, limitOfWear)) {
            verdict.no(
                    Why.DULL,
                    "Dull: its wear land was measured as " + words(land, null) + ", over the " + limitOfWear.words()
                            + " at which such a tap is due.");
        } else if (survival.due() > LIKELY) {
            verdict.no(
                    Why.DULL,
                    String.format(
                            Locale.ROOT,
                            "Too dull for %d holes: the chance that it is due before the last one is %.0f %%.",
                            job.holes(),
                            100 * survival.due()));
        } else if (survival.due() > PERHAPS) {
            verdict.against(
                    Verdict.SLIGHT,
                    String.format(
                            Locale.ROOT,
                            "It may be due before the last of %d holes: chance %.0f %%. Look at its edge on the way.",
                            job.holes(),
                            100 * survival.due()));
        }
        beside(tap, survival, verdict);
        return new Ranked.Worn(due.used(), survival);
    }

    private static void beside(OnHand tap, Survival survival, Verdict verdict) {
        if (survival.breaks() > RISKY) {
            verdict.caution(String.format(
                    Locale.ROOT,
                    "It may break in the job: chance %.0f %%. Have another at hand.",
                    100 * survival.breaks()));
        }
        if (tap.standing().condition().coatingLost()) {
            verdict.caution("Its coating is gone.");
        }
        if (!tap.build().set().isEmpty()) {
            verdict.caution("It belongs to the set " + tap.build().set()
                    + ": taps of a serial set are used in order, the first ones cut undersize.");
        }
    }
}
