// SPDX-License-Identifier: Apache-2.0
package landfall.grind;

import java.util.List;
import landfall.fault.OutOfRange;
import landfall.quantity.Angle;

/**
 * The form of a lobe's rise, as a share of its whole rise.
 *
 * <p>{@code share} runs from 0 at the start to 1 at the end of the rise angle; {@code slope} is its derivative per
 * radian of turn.
 */
public sealed interface CamCurve permits CamCurve.Straight, CamCurve.Circle, CamCurve.Points {

    /** Share of the rise after a turn {@code x} from its start. Before the start 0, past the end 1. */
    double share(Angle x, Angle riseAngle);

    /** Change of the share per radian at {@code x}; the right-hand value at a corner. */
    double slope(Angle x, Angle riseAngle);

    /** Equal rise for equal turn (a spiral of Archimedes). */
    record Straight() implements CamCurve {
        @Override
        public double share(Angle x, Angle riseAngle) {
            return Math.min(1, Math.max(0, x.deg() / riseAngle.deg()));
        }

        @Override
        public double slope(Angle x, Angle riseAngle) {
            return x.deg() < 0 || x.deg() >= riseAngle.deg() ? 0 : 1 / riseAngle.rad();
        }
    }

    /**
     * A circle set off centre: rise e·(cos ψ − cos(x + ψ)) to first order in e over its radius. The offset e cancels
     * from the share.
     *
     * @param phase ψ, the angle by which the offset lies ahead of the start of the rise; 90 deg thins towards the heel
     */
    record Circle(Angle phase) implements CamCurve {
        public Circle {
            if (!(phase.deg() > 0 && phase.deg() < 180)) {
                throw new OutOfRange(
                        "cam.phase",
                        phase.deg() + " deg",
                        "over 0 and under 180 deg",
                        "turn the offset until the cam rises");
            }
        }

        private double rise(double xRad) {
            return Math.cos(phase.rad()) - Math.cos(xRad + phase.rad());
        }

        @Override
        public double share(Angle x, Angle riseAngle) {
            double at = Math.min(riseAngle.rad(), Math.max(0, x.rad()));
            return rise(at) / rise(riseAngle.rad());
        }

        @Override
        public double slope(Angle x, Angle riseAngle) {
            if (x.deg() < 0 || x.deg() >= riseAngle.deg()) {
                return 0;
            }
            return Math.sin(x.rad() + phase.rad()) / rise(riseAngle.rad());
        }
    }

    /** One measured place on the cam: turn from the start of the rise, share of the whole rise. */
    record Point(Angle angle, double share) {}

    /** A cam measured place by place, straight between the places. */
    record Points(List<Point> table) implements CamCurve {
        public Points {
            table = List.copyOf(table);
            if (table.size() < 2
                    || table.get(0).angle().deg() != 0
                    || table.get(0).share() != 0
                    || table.get(table.size() - 1).share() != 1) {
                throw new OutOfRange(
                        "cam.table",
                        table.size() + " rows",
                        "two rows or more, from angle 0 and rise 0 to rise 1",
                        "measure from the start of the rise; give the rise as a share of the whole");
            }
            for (int i = 1; i < table.size(); i++) {
                if (table.get(i).angle().deg() <= table.get(i - 1).angle().deg()
                        || table.get(i).share() < table.get(i - 1).share()) {
                    throw new OutOfRange(
                            "cam.table",
                            "row " + (i + 1),
                            "further round than the row before, and no lower",
                            "sort the table by angle and check this reading");
                }
            }
        }

        private int segment(double deg) {
            int i = 1;
            while (i < table.size() - 1 && deg >= table.get(i).angle().deg()) {
                i++;
            }
            return i;
        }

        @Override
        public double share(Angle x, Angle riseAngle) {
            double at = Math.min(riseAngle.deg(), Math.max(0, x.deg()));
            Point to = table.get(segment(at));
            Point from = table.get(segment(at) - 1);
            double part =
                    (at - from.angle().deg()) / (to.angle().deg() - from.angle().deg());
            return Math.min(1, from.share() + part * (to.share() - from.share()));
        }

        @Override
        public double slope(Angle x, Angle riseAngle) {
            if (x.deg() < 0 || x.deg() >= riseAngle.deg()) {
                return 0;
            }
            Point to = table.get(segment(x.deg()));
            Point from = table.get(segment(x.deg()) - 1);
            return (to.share() - from.share())
                    / (to.angle().rad() - from.angle().rad());
        }
    }
}
