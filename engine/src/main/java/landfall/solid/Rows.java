// SPDX-License-Identifier: Apache-2.0
package landfall.solid;

/**
 * Rows that follow the thread round the tap, so that every corner of the profile lies on one: foot, flank, crest,
 * flank, foot. The tooth of turn n stands about u = n·P.
 *
 * <p>Where the chamfer cuts the crest off, the two rows of the crest slide down the flanks to the chamfer, place by
 * place; the rows between them and between the teeth lie where the chamfer runs out of crest or root, if it does so
 * there.
 */
final class Rows {
    /** The crest's rows keep this share of the thread's depth from its foot. */
    private static final double OFF_FOOT = 0.02;

    private static final int ROUNDS = 60;
    private static final double ALIKE = 1e-12;

    private final TapSurface surface;
    private final int flankSteps;
    private final int toAPitch;
    private final int first;
    private final int count;

    /** @param flankSteps rows from a foot to its crest */
    Rows(TapSurface surface, int flankSteps) {
        this.surface = surface;
        this.flankSteps = flankSteps;
        this.toAPitch = 4 + 2 * flankSteps;
        double spread = Math.abs(surface.lead) + surface.pitch;
        this.first = -(int) Math.ceil(spread / surface.pitch) - 3;
        double top = surface.length * (1 + surface.lead * Math.abs(surface.twist) / (2 * Math.PI));
        this.count = (int) Math.ceil((top + spread) / surface.pitch) + 6;
    }

    int count() {
        return count * toAPitch;
    }

    /** Rows from one land 1 to the next, a turn on. */
    int perTurn() {
        return surface.starts * toAPitch;
    }

    /** Height of a row at a land angle. */
    double height(int row, int land, double theta) {
        double middle = (first + Math.floorDiv(row, toAPitch)) * surface.pitch;
        int corner = Math.floorMod(row, toAPitch);
        if (corner == flankSteps + 1) {
            return runOut(crest(middle, -1, land, theta), crest(middle, 1, land, theta), surface.major, land, theta);
        }
        if (corner == toAPitch - 1) {
            double foot = surface.half(surface.root);
            return runOut(
                    surface.height(middle + foot, land, theta),
                    surface.height(middle + surface.pitch - foot, land, theta),
                    surface.root,
                    land,
                    theta);
        }
        boolean before = corner <= flankSteps;
        int side = before ? -1 : 1;
        double up = (double) (before ? corner : toAPitch - 2 - corner) / flankSteps;
        double foot = surface.height(middle + side * surface.half(surface.root), land, theta);
        return up == 0 ? foot : foot + up * (crest(middle, side, land, theta) - foot);
    }

    /** Where the flank of a tooth ends at its crest, or at the chamfer where that lies lower. */
    private double crest(double middle, int side, int land, double theta) {
        double radius = surface.major;
        double z = surface.height(middle + side * surface.half(radius), land, theta);
        double least = surface.root + OFF_FOOT * (surface.major - surface.root);
        for (int i = 0; i < ROUNDS; i++) {
            double cut = surface.chamfer(land % surface.lands, theta, z) + surface.lowered(theta, z);
            double next = Math.min(surface.major, Math.max(least, cut));
            z = surface.height(middle + side * surface.half(next), land, theta);
            if (Math.abs(next - radius) < ALIKE) {
                break;
            }
            radius = next;
        }
        return z;
    }

    /** The place between two rows where the chamfer meets the thread's crest or root, or half-way where it does not. */
    private double runOut(double low, double high, double level, int land, double theta) {
        boolean startCut = cut(land, theta, low, level);
        if (startCut == cut(land, theta, high, level)) {
            return (low + high) / 2;
        }
        double a = low;
        double b = high;
        for (int i = 0; i < ROUNDS; i++) {
            double m = (a + b) / 2;
            if (cut(land, theta, m, level) == startCut) {
                a = m;
            } else {
                b = m;
            }
        }
        double edge = 1e-3 * (high - low);
        return Math.min(high - edge, Math.max(low + edge, a));
    }

    /** Whether the chamfer lies under a level of the thread. */
    private boolean cut(int land, double theta, double z, double level) {
        return surface.chamfer(land % surface.lands, theta, z) + surface.lowered(theta, z) < level - 1e-9;
    }
}
