// SPDX-License-Identifier: Apache-2.0
package landfall.envelope;

import java.util.ArrayList;
import java.util.List;
import landfall.grind.GrindSetup;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * One turn of the tap in its fixture, moment by moment: where the slides stand and what the dials show.
 *
 * @param moments from the edge of land 1 on the centre line, one turn in the cutting sense, both ends among them
 */
public record OneTurn(List<Moment> moments) {
    private static final int STEPS = 180;

    public OneTurn {
        moments = List.copyOf(moments);
    }

    /**
     * A moment of the turn. Readings are nought with the edge of land 1 on the centre line.
     *
     * @param spindle angle of the spindle, in the cutting sense
     * @param land whose land is on the centre line at the middle of the chamfer, from 1; 0 over a flute
     * @param behindEdge angle behind that land's edge, or behind the edge before the flute
     * @param slides readings on the end of the tap, plus towards the point, and on the shank, plus towards the wheel
     * @param chamfer reading square to the chamfer in the wheel's place, once ground; null over a flute
     */
    public record Moment(
            Angle spindle,
            int land,
            Angle behindEdge,
            Slides slides,
            @Nullable Length chamfer) {
        /** Reading on the end of the tap. */
        public Length end() {
            return slides.end;
        }

        /** Reading on the shank. */
        public Length shank() {
            return slides.shank;
        }
    }

    /** What the two slides have moved. */
    public record Slides(Length end, Length shank) {}

    /** The turn of a set-up, over the chamfer that it leaves. */
    public static OneTurn of(GrindSetup setup, Errors errors, ChamferGround ground) {
        Bench bench = new Bench(setup, errors, ground, ChamferGround.motion(setup, errors));
        List<Moment> moments = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            moments.add(bench.at(2 * Math.PI * i / STEPS));
        }
        return new OneTurn(moments);
    }

    private record Bench(GrindSetup setup, Errors errors, ChamferGround ground, CamMotion cam) {
        Moment at(double phi) {
            var rises = setup.motion().setting().rises();
            double share = cam.share(phi) - cam.share(0);
            int lands = ground.lands();
            double apart = 2 * Math.PI / lands;
            int land = (int) Math.floor(phi / apart + 1e-9);
            double theta = phi - land * apart;
            boolean on = theta <= ground.land().rad() + 1e-9;
            return new Moment(
                    Angle.ofRad(phi),
                    on ? land % lands + 1 : 0,
                    Angle.ofRad(Math.max(0, theta)),
                    new Slides(rises.axial().times(share), rises.radial().times(share)),
                    on ? Length.ofMm(square(phi) - square(0)) : null);
        }

        /** How far the ground place on the centre line stands towards the wheel, square to the chamfer, mm. */
        private double square(double phi) {
            int lands = ground.lands();
            int land = (int) Math.floor(phi / (2 * Math.PI / lands) + 1e-9);
            Angle theta = Angle.ofRad(phi - land * 2 * Math.PI / lands);
            double left = ground.radius(land % lands, theta, ground.length().times(0.5))
                    .mm();
            double off =
                    errors.runOut().mm() * Math.cos(phi - errors.direction().rad());
            Angle swivel = setup.motion().setting().swivel();
            double moved =
                    cam.share(phi) * WheelPass.of(setup, swivel, errors).rise().mm();
            return Math.cos(swivel.rad()) * (left + off + moved);
        }
    }
}
