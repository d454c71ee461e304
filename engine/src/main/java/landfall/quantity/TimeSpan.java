// SPDX-License-Identifier: Apache-2.0
package landfall.quantity;

/** A span of time. Held in seconds. */
public record TimeSpan(double s) implements Comparable<TimeSpan> {
    public TimeSpan {
        if (!Double.isFinite(s)) {
            throw new IllegalArgumentException("span of time is not a finite number: " + s);
        }
    }

    public static TimeSpan ofSeconds(double s) {
        return new TimeSpan(s);
    }

    @Override
    public int compareTo(TimeSpan other) {
        return Double.compare(s, other.s);
    }
}
