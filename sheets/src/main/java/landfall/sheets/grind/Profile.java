// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.grind;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * The upper half of a tap's section in the axial plane: the thread's basic profile cut by the chamfer. All in mm: z
 * from the point towards the shank, r from the axis. A crest stands half a pitch behind the end of the chamfer.
 */
final class Profile {
    private final TapShape tap;
    private final double length;

    Profile(TapShape tap, double length) {
        this.tap = tap;
        this.length = length;
    }

    record Corner(double z, double r) {}

    /**
     * Corners from the point to the given length, exact: every kink of the thread and every crossing with the chamfer.
     */
    List<Corner> corners() {
        List<Double> kinks = new ArrayList<>(kinks());
        List<Corner> corners = new ArrayList<>();
        for (int i = 0; i < kinks.size(); i++) {
            double z = kinks.get(i);
            corners.add(new Corner(z, Math.min(thread(z), chamfer(z))));
            if (i + 1 < kinks.size()) {
                double next = kinks.get(i + 1);
                double here = thread(z) - chamfer(z);
                double there = thread(next) - chamfer(next);
                if (here * there < 0) {
                    double crossing = z + (next - z) * here / (here - there);
                    corners.add(new Corner(crossing, chamfer(crossing)));
                }
            }
        }
        return corners;
    }

    private TreeSet<Double> kinks() {
        double pitch = tap.thread().pitch().mm();
        TreeSet<Double> kinks = new TreeSet<>(List.of(0.0, length));
        double crest = crestAt();
        int first = (int) Math.floor(-crest / pitch) - 1;
        for (int i = first; crest + i * pitch < length + pitch; i++) {
            for (double half : new double[] {halfCrest(), halfRootEdge()}) {
                for (double side : new double[] {-1, 1}) {
                    double z = crest + i * pitch + side * half;
                    if (z > 0 && z < length) {
                        kinks.add(z);
                    }
                }
            }
        }
        double end = tap.chamferLength().mm();
        if (end < length) {
            kinks.add(end);
        }
        return kinks;
    }

    double crestAt() {
        return tap.chamferLength().mm() + tap.thread().pitch().mm() / 2;
    }

    private double halfCrest() {
        return tap.thread().profile().crestFlat() * tap.thread().pitch().mm() / 2;
    }

    /** Half the width of a tooth at its root: from the middle of the crest to where the flank meets the root. */
    private double halfRootEdge() {
        double depth = tap.thread().major().minus(tap.thread().minorDiameter()).mm() / 2;
        return halfCrest()
                + depth * Math.tan(tap.thread().profile().flankAngle().rad());
    }

    private double thread(double z) {
        double pitch = tap.thread().pitch().mm();
        double off = Math.abs(Math.IEEEremainder(z - crestAt(), pitch));
        double major = tap.thread().major().mm() / 2;
        double minor = tap.thread().minorDiameter().mm() / 2;
        if (off <= halfCrest()) {
            return major;
        }
        double slope = Math.tan(tap.thread().profile().flankAngle().rad());
        return Math.max(minor, major - (off - halfCrest()) / slope);
    }

    private double chamfer(double z) {
        return tap.pointRadius().mm() + z * Math.tan(tap.chamfer().angle().rad());
    }
}
