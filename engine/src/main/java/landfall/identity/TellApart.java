// SPDX-License-Identifier: Apache-2.0
package landfall.identity;

import java.util.Locale;
import landfall.thread.Family;
import landfall.thread.ScrewThread;

/**
 * The one further look that tells two candidates apart.
 *
 * @param measure in a word: taper, flank angle, pitch, crest, or none
 * @param first what the first of the two has there
 * @param second what the second has
 * @param words as a person reads it
 */
public record TellApart(String measure, String first, String second, String words) {
    private static final double ANGLE_TOLD_DEG = 2;
    private static final double PITCH_TOLD = 0.002;
    private static final double CREST_TOLD_MM = 0.02;

    static TellApart of(Candidate first, Candidate second) {
        ScrewThread a = first.callOut().thread();
        ScrewThread b = second.callOut().thread();
        String names = first.name() + " or " + second.name() + ": ";
        if (isTaper(a) != isTaper(b)) {
            return new TellApart(
                    "taper",
                    isTaper(a) ? "1 in 16" : "none",
                    isTaper(b) ? "1 in 16" : "none",
                    names + "lay a straight edge along the crests, or roll it on a flat: a pipe taper grows 1 in 16.");
        }
        double angleA = a.profile().includedAngle().deg();
        double angleB = b.profile().includedAngle().deg();
        if (Math.abs(angleA - angleB) > ANGLE_TOLD_DEG) {
            return new TellApart(
                    "flank angle",
                    String.format(Locale.ROOT, "%.1f deg", angleA),
                    String.format(Locale.ROOT, "%.1f deg", angleB),
                    names
                            + String.format(
                                    Locale.ROOT,
                                    "hold a thread gauge to the flanks: %.1f or %.1f deg.",
                                    angleA,
                                    angleB));
        }
        return byLength(a, b, names);
    }

    private static TellApart byLength(ScrewThread a, ScrewThread b, String names) {
        if (Math.abs(a.pitch().mm() - b.pitch().mm()) > PITCH_TOLD * a.pitch().mm()) {
            String ten = a.pitch().times(10).words();
            String other = b.pitch().times(10).words();
            return new TellApart(
                    "pitch",
                    ten + " over ten threads",
                    other + " over ten threads",
                    names + "measure the pitch over ten threads: %s or %s.".formatted(ten, other));
        }
        if (Math.abs(a.major().mm() - b.major().mm()) > CREST_TOLD_MM) {
            return new TellApart(
                    "crest",
                    a.major().words(),
                    b.major().words(),
                    names
                            + ("measure the crests again, behind the chamfer:"
                                            + " nominal %s or %s, a fresh tap a little over it.")
                                    .formatted(a.major().words(), b.major().words()));
        }
        return new TellApart(
                "none",
                "",
                "",
                names + "no measurement tells these apart; look for a marking, or gauge the first hole.");
    }

    private static boolean isTaper(ScrewThread thread) {
        return thread.family() == Family.NPT || thread.family() == Family.NPTF || thread.family() == Family.R;
    }
}
