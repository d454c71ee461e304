// SPDX-License-Identifier: Apache-2.0
package landfall.tap;

import landfall.fault.OutOfRange;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;

/** The land as it was measured; its angle is from the cutting edge back to the heel, at the basic major diameter. */
public sealed interface Land permits Land.Arc, Land.Chord, Land.Span, Land.LeftByFlute {
    Source GEOMETRY = Source.of("derived", "docs/methods/chamfer-relief.md");
    Rule MAJOR = Rule.given("d", "mm", "basic major diameter");
    Rule ARC = Rule.given("w", "mm", "land width along the arc");
    Rule CHORD = Rule.given("w", "mm", "land width straight across");
    Rule SPAN = Rule.given("θ_L", "deg", "land angle, edge to heel");
    Rule FROM_ARC = new Rule("θ_L", "2*w/d*180/pi", "deg", GEOMETRY, Trust.DERIVED, "land angle, edge to heel");
    Rule FROM_CHORD = new Rule("θ_L", "2*asin(w/d)", "deg", GEOMETRY, Trust.DERIVED, "land angle, edge to heel");
    Rule CORE = Rule.given("d_core", "mm", "core diameter");
    Rule FLUTE_RADIUS = Rule.given("r_f", "mm", "radius of the flute");
    Rule FLUTE_COUNT = Rule.given("N", "1", "flutes");
    Rule FLUTE_CENTRE = new Rule(
            "c_f", "d_core/2 + r_f", "mm", GEOMETRY, Trust.DERIVED, "distance of the flute's centre from the axis");
    Rule FLUTE_GAP = new Rule(
            "γ",
            "2*acos((d^2/4 + c_f^2 - r_f^2)/(d*c_f))",
            "deg",
            GEOMETRY,
            Trust.DERIVED,
            "angle of the flute at the major diameter");
    Rule LEFT = new Rule("θ_L", "360/N - γ", "deg", GEOMETRY, Trust.DERIVED, "land angle, edge to heel");

    /** The land angle at a major diameter. */
    Angle angle(Length major, Flutes flutes, Pen pen);

    /** Width along the arc at the basic major diameter. */
    record Arc(Length width) implements Land {
        @Override
        public Angle angle(Length major, Flutes flutes, Pen pen) {
            double d = pen.write(MAJOR, major.mm());
            double w = pen.write(ARC, width.mm());
            return checked(pen.write(FROM_ARC, Math.toDegrees(2 * w / d)), "land.width", w, flutes);
        }
    }

    /** Width straight across, as a caliper takes it. */
    record Chord(Length width) implements Land {
        @Override
        public Angle angle(Length major, Flutes flutes, Pen pen) {
            double d = pen.write(MAJOR, major.mm());
            double w = pen.write(CHORD, width.mm());
            if (w >= d) {
                throw tooWide("land.chord", w + " mm", flutes);
            }
            return checked(pen.write(FROM_CHORD, Math.toDegrees(2 * Math.asin(w / d))), "land.chord", w, flutes);
        }
    }

    /** The angle itself. */
    record Span(Angle span) implements Land {
        @Override
        public Angle angle(Length major, Flutes flutes, Pen pen) {
            pen.write(MAJOR, major.mm());
            if (!(span.deg() > 0 && span.deg() < flutes.division().deg())) {
                throw tooWide("land.angle", span.deg() + " deg", flutes);
            }
            return Angle.ofDeg(pen.write(SPAN, span.deg()));
        }
    }

    /** What a flute of one arc leaves between itself and the next. */
    record LeftByFlute() implements Land {
        @Override
        public Angle angle(Length major, Flutes flutes, Pen pen) {
            Length core = flutes.form().core();
            Length radius = flutes.form().radius();
            if (core == null || radius == null) {
                throw new OutOfRange(
                        "land",
                        "left out",
                        "given, or the flute's core and radius instead",
                        "measure the land's width");
            }
            double d = pen.write(MAJOR, major.mm());
            double coreMm = pen.write(CORE, core.mm());
            double r_f = pen.write(FLUTE_RADIUS, radius.mm());
            double N = pen.write(FLUTE_COUNT, flutes.count());
            double c_f = pen.write(FLUTE_CENTRE, coreMm / 2 + r_f);
            double cosine = (d * d / 4 + c_f * c_f - r_f * r_f) / (d * c_f);
            if (!(Math.abs(cosine) < 1)) {
                throw new OutOfRange(
                        "flutes.radius",
                        r_f + " mm",
                        "such that the flute's arc crosses the major diameter",
                        "measure core and flute radius again, or give the land's width");
            }
            double gap = pen.write(FLUTE_GAP, Math.toDegrees(2 * Math.acos(cosine)));
            return checked(pen.write(LEFT, 360 / N - gap), "flutes.radius", r_f, flutes);
        }
    }

    private static Angle checked(double deg, String field, double mm, Flutes flutes) {
        if (!(deg > 0 && deg < flutes.division().deg())) {
            throw tooWide(field, mm + " mm", flutes);
        }
        return Angle.ofDeg(deg);
    }

    private static OutOfRange tooWide(String field, String given, Flutes flutes) {
        return new OutOfRange(
                field,
                given,
                "such that a land and a flute fit in 360/%d = %.1f deg"
                        .formatted(flutes.count(), flutes.division().deg()),
                "measure one land from its cutting edge to its heel");
    }
}
