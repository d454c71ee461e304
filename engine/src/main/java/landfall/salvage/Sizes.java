// SPDX-License-Identifier: Apache-2.0
package landfall.salvage;

import java.util.Optional;
import landfall.quantity.Limits;
import landfall.thread.CallOut;
import landfall.thread.Family;
import landfall.thread.Side;
import landfall.thread.SideLimits;
import landfall.thread.insert.InsertCallOut;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;
import org.jspecify.annotations.Nullable;

/**
 * Sizes that a way out is set by.
 *
 * @param core of the stump, as such taps are made
 * @param tool mill or electrode: over the core, so that the lands come loose, and under the thread; null where the core
 *     may be as thick as the hole (forming taps)
 * @param insert hole of a wire insert for this call-out; empty where none is held
 */
public record Sizes(Limits core, @Nullable Limits tool, Optional<Insert> insert) {
    private static final Source REMEMBERED = Source.of("memory", "cores of taps by number of flutes");
    private static final Source GEOMETRY = Source.of("derived", "docs/methods/broken-tap.md");
    static final Rule MAJOR = Rule.given("d_x", "mm", "basic major diameter");
    static final Rule LEAST_SHARE = Rule.table("s_1", "1", REMEMBERED, Trust.ESTIMATE, "core over major, least");
    static final Rule MOST_SHARE = Rule.table("s_2", "1", REMEMBERED, Trust.ESTIMATE, "core over major, greatest");
    public static final Rule CORE_LEAST =
            new Rule("d_k1", "s_1*d_x", "mm", GEOMETRY, Trust.ESTIMATE, "core of the stump, least");
    public static final Rule CORE_MOST =
            new Rule("d_k2", "s_2*d_x", "mm", GEOMETRY, Trust.ESTIMATE, "core of the stump, greatest");
    public static final Rule MINOR = Rule.table(
            "D_x", "mm", Source.of("derived", "basic profile"), Trust.DERIVED, "basic minor diameter of the thread");

    /**
     * Where the thread is lost: the hole of a wire insert.
     *
     * @param callOut of that hole
     * @param major least, mouth of its thread
     */
    public record Insert(CallOut callOut, Limits minor, Limits major) {}

    static Sizes of(BrokenTap broken, Pen pen) {
        double d = pen.write(MAJOR, broken.major().mm());
        double[] share = coreShare(broken);
        double s_1 = pen.write(LEAST_SHARE, share[0]);
        double s_2 = pen.write(MOST_SHARE, share[1]);
        Limits core = Limits.ofMm(pen.write(CORE_LEAST, s_1 * d), pen.write(CORE_MOST, s_2 * d));
        double D_x = pen.write(MINOR, broken.callOut().thread().minorDiameter().mm());
        Limits tool = s_2 * d < D_x ? Limits.ofMm(s_2 * d, D_x) : null;
        return new Sizes(core, tool, insert(broken.callOut(), pen));
    }

    /** Of taps as they are made; all of them when the flutes were not counted. A forming tap is nearly all core. */
    private static double[] coreShare(BrokenTap broken) {
        if (broken.forming()) {
            return new double[] {0.8, 0.88};
        }
        Integer flutes = broken.stump().flutes();
        if (flutes == null) {
            return new double[] {0.38, 0.55};
        }
        return switch (flutes) {
            case 1, 2 -> new double[] {0.40, 0.50};
            case 3 -> new double[] {0.38, 0.45};
            case 4 -> new double[] {0.45, 0.55};
            default -> new double[] {0.55, 0.65};
        };
    }

    static double coreMiddle(BrokenTap broken) {
        double[] share = coreShare(broken);
        return (share[0] + share[1]) / 2;
    }

    private static Optional<Insert> insert(CallOut callOut, Pen pen) {
        Family family = callOut.thread().family();
        if (family != Family.METRIC && family != Family.UNIFIED) {
            return Optional.empty();
        }
        InsertCallOut insert = new InsertCallOut(callOut.withoutClass());
        SideLimits hole = insert.limits(Side.INTERNAL, pen).orElseThrow();
        return Optional.of(new Insert(insert, hole.minor(), hole.major()));
    }
}
