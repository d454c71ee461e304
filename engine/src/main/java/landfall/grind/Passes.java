// SPDX-License-Identifier: Apache-2.0
package landfall.grind;

import java.util.ArrayList;
import java.util.List;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;

/** How the stock is divided into passes; each pass takes all lands round before the next infeed. */
public final class Passes {
    private static final Source PRACTICE = Source.of("common-practice", "infeed a pass on HSS, dry");
    private static final Source GEOMETRY = Source.of("derived", "docs/methods/regrind-stock.md");
    public static final Rule WHOLE =
            new Rule("c_all", "s_all*sin(κ)", "mm", GEOMETRY, Trust.DERIVED, "whole infeed square to the chamfer");
    static final Rule ROUGH_MOST = Rule.table(
            "c_rmax", "mm", PRACTICE, Trust.PRACTICE, "greatest infeed of a rough pass (0.012 to 0.025 mm is common)");
    static final Rule FINISH_MOST = Rule.table(
            "c_fmax", "mm", PRACTICE, Trust.PRACTICE, "greatest infeed of a finish pass (0.005 to 0.008 mm is common)");
    static final Rule FINISH_COUNT = new Rule(
            "n_f",
            "if(c_all > 2*c_fmax, 2, floor(c_all/c_fmax + 0.999999))",
            "1",
            PRACTICE,
            Trust.PRACTICE,
            "finish passes");
    static final Rule FINISH_EACH =
            new Rule("c_f", "min(c_fmax, c_all/n_f)", "mm", GEOMETRY, Trust.DERIVED, "infeed of each finish pass");
    static final Rule ROUGH_COUNT =
            new Rule("n_r", "floor((c_all - n_f*c_f)/c_rmax + 0.999999)", "1", GEOMETRY, Trust.DERIVED, "rough passes");
    static final Rule ROUGH_EACH =
            new Rule("c_r", "(c_all - n_f*c_f)/n_r", "mm", GEOMETRY, Trust.DERIVED, "infeed of each rough pass");

    private static final double ROUGH_MM = 0.02;
    private static final double FINISH_MM = 0.006;
    /** Whole numbers of passes: anything over a millionth of a pass makes one more. */
    private static final double CEILING = 0.999999;

    private Passes() {}

    /**
     * A group of equal passes.
     *
     * @param infeed of each, square to the chamfer; zero for spark-out
     */
    public record Pass(Kind kind, int count, Length infeed) {}

    public enum Kind {
        ROUGH("rough"),
        FINISH("finish"),
        SPARK_OUT("spark out");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    static List<Pass> of(Stock stock, Angle kappa, Pen pen) {
        double c_all = pen.write(WHOLE, stock.after().wholeAxial().mm() * Math.sin(kappa.rad()));
        double c_rmax = pen.write(ROUGH_MOST, ROUGH_MM);
        double c_fmax = pen.write(FINISH_MOST, FINISH_MM);
        double n_f = pen.write(FINISH_COUNT, c_all > 2 * c_fmax ? 2 : Math.floor(c_all / c_fmax + CEILING));
        double c_f = pen.write(FINISH_EACH, Math.min(c_fmax, c_all / n_f));
        double n_r = pen.write(ROUGH_COUNT, Math.floor((c_all - n_f * c_f) / c_rmax + CEILING));
        List<Pass> passes = new ArrayList<>();
        if (n_r > 0) {
            double c_r = pen.write(ROUGH_EACH, (c_all - n_f * c_f) / n_r);
            passes.add(new Pass(Kind.ROUGH, (int) n_r, Length.ofMm(c_r)));
        }
        passes.add(new Pass(Kind.FINISH, (int) n_f, Length.ofMm(c_f)));
        passes.add(new Pass(Kind.SPARK_OUT, 2, Length.ZERO));
        return List.copyOf(passes);
    }
}
