// SPDX-License-Identifier: Apache-2.0
package landfall.thread.pipe;

import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.quantity.Rounding;
import landfall.thread.Taper.Plane;
import landfall.working.Pen;
import landfall.working.Rule;

/** Basic diameters of one British pipe size, in millimetres, and what is built on them. */
record BritishBasics(double D, double D2, double D1) {
    static BritishBasics of(PipeSize size, Pen pen) {
        double D = pen.write(BritishRules.D, size.major());
        pen.write(BritishRules.N, size.threadsPerInch());
        double P = pen.write(BritishRules.P, size.pitch());
        double h = pen.write(BritishRules.H, Rounding.halfUp(0.640327 * P, 3));
        return new BritishBasics(D, write(pen, BritishRules.D2, D - h), write(pen, BritishRules.D1, D - 2 * h));
    }

    static double write(Pen pen, Rule rule, double mm) {
        return pen.write(rule, Rounding.halfUp(mm, 3));
    }

    static Limits limits(double min, double max) {
        return new Limits(Length.ofMm(min), Length.ofMm(max));
    }

    /** The diameters where the taper has grown by so much. */
    Plane plane(Rule[] rules, String name, double at, double growth, Pen pen) {
        return new Plane(
                name,
                Length.ofMm(at),
                Length.ofMm(write(pen, rules[0], D + growth)),
                Length.ofMm(write(pen, rules[1], D2 + growth)),
                Length.ofMm(write(pen, rules[2], D1 + growth)));
    }
}
