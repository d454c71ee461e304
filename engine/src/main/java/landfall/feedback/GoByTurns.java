// SPDX-License-Identifier: Apache-2.0
package landfall.feedback;

import java.util.List;
import landfall.fault.Caution;
import landfall.fault.OutOfRange;
import landfall.quantity.Band;
import landfall.quantity.Length;
import landfall.wear.Run;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;
import landfall.working.Worked;
import org.hipparchus.distribution.continuous.BetaDistribution;
import org.jspecify.annotations.Nullable;

/**
 * The chance that the GO plug goes in, from the turns it went in at first holes.
 *
 * @param gauged first holes on record with turns and depth
 * @param went of those, in all the way
 * @param chance of the next one, 1 for certain; eight in ten inside
 */
public record GoByTurns(int gauged, int went, Band chance, List<Caution> cautions) {
    private static final Source NOTE = Source.of("derived", "docs/methods/feedback.md");
    private static final Source PRACTICE = Source.of("common-practice", "first holes of a sound tap");
    private static final double GOOD = 1.9;
    private static final double BAD = 0.1;
    private static final double TENTH = 0.1;
    private static final int FEW = 10;

    static final Rule PRIOR_GOOD =
            Rule.table("a_g", "1", PRACTICE, Trust.ESTIMATE, "good holes that practice stands for: nineteen in twenty");
    static final Rule PRIOR_BAD =
            Rule.table("b_g", "1", PRACTICE, Trust.ESTIMATE, "bad holes that it stands for; two holes together");
    static final Rule GAUGED = Rule.given("n_g", "1", "first holes gauged");
    static final Rule WENT = Rule.given("k_g", "1", "of those, where GO went in all the way");
    static final Rule LOW = Rule.learned("P_gl", "1", NOTE, "chance that GO goes in, low");
    public static final Rule CHANCE =
            new Rule("P_g", "(a_g + k_g)/(a_g + b_g + n_g)", "1", NOTE, Trust.ESTIMATE, "chance that GO goes in");
    static final Rule HIGH = Rule.learned("P_gh", "1", NOTE, "chance that GO goes in, high");

    public GoByTurns {
        cautions = List.copyOf(cautions);
    }

    /**
     * From runs: GO went in all the way where its turns reach the depth less one turn, for the incomplete threads at
     * the mouth.
     */
    public static Worked<GoByTurns> of(List<Run> runs, Length pitch) {
        if (!(pitch.mm() > 0)) {
            throw new OutOfRange("pitch", pitch.words(), "more than 0", "give the thread");
        }
        int gauged = 0;
        int went = 0;
        for (Run run : runs) {
            for (var cut : run.cuts()) {
                Boolean good = wentIn(cut.felt().gaugeTurns(), cut.work().depth(), pitch);
                gauged += good == null ? 0 : 1;
                went += good != null && good ? 1 : 0;
            }
        }
        return of(gauged, went);
    }

    private static @Nullable Boolean wentIn(@Nullable Double turns, @Nullable Length depth, Length pitch) {
        return turns == null || depth == null ? null : turns >= depth.over(pitch) - 1 - 1e-9;
    }

    public static Worked<GoByTurns> of(int gauged, int went) {
        if (went < 0 || went > gauged) {
            throw new OutOfRange("holes that gauged GO", went + " of " + gauged, "from 0 to all", "count again");
        }
        return Worked.of(pen -> chance(gauged, went, pen));
    }

    private static GoByTurns chance(int gauged, int went, Pen pen) {
        double a = pen.write(PRIOR_GOOD, GOOD);
        double b = pen.write(PRIOR_BAD, BAD);
        double n = pen.write(GAUGED, gauged);
        double k = pen.write(WENT, went);
        BetaDistribution law = new BetaDistribution(a + k, b + n - k);
        double mean = pen.write(CHANCE, (a + k) / (a + b + n));
        // where nearly all is good the mean lies under the lowest tenth: the band then reaches down to it
        double low = pen.write(LOW, Math.min(mean, law.inverseCumulativeProbability(TENTH)));
        double high = pen.write(HIGH, Math.max(mean, law.inverseCumulativeProbability(1 - TENTH)));
        List<Caution> cautions = gauged >= FEW
                ? List.of()
                : List.of(new Caution(
                        gauged == 0 ? "priorOnly" : "fewRecords",
                        "First holes gauged on record: " + gauged + ". Practice, without a source, weighs with them.",
                        "n_g"));
        return new GoByTurns(gauged, went, new Band(low, mean, high), cautions);
    }
}
