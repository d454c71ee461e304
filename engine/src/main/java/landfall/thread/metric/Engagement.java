// SPDX-License-Identifier: Apache-2.0
package landfall.thread.metric;

/**
 * Length of thread engagement as a metric call-out gives it: a group, or a length that falls in one.
 *
 * @param length in 1e-4 mm, zero when only the group is given
 */
public record Engagement(Group group, int length) {
    /** Short, normal, long. */
    public enum Group {
        S,
        N,
        L
    }

    public static final Engagement NORMAL = new Engagement(Group.N, 0);

    /**
     * The group of a length: normal from 2.24 P d^0.2 to 6.7 P d^0.2 mm.
     *
     * <p>The standard takes for d the least diameter of the range that has this pitch, and smooths its table by up to 8
     * %; here d is the thread's own, so lengths near a border are approximate.
     */
    static Engagement of(int length, MetricSize size) {
        double unit = size.pitchMm() * Math.pow(size.majorLength().mm(), 0.2);
        double mm = (double) length / PitchIndex.UNITS_PER_MM;
        Group group = mm < 2.24 * unit ? Group.S : mm > 6.7 * unit ? Group.L : Group.N;
        return new Engagement(group, length);
    }

    /** As the call-out writes it after a dash; empty for the normal group. */
    String code() {
        if (length > 0) {
            return MetricSize.mm(length);
        }
        return group == Group.N ? "" : group.name();
    }
}
