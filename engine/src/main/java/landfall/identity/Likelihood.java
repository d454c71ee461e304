// SPDX-License-Identifier: Apache-2.0
package landfall.identity;

import java.util.List;
import landfall.quantity.Length;
import landfall.tap.blank.TapBlank;
import landfall.thread.Family;
import landfall.thread.ScrewThread;
import org.jspecify.annotations.Nullable;

/**
 * How likely a tap for a thread is to measure as this one does. Densities per mm, per radian and the like cancel in the
 * norming; only their proportions matter.
 */
final class Likelihood {
    /**
     * A fresh tap's crest over nominal in pitches: inch 0.043 to 0.130 (B94.9 rule), metric from 0.4 t: about 0.03 to
     * 0.12.
     */
    private static final double FRESH = 0.085;

    private static final double FRESH_WIDTH = 0.03;
    private static final double WORN_WIDTH = 0.06;
    /** First and second taps of a hand set lie under nominal by design; amounts from memory. */
    private static final double FIRST = -0.25;

    private static final double SECOND = -0.10;
    private static final double SET_WIDTH = 0.08;
    private static final double PITCH_SHARE = 0.004;
    private static final double THREADS_MEASURED_OVER = 5;
    private static final double ANGLE_DEG = 1.5;
    private static final double SHANK_MM = 0.05;
    private static final double LISTED_SHANKS = 0.75;
    private static final double USUAL_FLUTES = 0.6;

    private final Sighting sighting;

    Likelihood(Sighting sighting) {
        this.sighting = sighting;
    }

    double of(ScrewThread thread) {
        double pitch = normal(
                sighting.pitch().mm() - thread.pitch().mm(),
                Math.max(
                        PITCH_SHARE * thread.pitch().mm(),
                        sighting.uncertainty().mm() / 2 / THREADS_MEASURED_OVER));
        return pitch == 0 ? 0 : pitch * crest(thread) * angle(thread) * shank(thread) * flutes(thread);
    }

    private double crest(ScrewThread thread) {
        double over = sighting.major().mm() - thread.major().mm();
        double P = thread.pitch().mm();
        Integer rings = sighting.seen().rings();
        if (rings != null && rings > 0 && rings < 3) {
            return spread(over, (rings == 1 ? FIRST : SECOND) * P, SET_WIDTH * P);
        }
        boolean taper = thread.family() == Family.NPT || thread.family() == Family.NPTF || thread.family() == Family.R;
        double fresh = spread(over, FRESH * P, (taper ? 10 : 1) * FRESH_WIDTH * P);
        double worn = spread(over, 0, WORN_WIDTH * P);
        double ofSet =
                rings == null ? spread(over, FIRST * P, SET_WIDTH * P) + spread(over, SECOND * P, SET_WIDTH * P) : 0;
        return 0.78 * fresh + 0.2 * worn + 0.01 * ofSet;
    }

    private double spread(double value, double mean, double width) {
        double u = sighting.uncertainty().mm() / 2;
        return normal(value - mean, Math.sqrt(width * width + u * u));
    }

    private double angle(ScrewThread thread) {
        var angle = sighting.seen().angle();
        return angle == null
                ? 1
                : normal(angle.deg() - thread.profile().includedAngle().deg(), ANGLE_DEG) * ANGLE_DEG;
    }

    private double shank(ScrewThread thread) {
        Length shank = sighting.seen().shank();
        List<TapBlank> blanks = TapBlank.of(thread.major());
        if (shank == null || blanks.isEmpty()) {
            return 1;
        }
        double best = blanks.stream()
                .mapToDouble(
                        blank -> normal(shank.mm() - blank.shank().mm(), SHANK_MM) * SHANK_MM * Math.sqrt(2 * Math.PI))
                .max()
                .orElse(0);
        return LISTED_SHANKS * best * 4 + (1 - LISTED_SHANKS);
    }

    private double flutes(ScrewThread thread) {
        Integer flutes = sighting.seen().flutes();
        if (flutes == null) {
            return 1;
        }
        return flutes == usualFlutes(thread) ? USUAL_FLUTES : (1 - USUAL_FLUTES) / 2;
    }

    /** Usual flutes of straight hand taps, common practice: 3 to about 4 mm, 4 to 1 in, 6 above on fine pitches. */
    static int usualFlutes(ScrewThread thread) {
        double d = thread.major().mm();
        if (d < 4) {
            return 3;
        }
        return d > Length.MM_PER_INCH && thread.pitch().mm() <= Length.MM_PER_INCH / 12 ? 6 : 4;
    }

    /** The blank whose shank is the one that was measured; null when none is near. */
    @Nullable
    TapBlank blank(ScrewThread thread) {
        Length shank = sighting.seen().shank();
        if (shank == null) {
            return null;
        }
        return TapBlank.of(thread.major()).stream()
                .filter(blank -> Math.abs(blank.shank().mm() - shank.mm()) <= 3 * SHANK_MM)
                .findFirst()
                .orElse(null);
    }

    private static double normal(double value, double width) {
        double z = value / width;
        return Math.abs(z) > 8 ? 0 : Math.exp(-z * z / 2) / (width * Math.sqrt(2 * Math.PI));
    }
}
