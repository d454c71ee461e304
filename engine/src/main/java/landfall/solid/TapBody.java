// SPDX-License-Identifier: Apache-2.0
package landfall.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import landfall.envelope.ChamferGround;
import landfall.fault.Answer;
import landfall.fault.Caution;
import landfall.fault.Finding;
import landfall.fault.OutOfRange;
import landfall.grind.ChamferShape;
import landfall.grind.GrindSetup;
import landfall.grind.GrindWish;
import landfall.quantity.Length;
import landfall.tap.Tap;
import landfall.working.Pen;
import org.jspecify.annotations.Nullable;

/**
 * A tap as a closed body.
 *
 * @param mesh its surface, right-handed
 * @param gaps of its chamfer to the cut surface
 * @param chamferLength along the axis, as the card says
 * @param error how far the mesh and the surface that the card describes part at most
 * @param cautions what the card does not tell, and what is drawn instead
 */
public record TapBody(Mesh mesh, Gaps gaps, Length chamferLength, Length error, List<Caution> cautions) {
    /** Fine enough for a picture and for a section within a thousandth of its area. */
    public static final Length USUAL_ERROR = Length.ofMm(0.03);

    /**
     * The chords take this share of the error; where the chamfer leaves a tooth, faces part by several times theirs.
     */
    private static final double CHORDS = 0.15;

    private static final double LEAST_ERROR = 0.0002;
    private static final double GREATEST_ERROR = 0.2;

    public TapBody {
        cautions = List.copyOf(cautions);
    }

    /** The body as it comes from its card: an even relief behind the edges, of the usual size. */
    public static Answer<TapBody> of(Tap tap, Length error) {
        List<Finding> findings = BodyRefusals.of(tap);
        if (!findings.isEmpty()) {
            return Answer.refused(findings);
        }
        try {
            List<Caution> cautions = new ArrayList<>();
            ChamferShape shape = ChamferShape.of(tap, GrindWish.USUAL, cautions, Pen.NONE);
            return Answer.of(built(tap, new ChamferForm.Even(shape.fall().perRadian()), error, cautions));
        } catch (OutOfRange e) {
            return Answer.refused(e.finding());
        }
    }

    /** The body with the chamfer that a wheel has left. */
    public static Answer<TapBody> ground(GrindSetup setup, ChamferGround ground, Length error) {
        Tap tap = setup.tap();
        List<Finding> findings = BodyRefusals.of(tap);
        if (!findings.isEmpty()) {
            return Answer.refused(findings);
        }
        try {
            return Answer.of(built(
                    tap, new ChamferForm.Ground(ground, setup.shape().fall().perRadian()), error, new ArrayList<>()));
        } catch (OutOfRange e) {
            return Answer.refused(e.finding());
        }
    }

    private static TapBody built(Tap tap, ChamferForm chamfer, Length error, List<Caution> cautions) {
        if (!(error.mm() >= LEAST_ERROR && error.mm() <= GREATEST_ERROR)) {
            throw new OutOfRange(
                    "error", error.words(), "from 0.0002 to 0.2 mm", "0.03 mm is fine enough for a picture");
        }
        var form = tap.flutes().form();
        double core = Objects.requireNonNull(form.core()).mm() / 2;
        double rho = Objects.requireNonNull(form.radius()).mm();
        double length = Objects.requireNonNull(tap.body().threadLength()).mm();
        TapSurface surface = new TapSurface(tap, core, length, chamfer);
        FluteCurve flute = FluteCurve.of(tap, core, rho);
        double chord = CHORDS * error.mm();
        int land = Math.max(steps(surface.landAngle, chord / surface.major), surface.acrossCrests(chamfer.perRadian()));
        int floor = steps((flute.face(surface.root) - flute.heel(surface.root)) / rho, chord / rho);
        int wall = (int) Math.ceil(flute.arcOver(surface.root, surface.major) / Math.sqrt(2 * chord * rho)) + 1;
        Ring ring = new Ring(surface, flute, new Ring.Steps(land, wall, floor));
        Mesh mesh = new MeshBuilder(surface, ring, new Rows(surface, wall)).build(shank(tap, length));
        cautions.addAll(BodyCautions.of(tap));
        return new TapBody(mesh, Gaps.of(mesh, surface), Length.ofMm(surface.chamferLength), error, cautions);
    }

    /** The left-hand tap to this right-hand one; its places keep their numbers and so their gaps. */
    public TapBody mirrored() {
        return new TapBody(mesh.mirrored(), gaps, chamferLength, error, cautions);
    }

    /** Chords over an angle whose height over their middle is a share of the radius at most: θ²/8 each. */
    private static int steps(double angle, double share) {
        return Math.max(6, (int) Math.ceil(angle / Math.sqrt(8 * share)));
    }

    private static MeshBuilder.@Nullable Shank shank(Tap tap, double length) {
        Length diameter = tap.body().shank();
        Length overall = tap.body().overallLength();
        if (diameter == null || overall == null) {
            return null;
        }
        double left = overall.mm() - length;
        double runOut = Math.min(tap.thread().major().mm(), left / 2);
        return new MeshBuilder.Shank(diameter.mm() / 2, runOut, overall.mm());
    }
}
