// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.thread;

import java.util.Optional;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.sheets.thread.Contour.Heights;
import landfall.sheets.thread.Contour.Rounded;
import landfall.thread.Fit;
import landfall.thread.LimitsOfSize;
import landfall.thread.ScrewThread;
import landfall.thread.Side;
import landfall.thread.SideLimits;
import org.jspecify.annotations.Nullable;

/**
 * The contours of both sides of a thread: at the limits that leave most material, and at those that leave least.
 *
 * <p>Where a limit is open the contour of least material keeps to the other one. A thread without limits of a side has
 * its basic form there.
 */
final class Mating {
    private final ScrewThread thread;
    private final @Nullable SideLimits internal;
    private final @Nullable SideLimits external;
    private final @Nullable Side usual;
    private final boolean taper;

    Mating(LimitsOfSize limits) {
        this.thread = limits.callOut().thread();
        Optional<Fit> fit = limits.fit();
        this.internal = fit.map(Fit::internal).or(limits::internal).orElse(null);
        this.external = fit.map(Fit::external).or(limits::external).orElse(null);
        this.usual = fit.map(Fit::usual).orElse(null);
        this.taper = limits.taper().isPresent();
    }

    ScrewThread thread() {
        return thread;
    }

    @Nullable
    SideLimits limits(Side side) {
        return side == Side.INTERNAL ? internal : external;
    }

    /** Whether a side is not named by the call-out and drawn in its usual class, as a neighbouring part. */
    boolean isUsual(Side side) {
        return usual == side;
    }

    /** Whether a side is drawn in phantom lines: not what the call-out asks for. */
    boolean isNeighbour(Side side) {
        return isUsual(side) || !taper && !hasZones(side);
    }

    /** Whether a side has zones to draw. */
    boolean hasZones(Side side) {
        return limits(side) != null;
    }

    Contour most(Side side) {
        SideLimits limits = limits(side);
        if (limits == null) {
            return basic(side);
        }
        boolean inside = side == Side.INTERNAL;
        double pitch = end(limits.pitch(), inside, thread.pitchDiameter());
        double peak = end(limits.major(), inside, thread.major());
        double valley = end(limits.minor(), inside, thread.minorDiameter());
        return contour(new Heights(pitch / 2, peak / 2, valley / 2), Rounded.of(thread.family(), side, true));
    }

    Contour least(Side side) {
        SideLimits limits = limits(side);
        if (limits == null) {
            return basic(side);
        }
        boolean inside = side == Side.INTERNAL;
        Heights most = most(side).heights();
        double pitch = far(limits.pitch(), inside, most.pitchLine());
        double peak = far(limits.major(), inside, most.peak());
        double valley = far(limits.minor(), inside, most.valley());
        return contour(new Heights(pitch, peak, valley), Rounded.of(thread.family(), side, false));
    }

    private Contour basic(Side side) {
        return Contour.basic(thread, side, thread.pitchDiameter());
    }

    private Contour contour(Heights heights, Rounded rounded) {
        return new Contour(thread.pitch().mm(), thread.profile(), heights, rounded);
    }

    private static double end(Limits limits, boolean min, Length basic) {
        Length end = min ? limits.min() : limits.max();
        return end == null ? basic.mm() : end.mm();
    }

    private static double far(Limits limits, boolean inside, double near) {
        Length end = inside ? limits.max() : limits.min();
        return end == null ? near : end.mm() / 2;
    }

    /** A hole whose mate is no screw with limits of its own: a wire insert, or a taper pipe. */
    boolean isHoleOnly() {
        return !taper && external == null;
    }
}
