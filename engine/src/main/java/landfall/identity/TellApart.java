// SPDX-License-Identifier: Apache-2.0
package landfall.identity;

import java.util.Locale;
import landfall.thread.Family;
import landfall.thread.ScrewThread;

/** The one further look that tells two candidates apart. */
final class TellApart {
    private TellApart() {}

    static String of(Candidate first, Candidate second) {
        ScrewThread a = first.callOut().thread();
        ScrewThread b = second.callOut().thread();
        String names = first.name() + " or " + second.name() + ": ";
        if (isTaper(a) != isTaper(b)) {
            return names + "lay a straight edge along the crests, or roll it on a flat: a pipe taper grows 1 in 16.";
        }
        double angle = Math.abs(
                a.profile().includedAngle().deg() - b.profile().includedAngle().deg());
        if (angle > 2) {
            return names
                    + String.format(
                            Locale.ROOT,
                            "hold a thread gauge to the flanks: %.1f or %.1f deg.",
                            a.profile().includedAngle().deg(),
                            b.profile().includedAngle().deg());
        }
        double parting = Math.abs(a.pitch().mm() - b.pitch().mm());
        if (parting > 0.002 * a.pitch().mm()) {
            return names
                    + String.format(
                            Locale.ROOT,
                            "measure the pitch over ten threads: %s or %s.",
                            a.pitch().times(10).words(),
                            b.pitch().times(10).words());
        }
        double apart = Math.abs(a.major().mm() - b.major().mm());
        if (apart > 0.02) {
            return names
                    + "measure the crests again, behind the chamfer: nominal "
                    + a.major().words() + " or "
                    + b.major().words() + ", a fresh tap a little over it.";
        }
        return names + "no measurement tells these apart; look for a marking, or gauge the first hole.";
    }

    private static boolean isTaper(ScrewThread thread) {
        return thread.family() == Family.NPT || thread.family() == Family.NPTF || thread.family() == Family.R;
    }
}
