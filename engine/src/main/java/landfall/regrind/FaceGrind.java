// SPDX-License-Identifier: Apache-2.0
package landfall.regrind;

import landfall.fault.OutOfRange;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.tap.FluteKind;
import landfall.tap.Tap;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;

/**
 * How a face is ground back by an angle of land.
 *
 * <p>A straight face parallel to the axis lies x behind the plane through the axis: {@code x = R sin γ}. Turned towards
 * the wheel at the same offset it loses the angle and keeps its rake. Fed straight by t instead it loses {@code asin((x
 * + t)/R) - asin(x/R)} of land, and the rake rises by just that: to lose the angle d_f, {@code t = R (sin(γ + d_f) -
 * sin γ)}.
 *
 * @param offset of the face behind the plane through the axis
 * @param turned angle by which the tap is turned towards the wheel, every flute alike
 * @param index from one face to the next
 * @param straight what a straight feed would do instead
 * @param landLeft of the land
 */
public record FaceGrind(Length offset, Angle turned, Angle index, StraightFeed straight, Angle landLeft) {
    private static final Source GEOMETRY = Source.of("derived", "docs/methods/regrind.md");
    static final Rule MAJOR = Rule.given("d", "mm", "basic major diameter");
    static final Rule RAKE = Rule.given("γ_0", "deg", "rake of the face");
    static final Rule TURNED = Rule.given("d_f", "deg", "angle of land to take off");
    static final Rule LAND = Rule.given("θ_L", "deg", "land angle, edge to heel");
    static final Rule OFFSET =
            new Rule("x_f", "d/2*sin(γ_0)", "mm", GEOMETRY, Trust.DERIVED, "offset of the face behind the axis");
    static final Rule FEED = new Rule(
            "t_f", "d/2*(sin(γ_0 + d_f) - sin(γ_0))", "mm", GEOMETRY, Trust.DERIVED, "straight feed for the same land");
    static final Rule RAKE_AFTER =
            new Rule("γ_s", "asin((x_f + t_f)/(d/2))", "deg", GEOMETRY, Trust.DERIVED, "rake after a straight feed");
    static final Rule COUNT = Rule.given("N", "1", "flutes");
    static final Rule INDEX =
            new Rule("θ_N", "360/N", "deg", GEOMETRY, Trust.DERIVED, "index from one face to the next");
    static final Rule LEFT = new Rule("θ_f", "θ_L - d_f", "deg", GEOMETRY, Trust.DERIVED, "land left");

    /**
     * The same land taken by feeding straight in.
     *
     * @param feed square to the face
     * @param rake that the face then has
     */
    public record StraightFeed(Length feed, Angle rake) {}

    /** The setting to take an angle of land off the faces of a straight-fluted tap. */
    public static FaceGrind of(Tap tap, Angle take, Pen pen) {
        if (tap.flutes().kind() != FluteKind.STRAIGHT) {
            throw new OutOfRange(
                    "flutes.kind",
                    tap.flutes().kind().code(),
                    "straight, to grind faces on a straight slide",
                    "grind the chamfer");
        }
        Angle rake = tap.flutes().form().rake();
        if (rake == null) {
            throw new OutOfRange("flutes.rake", "left out", "given, to grind a face", "measure the rake of the face");
        }
        double land = pen.write(LAND, tap.landAngle().deg());
        if (!(take.deg() > 0 && take.deg() < land)) {
            throw new OutOfRange(
                    "angle to take off the face",
                    "%.2f deg".formatted(take.deg()),
                    "over 0 and under the land, %.2f deg".formatted(land),
                    "take what the wear land asks for");
        }
        double R = pen.write(MAJOR, tap.thread().major().mm()) / 2;
        double gamma = Math.toRadians(pen.write(RAKE, rake.deg()));
        double d_f = pen.write(TURNED, take.deg());
        double x = pen.write(OFFSET, R * Math.sin(gamma));
        double t = pen.write(FEED, R * (Math.sin(gamma + take.rad()) - Math.sin(gamma)));
        double after = pen.write(RAKE_AFTER, Math.toDegrees(Math.asin((x + t) / R)));
        double index = pen.write(INDEX, 360 / pen.write(COUNT, tap.flutes().count()));
        return new FaceGrind(
                Length.ofMm(x),
                Angle.ofDeg(d_f),
                Angle.ofDeg(index),
                new StraightFeed(Length.ofMm(t), Angle.ofDeg(after)),
                Angle.ofDeg(pen.write(LEFT, land - d_f)));
    }
}
