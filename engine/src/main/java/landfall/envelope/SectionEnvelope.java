// SPDX-License-Identifier: Apache-2.0
package landfall.envelope;

import java.util.Arrays;
import java.util.List;
import landfall.envelope.CamMotion.Arc;

/**
 * The envelope of the wheel in one plane square to the axis: for every angle round the tap, the least radius that the
 * wheel has left.
 *
 * <p>On a piece of the cam without a corner the deepest mark moves steadily round the tap as the spindle turns, so each
 * piece owns a stretch of the tap between the marks at its two ends; a corner that stands out between two pieces owns
 * what lies between theirs. Only the owners of a place are asked for it. Within a stretch the spindle angle of a place
 * follows from that of the places before, so that one look at the wheel is enough nearly everywhere. As a look always
 * stands for a place that the wheel has really taken, nothing can come out too deep.
 */
final class SectionEnvelope {
    private static final double TURN = 2 * Math.PI;

    /** What a further step of the search would still take off, mm; less is left. */
    private static final double ENOUGH = 1e-7;

    private static final int STEPS = 60;

    private final CamMotion cam;
    private final WheelRay ray;
    private final double far;
    private final double rise;
    private final double atRest;
    private final double restAzimuth;

    private double contact;
    private double azimuth;

    /** Stretches in the order of the cam: pieces and the corners behind them; turns from the start of the lobe. */
    private final Stretch[] stretches;

    /**
     * A stretch of the tap that one piece of the lobe grinds, or, without a piece, one corner.
     *
     * @param from place round the tap from the start of the lobe, radians
     * @param turn of the spindle at {@code from}; of a corner at all of it
     */
    private record Stretch(Arc piece, boolean corner, double from, double to, double turn) {}

    /** @param radius of the chamfer line on the centre line in this plane, cam at rest, mm */
    SectionEnvelope(WheelPass pass, CamMotion cam, double radius) {
        this(pass, cam, radius, 0);
    }

    /** @param drop what the wheel's radius lacks in this plane of that of a true cylinder, mm */
    SectionEnvelope(WheelPass pass, CamMotion cam, double radius, double drop) {
        double cosine = Math.cos(pass.swivel().rad());
        double whole = pass.radius().mm();
        double height = pass.aboveCentre().mm();
        this.cam = cam;
        this.rise = pass.rise().mm();
        this.ray = new WheelRay(cosine * cosine, whole - drop, height);
        this.far = radius + Math.sqrt(Math.max(0, whole * whole - height * height)) / cosine;
        double low = Math.max(-0.99, (radius - rise) / (radius + Math.abs(drop) / cosine));
        double room = 0.15 + Math.abs(height) / whole;
        double window = Math.min(Math.PI / 2 - 0.01, Math.acos(Math.min(1, low)) + room);
        this.restAzimuth = ray.deepest(far, 0, window, 0);
        ray.cast(restAzimuth, far);
        this.atRest = ray.radius;
        this.stretches = stretches(cam.pieces(), window);
    }

    private Stretch[] stretches(List<Arc> pieces, double window) {
        Stretch[] found = new Stretch[2 * pieces.size()];
        azimuth = restAzimuth;
        for (int i = 0; i < pieces.size(); i++) {
            Arc piece = pieces.get(i);
            double from = piece.from() + azimuth(piece, piece.from(), window);
            double to = piece.to() + azimuth(piece, piece.to(), window);
            found[2 * i] = new Stretch(piece, false, from, to, piece.from());
            boolean last = i == pieces.size() - 1;
            double next = restAzimuth;
            if (last && piece.share(piece.to()) > 1e-9) {
                next = window;
            } else if (!last) {
                next = azimuth(pieces.get(i + 1), piece.to(), window);
            }
            found[2 * i + 1] = new Stretch(piece, true, to, piece.to() + next, piece.to());
        }
        return found;
    }

    private double azimuth(Arc piece, double turn, double window) {
        azimuth = ray.deepest(far - piece.share(turn) * rise, -piece.slope(turn) * rise, window, azimuth);
        return azimuth;
    }

    /** Least radius at an angle round the tap, radians, mm. */
    double radius(double theta) {
        double[] one = new double[1];
        fill(one, theta, 0);
        return one[0];
    }

    /** What one lobe alone would leave there, mm. */
    double ofLobe(int lobe, double theta) {
        double[] one = {atRest};
        lobe(lobe, one, theta, 0);
        return one[0];
    }

    /** Angle round the tap up to which the rise of a lobe has ground; behind it its end stands still and grinds on. */
    double riseEnds(int lobe) {
        return cam.start(lobe) + stretches[2 * (cam.risePieces() - 1)].to;
    }

    /** Angle of the spindle at which an angle round the tap is ground to its last, radians. */
    double contact(double theta) {
        contact = theta - restAzimuth;
        radius(theta);
        return contact;
    }

    /**
     * Least radii at places of equal step.
     *
     * @param into radii, mm
     * @param first angle of the first place round the tap, radians
     * @param step from place to place
     */
    void fill(double[] into, double first, double step) {
        Arrays.fill(into, atRest);
        for (int i = 0; i < cam.lobes(); i++) {
            lobe(i, into, first, step);
        }
    }

    private void lobe(int lobe, double[] into, double first, double step) {
        double from = first - cam.start(lobe);
        double last = from + step * (into.length - 1);
        for (Stretch stretch : stretches) {
            // the same lobe turns by again and again
            double turns = Math.ceil((from - stretch.to) / TURN) * TURN;
            for (; stretch.to > stretch.from && stretch.from + turns <= last; turns += TURN) {
                stretch(stretch, into, from - turns, step, cam.start(lobe) + turns);
            }
        }
    }

    /** @param first and the turns of the stretch are counted from {@code start} */
    private void stretch(Stretch stretch, double[] into, double first, double step, double start) {
        int from = 0;
        int to = into.length - 1;
        if (step > 0) {
            from = Math.max(from, (int) Math.ceil((stretch.from - first) / step));
            to = Math.min(to, (int) Math.floor((stretch.to - first) / step));
        }
        if (stretch.corner) {
            double centre = far - stretch.piece.share(stretch.turn) * rise;
            for (int k = from; k <= to; k++) {
                ray.cast(first + k * step - stretch.turn, centre);
                if (ray.radius < into[k]) {
                    into[k] = ray.radius;
                    contact = start + stretch.turn;
                }
            }
        } else {
            new Search(stretch, start).fill(into, from, to, first, step);
        }
    }

    /** Places of one stretch one after another, each begun where the ones before lead to. */
    private final class Search {
        private final Arc piece;
        private final double perPlace;
        private final Stretch stretch;
        private final double start;
        private double bend = 1;
        private double best;
        private double at;

        Search(Stretch stretch, double start) {
            this.stretch = stretch;
            this.start = start;
            this.piece = stretch.piece;
            this.perPlace = (piece.to() - piece.from()) / (stretch.to - stretch.from);
            middleBend();
        }

        /** How strongly the radius bends with the turn, from its change at two turns close together. */
        private void middleBend() {
            double turn = (piece.from() + piece.to()) / 2;
            double theta = (stretch.from + stretch.to) / 2;
            double apart = 1e-3;
            double before = change(theta, turn - apart);
            double after = change(theta, turn + apart);
            double found = (after - before) / (2 * apart);
            bend = found > 0 ? found : far;
        }

        void fill(double[] into, int from, int to, double first, double step) {
            double guess = piece.from() + (first + from * step - stretch.from) * perPlace;
            double move = step * perPlace;
            for (int k = from; k <= to; k++) {
                double begun = guess;
                search(first + k * step, guess);
                if (best < into[k]) {
                    into[k] = best;
                    contact = start + at;
                }
                // what the guess was off by, it is off by again
                move += at - begun;
                guess = at + move;
            }
        }

        private void search(double theta, double guess) {
            double turn = Math.min(piece.to(), Math.max(piece.from(), guess));
            best = Double.POSITIVE_INFINITY;
            at = turn;
            double before = 0;
            double turnBefore = Double.NaN;
            for (int i = 0; i < STEPS; i++) {
                double change = change(theta, turn);
                if (ray.misses()) {
                    return;
                }
                double still = change * change / (2 * bend);
                best = Math.min(best, ray.radius);
                at = Math.min(piece.to(), Math.max(piece.from(), turn - change / bend));
                if (still < ENOUGH) {
                    return;
                }
                if (turn != turnBefore && change != before && i > 0) {
                    double secant = (change - before) / (turn - turnBefore);
                    bend = secant > 0 ? secant : bend;
                    at = Math.min(piece.to(), Math.max(piece.from(), turn - change / bend));
                }
                before = change;
                turnBefore = turn;
                if (at == turn) {
                    return;
                }
                turn = at;
            }
        }

        /** Change of the radius at theta with the turn; the ray holds the radius. */
        private double change(double theta, double turn) {
            ray.cast(theta - turn, far - piece.share(turn) * rise);
            return -piece.slope(turn) * rise * ray.byCentre - ray.byAzimuth;
        }
    }
}
