// SPDX-License-Identifier: Apache-2.0
package landfall.cut;

import landfall.fault.OutOfRange;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.tap.FluteArc;
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
        var bed = new FluteArc.Bed(Length.ofMm(coreRadius), Length.ofMm(rho));
        Angle heel = Angle.ofRad(division - landAngle);
        return clipped(FluteArc.behindFace(Length.ofMm(R), Angle.ofRad(rake), bed, heel), rake, landAngle);
    }

    private Outline clipped(FluteArc flute, double rake, double landAngle) {
        double centre = Math.hypot(flute.cx().mm(), flute.cy().mm());
        double toCentre = Math.atan2(flute.cy().mm(), flute.cx().mm());
        double faceEnd = Math.hypot(
                flute.cx().mm() + rho * Math.cos(flute.start().rad()),
                flute.cy().mm() + rho * Math.sin(flute.start().rad()));
        double tangentX = flute.cx().mm() + rho * Math.cos(flute.end().rad());
        double tangentY = flute.cy().mm() + rho * Math.sin(flute.end().rad());
        boolean faceIn = faceEnd < clip;
        boolean heelIn = Math.hypot(tangentX, tangentY) < clip;
        double arcFrom = faceIn ? flute.start().rad() : onArc(flute, toCentre - crossing(centre));
        double arcTo = heelIn ? flute.end().rad() : onArc(flute, toCentre + crossing(centre));
        Place start = faceIn ? onFace(rake) : place(clip, toCentre - crossing(centre));
        Place heel =
                heelIn ? onHeel(tangentX, tangentY, division - landAngle) : place(clip, toCentre + crossing(centre));
        Outline.Path path = Outline.from(start);
        if (faceIn) {
            path.lineTo(at(
                    flute.cx().mm() + rho * Math.cos(flute.start().rad()),
                    flute.cy().mm() + rho * Math.sin(flute.start().rad())));
        }
        path.arc(at(flute.cx().mm(), flute.cy().mm()), Angle.ofRad(-turned(arcFrom - arcTo)));
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

    private double onArc(FluteArc flute, double angle) {
        return Math.atan2(
                clip * Math.sin(angle) - flute.cy().mm(),
                clip * Math.cos(angle) - flute.cx().mm());
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
