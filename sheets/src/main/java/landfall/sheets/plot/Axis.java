// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.plot;

import java.util.ArrayList;
import java.util.List;
import landfall.sheets.figure.Figures;

/** An axis from one value to another, with ticks at round steps of 1, 2 or 5 of a decade. */
public record Axis(double from, double to, double step) {
    public Axis {
        if (!(to > from && step > 0)) {
            throw new IllegalArgumentException("an axis from " + from + " to " + to + " by " + step);
        }
    }

    /** From round value to round value around two others, with so many steps at most. */
    public static Axis around(double least, double most, int steps) {
        double step = roundStep((most - least) / steps);
        return new Axis(Math.floor(least / step + 1e-9) * step, Math.ceil(most / step - 1e-9) * step, step);
    }

    /** As {@link #around}, ending where the values do. */
    public static Axis upTo(double most, int steps) {
        return new Axis(0, most, roundStep(most / steps));
    }

    private static double roundStep(double least) {
        double decade = Math.pow(10, Math.floor(Math.log10(least)));
        for (double step : new double[] {1, 2, 5, 10}) {
            if (step * decade >= least * (1 - 1e-9)) {
                return step * decade;
            }
        }
        throw new IllegalStateException("no round step of at least " + least);
    }

    /** Round values on the axis. */
    public List<Double> ticks() {
        List<Double> ticks = new ArrayList<>();
        for (long i = (long) Math.ceil(from / step - 1e-9); i * step <= to + 1e-9 * step; i++) {
            ticks.add(i * step);
        }
        return ticks;
    }

    /** A tick as written: no more places than the step has. */
    public String words(double tick) {
        return Figures.plain(tick, (int) Math.max(0, Math.ceil(-Math.log10(step) - 1e-9)));
    }

    double share(double value) {
        return (value - from) / (to - from);
    }
}
