// SPDX-License-Identifier: Apache-2.0
package landfall.cut;

import landfall.fault.OutOfRange;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.tap.FluteForm;
import landfall.tap.Tap;
import landfall.torsion.Outline;
import landfall.torsion.Place;
import org.jspecify.annotations.Nullable;

/**
 * The section of a tap, square to its axis, as docs/methods/torsion.md draws it, clipped to the basic pitch diameter.
 *
 * <p>In mm and radians about the axis. The cutting edge lies on the x axis on the basic major diameter; the tap turns
 * counterclockwise to cut, so that the flute lies at positive angles and the edge's own land at negative ones.
 */
public final class FlutedSection {
    private final double R;
    private final double clip;
    private final double coreRadius;
    private final double rho;
    private final double division;

    private FlutedSection(Tap tap) {
        FluteForm form = tap.flutes().form();
        R = tap.thread().major().mm() / 2;
        clip = tap.thread().pitchDiameter().mm() / 2;
        coreRadius = need(form.core(), "flutes.core", "measure the core across the flute floors") / 2;
        rho = need(form.radius(), "flutes.radius", "measure the flute's radius with a radius gauge");
        division = tap.flutes().division().rad();
        if (coreRadius >= clip) {
            throw new OutOfRange(
                    "flutes.core",
                    Length.ofMm(2 * coreRadius).words(),
                    "under the basic pitch diameter, " + Length.ofMm(2 * clip).words(),
                    "measure the core across the flute floors");
        }
    }

    /** The outline of a tap's section; refused when its flutes are not known or do not close. */
    public static Outline outline(Tap tap) {
        FlutedSection section = new FlutedSection(tap);
        Angle rake = tap.flutes().form().rake();
        return rake == null
                ? section.ofOneArc()
                : section.withFace(rake.rad(), tap.landAngle().rad());
    }

    private static double need(@Nullable Length length, String field, String mend) {
        if (length == null) {
            throw new OutOfRange(field, "left out", "given, as the section's strength rests on it", mend);
        }
        return length.mm();
    }

    /** Each flute one arc, its middle half-way between two lands. */
    private Outline ofOneArc() {
        double centre = coreRadius + rho;
        double half = crossing(centre);
        double land = division - 2 * half;
        if (land <= 0) {
            throw tooWide();
        }
        Place middle = place(centre, 0);
        return Outline.from(place(clip, -half))
                .arc(middle, Angle.ofRad(-2 * inside(centre)))
                .arc(Place.AXIS, Angle.ofRad(land))
                .repeated(repeats());
    }

    private int repeats() {
        return (int) Math.round(2 * Math.PI / division);
    }

    /** Face, arc and tangent; the sense is counterclockwise, the arc itself runs clockwise about its own centre. */
    private Outline withFace(double rake, double landAngle) {
        double behind = R * Math.sin(rake);
        double squared = (coreRadius + rho) * (coreRadius + rho) - (rho - behind) * (rho - behind);
        double along = squared > 0 ? Math.sqrt(squared) : 0;
        if (squared <= 0 || along >= R * Math.cos(rake)) {
            throw noFace();
        }
        // along the face outwards is (cos, sin) of the rake; square to it, into the flute, (-sin, cos)
        double cx = along * Math.cos(rake) - (rho - behind) * Math.sin(rake);
        double cy = along * Math.sin(rake) + (rho - behind) * Math.cos(rake);
        double hx = R * Math.cos(division - landAngle) - cx;
        double hy = R * Math.sin(division - landAngle) - cy;
        double reach = Math.hypot(hx, hy);
        if (reach <= rho) {
            throw noTangent();
        }
        double start = rake - Math.PI / 2;
        double end = Math.atan2(hy, hx) + Math.acos(rho / reach);
        double sweep = turned(start - end);
        double floor = turned(start - (Math.atan2(cy, cx) + Math.PI));
        if (floor > sweep) {
            throw noTangent();
        }
        return clipped(new Flute(cx, cy, start, end), rake, landAngle);
    }

    /** Centre of the arc, and the directions from it in which the arc begins and ends. */
    private record Flute(double cx, double cy, double start, double end) {}

    private Outline clipped(Flute flute, double rake, double landAngle) {
        double centre = Math.hypot(flute.cx, flute.cy);
        double toCentre = Math.atan2(flute.cy, flute.cx);
        double faceEnd = Math.hypot(flute.cx + rho * Math.cos(flute.start), flute.cy + rho * Math.sin(flute.start));
        double tangentX = flute.cx + rho * Math.cos(flute.end);
        double tangentY = flute.cy + rho * Math.sin(flute.end);
        boolean faceIn = faceEnd < clip;
        boolean heelIn = Math.hypot(tangentX, tangentY) < clip;
        double arcFrom = faceIn ? flute.start : onArc(flute, toCentre - crossing(centre));
        double arcTo = heelIn ? flute.end : onArc(flute, toCentre + crossing(centre));
        Place start = faceIn ? onFace(rake) : place(clip, toCentre - crossing(centre));
        Place heel =
                heelIn ? onHeel(tangentX, tangentY, division - landAngle) : place(clip, toCentre + crossing(centre));
        Outline.Path path = Outline.from(start);
        if (faceIn) {
            path.lineTo(at(flute.cx + rho * Math.cos(flute.start), flute.cy + rho * Math.sin(flute.start)));
        }
        path.arc(at(flute.cx, flute.cy), Angle.ofRad(-turned(arcFrom - arcTo)));
        if (heelIn) {
            path.lineTo(heel);
        }
        double land = turned(start.angle().rad() + division - heel.angle().rad());
        if (land >= division) {
            throw tooWide();
        }
        return path.arc(Place.AXIS, Angle.ofRad(land)).repeated(repeats());
    }

    private Place onFace(double rake) {
        double behind = R * Math.sin(rake);
        double out = Math.sqrt(clip * clip - behind * behind);
        return at(out * Math.cos(rake) + behind * Math.sin(rake), out * Math.sin(rake) - behind * Math.cos(rake));
    }

    /** Where the tangent from the arc to the heel corner leaves the clipping circle. */
    private Place onHeel(double fromX, double fromY, double heelAngle) {
        double dx = R * Math.cos(heelAngle) - fromX;
        double dy = R * Math.sin(heelAngle) - fromY;
        double a = dx * dx + dy * dy;
        double b = fromX * dx + fromY * dy;
        double c = fromX * fromX + fromY * fromY - clip * clip;
        double t = (-b + Math.sqrt(b * b - a * c)) / a;
        return at(fromX + t * dx, fromY + t * dy);
    }

    private double onArc(Flute flute, double angle) {
        return Math.atan2(clip * Math.sin(angle) - flute.cy, clip * Math.cos(angle) - flute.cx);
    }

    /** Half the angle, about the axis, in which an arc about a centre at this distance cuts the clipping circle. */
    private double crossing(double centre) {
        double cosine = (clip * clip + centre * centre - rho * rho) / (2 * clip * centre);
        if (!(Math.abs(cosine) < 1)) {
            throw noCrossing();
        }
        return Math.acos(cosine);
    }

    /** Half the angle, about the arc's centre, that lies inside the clipping circle. */
    private double inside(double centre) {
        return Math.acos((rho * rho + centre * centre - clip * clip) / (2 * rho * centre));
    }

    private static double turned(double angle) {
        double turn = angle % (2 * Math.PI);
        return turn < 0 ? turn + 2 * Math.PI : turn;
    }

    private static Place at(double x, double y) {
        return new Place(Length.ofMm(x), Length.ofMm(y));
    }

    private static Place place(double radius, double angle) {
        return Place.polar(Length.ofMm(radius), Angle.ofRad(angle));
    }

    private OutOfRange noFace() {
        return new OutOfRange(
                "flutes.radius",
                Length.ofMm(rho).words(),
                "such that an arc that touches the core meets the straight face below the crest",
                "measure flute radius and core again, or leave the rake out for a flute of one arc");
    }

    private OutOfRange noTangent() {
        return new OutOfRange(
                "flutes.radius",
                Length.ofMm(rho).words(),
                "such that its arc touches the core and runs out to the heel that the land sets",
                "measure flute radius, core and land again");
    }

    private OutOfRange noCrossing() {
        return new OutOfRange(
                "flutes.radius",
                Length.ofMm(rho).words(),
                "such that the flute's arc leaves the basic pitch diameter, "
                        + Length.ofMm(2 * clip).words(),
                "measure flute radius and core again");
    }

    private OutOfRange tooWide() {
        return new OutOfRange(
                "flutes.radius",
                Length.ofMm(rho).words(),
                "such that a land is left at the basic pitch diameter",
                "measure flute radius and core again, and count the flutes");
    }
}
