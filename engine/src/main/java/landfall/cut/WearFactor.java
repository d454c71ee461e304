// SPDX-License-Identifier: Apache-2.0
package landfall.cut;

/** How a wear land raises the torque: 1 fresh, 1.5 due, 2.5 spent; docs/methods/tapping-torque.md. */
public final class WearFactor {
    private static final double TO_DUE = 0.5;
    private static final double DUE = 1 + TO_DUE;
    private static final double BEYOND = 2;

    private WearFactor() {}

    /** @param share wear land over the one at which a tap of this size is due */
    public static double at(double share) {
        return share <= 1 ? 1 + TO_DUE * share : DUE + BEYOND * (share - 1);
    }

    /**
     * The wear that makes such a torque; the inverse of {@link #at}.
     *
     * @param factor torque over that of a fresh edge, 1 or more
     */
    public static double shareFor(double factor) {
        return factor <= DUE ? (factor - 1) / TO_DUE : 1 + (factor - DUE) / BEYOND;
    }
}
