// SPDX-License-Identifier: Apache-2.0
package landfall.spread;

import java.util.List;
import java.util.stream.Stream;

/** A result along an input: the input's law is cut into steps that hold as many draws each. */
public final class Along {
    private final Within within;
    private final List<Moments> moments;
    private final long[] inside;

    Along(int steps, Within within) {
        this(within, Stream.generate(Moments::new).limit(steps).toList(), new long[steps]);
    }

    Along(Within within, List<Moments> moments, long[] inside) {
        this.within = within;
        this.moments = List.copyOf(moments);
        this.inside = inside;
    }

    /** @param u the uniform draw that made the input */
    void add(double u, double value) {
        int step = (int) (u * inside.length);
        moments.get(step).add(value);
        if (within.holds(value)) {
            inside[step]++;
        }
    }

    void merge(Along next) {
        for (int step = 0; step < inside.length; step++) {
            moments.get(step).merge(next.moments.get(step));
            inside[step] += next.inside[step];
        }
    }

    public int steps() {
        return inside.length;
    }

    public Moments moments(int step) {
        return moments.get(step);
    }

    /** How many of a step lay within the limits. */
    public long inside(int step) {
        return inside[step];
    }
}
