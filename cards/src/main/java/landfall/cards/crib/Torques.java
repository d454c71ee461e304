// SPDX-License-Identifier: Apache-2.0
package landfall.cards.crib;

import java.util.ArrayList;
import java.util.List;
import landfall.cards.words.Words;
import landfall.cut.CutForecast;
import landfall.cut.CutWish;
import landfall.fault.Answer;
import landfall.fault.Caution;
import landfall.feedback.TorqueFeedback;
import landfall.history.Happening;
import landfall.quantity.Band;
import landfall.quantity.Length;
import landfall.quantity.Torque;
import landfall.tap.Tap;
import landfall.tap.Wear;
import landfall.thread.Profile;
import landfall.thread.ScrewThread;
import landfall.wear.Run;
import landfall.working.Worked;
import org.jspecify.annotations.Nullable;

/**
 * Torques that were measured on one tap, beside what was to be expected.
 *
 * @param cuts the newest, in the order they were cut
 */
public record Torques(List<Cut> cuts, Worked<TorqueFeedback> learned) {
    /** Each forecast solves a section: a page needs no more. */
    private static final int MOST = 8;
    /** The share of thread that the hole is taken to have: 75 %, common practice. */
    private static final double SHARE = 0.75;

    static final Caution HOLE_TAKEN = new Caution(
            "torqueHoleTaken",
            "Which drill the holes had is not on record: the forecasts of torque take 75 % of thread (common practice)."
                    + " A hole with less thread takes less torque, and the comparison then flatters the tap.",
            "torques");

    /**
     * One cut.
     *
     * @param holes of its run with it
     */
    public record Cut(long holes, Torque measured, Band forecast) {}

    public Torques {
        cuts = List.copyOf(cuts);
    }

    static @Nullable Torques of(ShopLaws.Found found, List<Run> own, @Nullable Tap tap, List<String> wanting) {
        boolean any = own.stream().flatMap(run -> run.cuts().stream()).anyMatch(cut -> isTold(cut, found));
        if (!any) {
            wanting.add(Words.of("prospect.want.torque"));
            return null;
        }
        if (tap == null) {
            return null;
        }
        List<Cut> cuts = new ArrayList<>();
        for (Run run : own) {
            add(run, tap, found, cuts);
        }
        List<Cut> newest = cuts.subList(Math.max(0, cuts.size() - MOST), cuts.size());
        if (newest.isEmpty()) {
            wanting.add(Words.of("prospect.want.forecast"));
            return null;
        }
        double group =
                newest.get(0).forecast().high() / newest.get(0).forecast().expected();
        List<TorqueFeedback.Compared> compared = newest.stream()
                .map(cut -> new TorqueFeedback.Compared(cut.measured(), cut.forecast()))
                .toList();
        return new Torques(newest, TorqueFeedback.of(compared, group));
    }

    private static boolean isTold(Happening.Tapped cut, ShopLaws.Found found) {
        return cut.felt().torque() != null
                && cut.work().depth() != null
                && found.material().id().equals(cut.work().material());
    }

    private static void add(Run run, Tap tap, ShopLaws.Found found, List<Cut> cuts) {
        long holes = 0;
        double life = found.due().value().life().expected();
        for (Happening.Tapped cut : run.cuts()) {
            holes += cut.holes().count();
            Torque torque = cut.felt().torque();
            Length depth = cut.work().depth();
            if (torque == null || depth == null || !isTold(cut, found)) {
                continue;
            }
            Length due = found.law().prior().subject().due();
            Wear wear = Wear.of(due.times(holes / life));
            CutWish wish = new CutWish(found.material(), hole(tap.thread()), depth, wear, CutWish.How.USUAL);
            if (CutForecast.of(tap, wish) instanceof Answer.Of<Worked<CutForecast>> of) {
                Band full = of.value().value().load().torque().full();
                cuts.add(new Cut(holes, torque, full));
            }
        }
    }

    /** The hole is not on record: that of 75 % of thread, against the old full depth where the thread has 60 deg. */
    private static Length hole(ScrewThread thread) {
        boolean sixty = thread.profile().includedAngle().deg() == 60;
        double full = sixty ? 1.5 * Profile.H_OVER_P : 2 * thread.profile().depth();
        return thread.major().minus(thread.pitch().times(SHARE * full));
    }
}
