// SPDX-License-Identifier: Apache-2.0
package landfall.thread;

import landfall.quantity.Length;

/**
 * Tolerances by formula go to the nearest preferred number of series R40, forty steps of about 6 % a decade, shown in
 * whole micrometres.
 *
 * <p>Nearest is by ratio. Halves of a micrometre go to the even figure, as the tables of ISO 965 have it (26.5 is 26,
 * 31.5 is 32).
 */
public final class PreferredNumber {
    /** One decade of R40, times 100. */
    private static final int[] R40 = {
        100, 106, 112, 118, 125, 132, 140, 150, 160, 170, 180, 190, 200, 212, 224, 236, 250, 265, 280, 300, 315, 335,
        355, 375, 400, 425, 450, 475, 500, 530, 560, 600, 630, 670, 710, 750, 800, 850, 900, 950
    };

    private PreferredNumber() {}

    /** The preferred number nearest to a positive length, in whole micrometres. */
    public static Length nearest(Length raw) {
        double um = raw.mm() * 1000;
        double decade = Math.pow(10, Math.floor(Math.log10(um)));
        double best = 10 * decade;
        for (int step : R40) {
            double candidate = step * decade / 100;
            if (Math.abs(Math.log(candidate / um)) < Math.abs(Math.log(best / um))) {
                best = candidate;
            }
        }
        return Length.ofMm(Math.rint(best) / 1000);
    }
}
