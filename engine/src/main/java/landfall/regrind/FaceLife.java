// SPDX-License-Identifier: Apache-2.0
package landfall.regrind;

import java.util.List;
import landfall.fault.Caution;
import landfall.quantity.Angle;
import landfall.tap.FaceRake;
import landfall.tap.FluteKind;
import landfall.tap.Tap;
import landfall.tap.ThreadRelief;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Trust;
import org.jspecify.annotations.Nullable;

/**
 * How often the faces can be ground back, the tap turned towards the wheel at the same offset so that the rake stays.
 *
 * <p>A wear land of width w asks for an arc of {@code w/(1 - tan α_w tan γ_0)} at the basic major radius. On a
 * concentric thread the pitch diameter stays; on a relieved one it falls by {@code 2 k_t} a radian once the concentric
 * margin is used up.
 */
final class FaceLife {
    static final Rule NO_RAKE =
            Rule.table("γ_0", "deg", Counts.GEOMETRY, Trust.PRACTICE, "rake of the face: not told, taken as none");
    static final Rule EACH = new Rule(
            "d_f",
            "w_wear/(1 - tan(α_w)*tan(γ_0))/(d/2)*180/pi",
            "deg",
            Counts.GEOMETRY,
            Trust.DERIVED,
            "angle of land that a sharpening of the face takes");
    static final Rule BY_LAND = Counts.rule("n_θ", "(θ_L - θ_min)/d_f", "face sharpenings by the land");
    static final Rule THREAD_RELIEF = Rule.given("α_th", "deg", "relief of the thread behind the edge");
    static final Rule MARGIN = Rule.given("θ_c", "deg", "land behind the edge that is concentric");
    static final Rule SLOPE = new Rule(
            "k_t",
            "d/2*tan(α_th)",
            "mm/rad",
            Counts.GEOMETRY,
            Trust.DERIVED,
            "radial fall of the thread per radian of land");
    static final Rule BY_PITCH =
            Counts.rule("n_Ef", "((E_0 - E_min)/(2*k_t)*180/pi + θ_c)/d_f", "face sharpenings by the pitch diameter");

    final double eachDeg;
    private final Tap tap;

    private FaceLife(Tap tap, double eachDeg) {
        this.tap = tap;
        this.eachDeg = eachDeg;
    }

    /** Null, with the reason among the cautions, where faces are not ground. */
    static @Nullable FaceLife of(Tap tap, LifeWish wish, Angle working, List<Caution> cautions, Pen pen) {
        if (tap.flutes().kind() != FluteKind.STRAIGHT) {
            cautions.add(new Caution(
                    "faceNotGround",
                    tap.flutes().kind() == FluteKind.SPIRAL_POINT
                            ? "The face of a spiral point is ground with its own angle, not on a straight slide:"
                                    + " chamfer only."
                            : "Faces of spiral flutes are not ground on a straight slide: chamfer only.",
                    "flutes.kind"));
            return null;
        }
        double w = wish.wear().land(tap.thread(), Pen.NONE).mm();
        if (w == 0) {
            cautions.add(new Caution("noWear", "There is no wear land, so no face to take off.", "wear"));
            return null;
        }
        double gamma = rake(tap, cautions, pen);
        double tangents = Math.tan(working.rad()) * Math.tan(Math.toRadians(gamma));
        double each = pen.write(
                EACH, Math.toDegrees(w / (1 - tangents) / (tap.thread().major().mm() / 2)));
        return new FaceLife(tap, each);
    }

    /** The rake in degrees, as told, by the arc of the flute, or none where neither is told. */
    static double rake(Tap tap, List<Caution> cautions, Pen pen) {
        Angle rake = FaceRake.of(tap, pen);
        if (rake == null) {
            cautions.add(new Caution("rakeNotTold", "The rake is not told and is taken as none.", "flutes.rake"));
            return pen.write(NO_RAKE, 0);
        }
        if (FaceRake.isByArc(tap)) {
            cautions.add(new Caution(
                    "rakeByArc",
                    "The rake is not told: the one arc of the flute leaves %.1f deg at the edge. Such a face is ground"
                                    .formatted(rake.deg())
                            + " with a wheel of the flute's form.",
                    "flutes.radius"));
        }
        return rake.deg();
    }

    LeftByWay.ByFace count(Margins margins, @Nullable Integer cap, Pen pen) {
        Counts counts = new Counts();
        counts.add(LifeLimit.LAND_ANGLE, BY_LAND, margins.landDeg() / eachDeg, pen);
        ThreadRelief relief = tap.cutting().relief();
        if (slope() > 0 && margins.pitch() != null) {
            pen.write(THREAD_RELIEF, relief.slope().deg());
            pen.write(MARGIN, marginDeg());
            pen.write(SLOPE, slope());
            double radians = margins.pitch() / (2 * slope());
            counts.add(LifeLimit.PITCH_DIAMETER, BY_PITCH, (Math.toDegrees(radians) + marginDeg()) / eachDeg, pen);
        }
        counts.cap(cap, ChamferLife.CAP, pen);
        Integer least = counts.least("n_face", "sharpenings left by the faces", pen);
        return new LeftByWay.ByFace(Angle.ofDeg(eachDeg), least, counts.limit());
    }

    /** Pitch diameter lost when so many degrees of land are gone. */
    double pitchLost(double deg) {
        return 2 * slope() * Math.toRadians(Math.max(0, deg - marginDeg()));
    }

    private double slope() {
        ThreadRelief relief = tap.cutting().relief();
        return relief.kind() == ThreadRelief.Kind.CONCENTRIC
                ? 0
                : tap.thread().major().mm() / 2 * Math.tan(relief.slope().rad());
    }

    private double marginDeg() {
        ThreadRelief relief = tap.cutting().relief();
        return relief.kind() == ThreadRelief.Kind.CON_ECCENTRIC
                ? relief.margin().deg()
                : 0;
    }
}
