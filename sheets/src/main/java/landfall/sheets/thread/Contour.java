// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.thread;

import java.util.ArrayList;
import java.util.List;
import landfall.quantity.Length;
import landfall.thread.Family;
import landfall.thread.Profile;
import landfall.thread.ScrewThread;
import landfall.thread.Side;

/**
 * The line between screw and air, or nut and air, in the axial plane: radius over z. A peak (crest of the screw, root
 * of the nut) stands at z = 0 and every pitch from there; a valley halfway between. All in mm.
 *
 * <p>Flanks meet the pitch line a quarter of a pitch from the middle of a peak. Peak and valley are flat, or arcs
 * tangent to both flanks: radius = (distance from the sharp corner) / (1/sin A - 1), A being the flank angle. A flat
 * wider than nothing needs a peak under the sharp corner; over it the flanks meet.
 */
public final class Contour {
    private static final int ARC_STEPS = 10;

    private final double pitch;
    private final double flankRad;
    private final Heights heights;
    private final Rounded rounded;

    /** Radii of pitch line, peak and valley. */
    public record Heights(double pitchLine, double peak, double valley) {}

    /** Which of the two ends are arcs. */
    record Rounded(boolean peak, boolean valley) {
        static final Rounded NONE = new Rounded(false, false);
        static final Rounded BOTH = new Rounded(true, true);
        static final Rounded ROOT = new Rounded(false, true);

        /**
         * A hole drilled wider than the rounded form leaves flat crests. The root of an ISO metric screw is rounded and
         * lies between a flat one at its greatest minor diameter and an arc at its least.
         *
         * @param most whether the limits that leave most material are meant, or those that leave least
         */
        static Rounded of(Family family, Side side, boolean most) {
            return switch (family) {
                case WHITWORTH, BA, G, R -> side == Side.INTERNAL && !most ? new Rounded(true, false) : BOTH;
                case MJ, UNJ -> side == Side.EXTERNAL ? ROOT : NONE;
                case METRIC -> side == Side.EXTERNAL && !most ? ROOT : NONE;
                case UNIFIED, NPT, NPTF, ACME, STUB_ACME, TRAPEZOIDAL, STI_INCH, STI_METRIC -> NONE;
            };
        }
    }

    /** The basic form at a pitch diameter: crest and root stay at their basic sizes. */
    public static Contour basic(ScrewThread thread, Side side, Length pitchDiameter) {
        Heights heights = new Heights(
                pitchDiameter.mm() / 2,
                thread.major().mm() / 2,
                thread.minorDiameter().mm() / 2);
        return new Contour(thread.pitch().mm(), thread.profile(), heights, Rounded.of(thread.family(), side, true));
    }

    public record Corner(double z, double r) {}

    Contour(double pitch, Profile profile, Heights heights, Rounded rounded) {
        this.pitch = pitch;
        this.flankRad = profile.flankAngle().rad();
        this.heights = heights;
        this.rounded = rounded;
    }

    public Heights heights() {
        return heights;
    }

    /** Half the axial width of the thread at a radius, from the middle of a peak. */
    double halfWidth(double radius) {
        return pitch / 4 - (radius - heights.pitchLine) * Math.tan(flankRad);
    }

    private double sharpPeak() {
        return heights.pitchLine + pitch / 4 / Math.tan(flankRad);
    }

    private double sharpValley() {
        return heights.pitchLine - pitch / 4 / Math.tan(flankRad);
    }

    double peakRadius() {
        return rounded.peak ? arcRadius(sharpPeak() - heights.peak) : 0;
    }

    double valleyRadius() {
        return rounded.valley ? arcRadius(heights.valley - sharpValley()) : 0;
    }

    private double arcRadius(double fromSharp) {
        return Math.max(0, fromSharp) / (1 / Math.sin(flankRad) - 1);
    }

    /** Axial width of a flat peak; nothing when it is an arc. */
    double peakFlat() {
        return rounded.peak ? 0 : 2 * Math.max(0, halfWidth(heights.peak));
    }

    double valleyFlat() {
        return rounded.valley ? 0 : Math.max(0, pitch - 2 * halfWidth(heights.valley));
    }

    /** From z = from to z = to, cut off there. */
    public List<Corner> between(double from, double to) {
        List<Corner> all = new ArrayList<>();
        for (int k = (int) Math.floor(from / pitch) - 1; k * pitch < to + pitch; k++) {
            List<Corner> half = half();
            for (int i = half.size() - 1; i > 0; i--) {
                all.add(new Corner(k * pitch - half.get(i).z, half.get(i).r));
            }
            for (Corner corner : half.subList(0, half.size() - 1)) {
                all.add(new Corner(k * pitch + corner.z, corner.r));
            }
        }
        return cut(all, from, to);
    }

    private static List<Corner> cut(List<Corner> all, double from, double to) {
        List<Corner> kept = new ArrayList<>();
        for (int i = 0; i + 1 < all.size(); i++) {
            Corner a = all.get(i);
            Corner b = all.get(i + 1);
            if (a.z <= from && b.z > from) {
                kept.add(on(a, b, from));
            } else if (a.z > from && a.z < to) {
                kept.add(a);
            }
            if (a.z < to && b.z >= to) {
                kept.add(on(a, b, to));
            }
        }
        return kept;
    }

    private static Corner on(Corner a, Corner b, double z) {
        double share = b.z == a.z ? 0 : (z - a.z) / (b.z - a.z);
        return new Corner(z, a.r + share * (b.r - a.r));
    }

    /** From the middle of a peak to the middle of the next valley. */
    private List<Corner> half() {
        List<Corner> half = new ArrayList<>();
        double peak = Math.min(heights.peak, sharpPeak());
        double valley = Math.max(heights.valley, sharpValley());
        half.add(new Corner(0, peak));
        if (rounded.peak) {
            arc(half, 0, peak, peakRadius(), true);
        } else if (peakFlat() > 0) {
            half.add(new Corner(peakFlat() / 2, peak));
        }
        if (rounded.valley) {
            arc(half, pitch / 2, valley, valleyRadius(), false);
        } else if (valleyFlat() > 0) {
            half.add(new Corner(pitch / 2 - valleyFlat() / 2, valley));
        }
        half.add(new Corner(pitch / 2, valley));
        return half;
    }

    /** An arc from the middle outwards at a peak, from the flank inwards at a valley. */
    private void arc(List<Corner> half, double middle, double end, double radius, boolean peak) {
        double quarter = Math.PI / 2 - flankRad;
        for (int i = 1; i <= ARC_STEPS; i++) {
            double turn = quarter * (peak ? i : ARC_STEPS - i) / ARC_STEPS;
            double out = radius * Math.sin(turn);
            double down = radius * (1 - Math.cos(turn));
            half.add(peak ? new Corner(middle + out, end - down) : new Corner(middle - out, end + down));
        }
    }
}
