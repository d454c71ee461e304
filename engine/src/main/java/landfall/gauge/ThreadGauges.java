// SPDX-License-Identifier: Apache-2.0
package landfall.gauge;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import landfall.fault.Caution;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.quantity.Rounding;
import landfall.quantity.UnitSystem;
import landfall.thread.ScrewThread;
import landfall.thread.Side;
import landfall.thread.SideLimits;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;
import org.jspecify.annotations.Nullable;

/**
 * Sizes of the gauges for one side of a thread: plugs for a hole, rings for a screw, and the plain pins or rings.
 *
 * @param side of the product that is gauged
 */
public record ThreadGauges(Side side, GaugeElement go, GaugeElement notGo, Plain plain, List<Caution> cautions) {
    private static final Source B1_2 = Source.of("asme-b1.2", "X gauges");
    private static final Source ISO_1502 = Source.of("memory", "ISO 1502, NOT GO plug of truncated flanks");
    static final Rule PRODUCT_PITCH_MIN = product("E_min", "least pitch diameter of the product");
    static final Rule PRODUCT_PITCH_MAX = product("E_max", "greatest pitch diameter of the product");
    static final Rule PRODUCT_MAJOR = product("D_min", "least major diameter of the hole");
    static final Rule PITCH_TOLERANCE =
            Rule.table("X_E", "mm", B1_2, Trust.HANDBOOK, "gauge tolerance on pitch diameter (from memory)");
    static final Rule MAJOR_TOLERANCE =
            Rule.table("X_D", "mm", B1_2, Trust.HANDBOOK, "gauge tolerance on major diameter (from memory)");
    public static final Rule GO_MIN = rule("E_go.min", "E_min", "least pitch diameter of the GO gauge");
    public static final Rule GO_MAX = rule("E_go.max", "E_min + X_E", "greatest pitch diameter of the GO gauge");
    public static final Rule NOT_GO_MIN = rule("E_ng.min", "E_max - X_E", "least pitch diameter of the NOT GO gauge");
    public static final Rule NOT_GO_MAX = rule("E_ng.max", "E_max", "greatest pitch diameter of the NOT GO gauge");
    public static final Rule GO_MAJOR_MIN = rule("D_go.min", "D_min", "least major diameter of the GO plug");
    public static final Rule GO_MAJOR_MAX = rule("D_go.max", "D_min + X_D", "greatest major diameter of the GO plug");
    static final Rule SHARP = Rule.given("p_w", "mm", "pitch");
    static final Rule NOT_GO_CREST_INCH = new Rule(
            "D_ng.0",
            "min(D_min, E_max + sqrt(3)/4*p_w)",
            "mm",
            B1_2,
            Trust.HANDBOOK,
            "major diameter of the NOT GO plug before rounding: pitch diameter and half the sharp height");
    static final Rule NOT_GO_CREST_METRIC = new Rule(
            "D_ng.0",
            "min(D_min, E_max + 0.2*p_w)",
            "mm",
            ISO_1502,
            Trust.HANDBOOK,
            "major diameter of the NOT GO plug before rounding: truncated flanks (from memory)");
    public static final Rule NOT_GO_MAJOR_MAX =
            Rule.table("D_ng.max", "mm", B1_2, Trust.HANDBOOK, "greatest major diameter of the NOT GO plug, rounded");
    public static final Rule NOT_GO_MAJOR_MIN =
            rule("D_ng.min", "D_ng.max - X_D", "least major diameter of the NOT GO plug");
    static final Rule PRODUCT_PLAIN_MIN = product("p_min", "plain diameter of the product, least");
    static final Rule PRODUCT_PLAIN_MAX = product("p_max", "plain diameter of the product, greatest");
    public static final Rule PLAIN_GO_PLUG = rule("p_go", "p_min", "plain GO pin");
    public static final Rule PLAIN_NOT_GO_PLUG = rule("p_ng", "p_max", "plain NOT GO pin");
    public static final Rule PLAIN_GO_RING = rule("p_go", "p_max", "plain GO ring");
    public static final Rule PLAIN_NOT_GO_RING = rule("p_ng", "p_min", "plain NOT GO ring");
    static final Rule RING_GO_MIN = rule("E_go.min", "E_max - X_E", "least pitch diameter of the GO ring");
    static final Rule RING_GO_MAX = rule("E_go.max", "E_max", "greatest pitch diameter of the GO ring");
    static final Rule RING_NOT_GO_MIN = rule("E_ng.min", "E_min", "least pitch diameter of the NOT GO ring");
    static final Rule RING_NOT_GO_MAX = rule("E_ng.max", "E_min + X_E", "greatest pitch diameter of the NOT GO ring");

    /**
     * Plain diameters: on the minor diameter of a hole, on the major diameter of a screw. NOT GO is null where the
     * standard's limit is not held (UNJ holes).
     */
    public record Plain(Length go, @Nullable Length notGo) {}

    public ThreadGauges {
        cautions = List.copyOf(cautions);
    }

    private static Rule product(String symbol, String means) {
        return Rule.table(symbol, "mm", Source.of("derived", "limits of the thread"), Trust.DERIVED, means);
    }

    private static Rule rule(String symbol, String formula, String means) {
        return new Rule(symbol, formula, "mm", B1_2, Trust.HANDBOOK, means);
    }

    /** Gauges for a product's limits; empty when the product has no closed pitch limits. */
    public static Optional<ThreadGauges> of(ScrewThread thread, SideLimits product, Pen pen) {
        if (product.pitch().min() == null || product.pitch().max() == null) {
            return Optional.empty();
        }
        Optional<GaugeTolerance> held = GaugeTolerance.of(thread);
        GaugeTolerance x = held.orElse(GaugeTolerance.NOT_HELD);
        List<Caution> cautions = cautions(thread, held.isPresent());
        double E_min = pen.write(PRODUCT_PITCH_MIN, product.pitch().min().mm());
        double E_max = pen.write(PRODUCT_PITCH_MAX, product.pitch().max().mm());
        double X_E = pen.write(PITCH_TOLERANCE, x.pitch().mm());
        double X_D = pen.write(MAJOR_TOLERANCE, x.major().mm());
        if (product.side() == Side.INTERNAL) {
            GaugeElement go =
                    new GaugeElement(zone(GO_MIN, E_min, GO_MAX, E_min + X_E, pen), goMajor(product, X_D, pen));
            GaugeElement notGo = new GaugeElement(
                    zone(NOT_GO_MIN, E_max - X_E, NOT_GO_MAX, E_max, pen), notGoMajor(thread, product, X_D, pen));
            return Optional.of(new ThreadGauges(Side.INTERNAL, go, notGo, plain(product, pen), cautions));
        }
        GaugeElement go = new GaugeElement(zone(RING_GO_MIN, E_max - X_E, RING_GO_MAX, E_max, pen), GaugeElement.OPEN);
        GaugeElement notGo =
                new GaugeElement(zone(RING_NOT_GO_MIN, E_min, RING_NOT_GO_MAX, E_min + X_E, pen), GaugeElement.OPEN);
        return Optional.of(new ThreadGauges(Side.EXTERNAL, go, notGo, plain(product, pen), cautions));
    }

    private static Limits zone(Rule minRule, double min, Rule maxRule, double max, Pen pen) {
        return Limits.ofMm(pen.write(minRule, min), pen.write(maxRule, max));
    }

    private static Limits goMajor(SideLimits product, double X_D, Pen pen) {
        Length least = product.major().min();
        if (least == null) {
            return GaugeElement.OPEN;
        }
        double D_min = pen.write(PRODUCT_MAJOR, least.mm());
        return zone(GO_MAJOR_MIN, D_min, GO_MAJOR_MAX, D_min + X_D, pen);
    }

    private static Limits notGoMajor(ScrewThread thread, SideLimits product, double X_D, Pen pen) {
        Length least = product.major().min();
        Length pitchMax = product.pitch().max();
        if (least == null
                || pitchMax == null
                || thread.profile().includedAngle().deg() != 60) {
            return GaugeElement.OPEN;
        }
        double P = pen.write(SHARP, thread.pitch().mm());
        boolean inch = thread.family().system() == UnitSystem.INCH;
        double crest = inch ? Math.sqrt(3) / 4 * P : 0.2 * P;
        double raw =
                pen.write(inch ? NOT_GO_CREST_INCH : NOT_GO_CREST_METRIC, Math.min(least.mm(), pitchMax.mm() + crest));
        double max = inch
                ? Length.ofInch(Rounding.halfUp(raw / Length.MM_PER_INCH, 4)).mm()
                : Rounding.halfUp(raw, 3);
        return zone(NOT_GO_MAJOR_MIN, max - X_D, NOT_GO_MAJOR_MAX, max, reversed(pen));
    }

    /** The greatest is written before the least, which is formed from it. */
    private static Pen reversed(Pen pen) {
        return new Pen() {
            private @Nullable Rule held;
            private double heldValue;

            @Override
            public double write(Rule rule, double value) {
                if (held == null) {
                    held = rule;
                    heldValue = value;
                    return value;
                }
                pen.write(rule, value);
                pen.write(held, heldValue);
                return value;
            }
        };
    }

    private static Plain plain(SideLimits product, Pen pen) {
        boolean hole = product.side() == Side.INTERNAL;
        Limits limits = hole ? product.minor() : product.major();
        Length min = limits.min();
        Length max = limits.max();
        if (hole && min != null && max == null) {
            pen.write(PRODUCT_PLAIN_MIN, min.mm());
            return new Plain(Length.ofMm(pen.write(PLAIN_GO_PLUG, min.mm())), null);
        }
        if (min == null || max == null) {
            throw new IllegalStateException("a product's plain limits are open: " + limits);
        }
        double p_min = pen.write(PRODUCT_PLAIN_MIN, min.mm());
        double p_max = pen.write(PRODUCT_PLAIN_MAX, max.mm());
        double go = pen.write(hole ? PLAIN_GO_PLUG : PLAIN_GO_RING, hole ? p_min : p_max);
        double notGo = pen.write(hole ? PLAIN_NOT_GO_PLUG : PLAIN_NOT_GO_RING, hole ? p_max : p_min);
        return new Plain(Length.ofMm(go), Length.ofMm(notGo));
    }

    private static List<Caution> cautions(ScrewThread thread, boolean held) {
        List<Caution> cautions = new ArrayList<>();
        if (!held) {
            cautions.add(new Caution(
                    "gaugeToleranceNotHeld",
                    "No gauge tolerance is held for this thread: the gauges are shown without one, at the"
                            + " product's limits.",
                    "X_E"));
        }
        boolean metric = thread.family().system() == UnitSystem.METRIC;
        cautions.add(new Caution(
                "gaugeUse",
                metric
                        ? "GO must pass the whole length freely; NOT GO may enter no more than two turns (from memory)."
                        : "GO must pass the whole length freely; NOT GO may enter but must bind on or before"
                                + " the third turn"
                                + " (from memory)."));
        return cautions;
    }
}
