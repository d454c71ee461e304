// SPDX-License-Identifier: Apache-2.0
package landfall.envelope;

import java.util.ArrayList;
import java.util.List;
import landfall.fault.Caution;
import landfall.grind.GrindSetup;
import landfall.quantity.Angle;
import landfall.quantity.Length;

/**
 * A set-up run on a numerical tap with a wheel of real size: what is left on every land at the middle of the chamfer.
 *
 * <p>Run-out of the thread against the spindle counts to first order, e·cos, which is 0.2 µm off at 0.03 mm on a radius
 * of 4 mm.
 */
public record NumericGrind(List<LandGround> lands, List<Share> shares, List<Caution> cautions) {
    /** First angle behind the edge that counts for the working relief and the least gap. */
    private static final double NEAR_EDGE = Math.toRadians(1);

    private static final double PLACE_DEG = 1;

    /** A gap that is smaller than this is taken for contact in the words, not in the figures. */
    private static final double TOUCH_MM = 0.001;

    public NumericGrind {
        lands = List.copyOf(lands);
        shares = List.copyOf(shares);
        cautions = List.copyOf(cautions);
    }

    /**
     * Load of one tooth in the chamfer.
     *
     * @param share of the metal that a turn takes, 1 for all
     */
    public record Share(int land, double share) {}

    /** Runs a set-up. */
    public static NumericGrind of(GrindSetup setup, Errors errors) {
        Run run = new Run(setup, errors);
        List<LandGround> lands = run.lands();
        List<Share> shares = run.shares(lands);
        return new NumericGrind(lands, shares, cautions(lands));
    }

    private static List<Caution> cautions(List<LandGround> lands) {
        List<Caution> cautions = new ArrayList<>();
        double clip =
                lands.stream().mapToDouble(land -> land.clipped().mm()).max().orElse(0);
        if (clip > TOUCH_MM) {
            cautions.add(new Caution(
                    "edgeClipped",
                    "Run numerically, the wheel takes up to %s off the next edge on the return."
                            .formatted(Length.ofMm(clip).words()),
                    "q_clip"));
        }
        double gap =
                lands.stream().mapToDouble(land -> land.leastGap().mm()).min().orElse(0);
        if (gap < 0) {
            cautions.add(new Caution(
                    "landDrags",
                    "Run numerically, a land drags on the cut surface by %s: relief is missing there."
                            .formatted(Length.ofMm(-gap).words()),
                    "g_least"));
        }
        return cautions;
    }

    /** One run: the section at the middle of the chamfer, land by land. */
    private static final class Run {
        private final GrindSetup setup;
        private final Errors errors;
        private final SectionEnvelope section;
        private final double radius;
        private final double landRad;
        private final int flutes;
        private final double wear;

        Run(GrindSetup setup, Errors errors) {
            this.setup = setup;
            this.errors = errors;
            this.radius = setup.shape().midRadius().mm();
            this.landRad = setup.land().rad();
            this.flutes = setup.tap().flutes().count();
            Angle swivel = setup.motion().setting().swivel();
            this.section = new SectionEnvelope(
                    WheelPass.of(setup, swivel, errors),
                    ChamferGround.motion(setup, errors),
                    radius,
                    errors.face().lacks(0.5));
            this.wear = errors.face().wearPerTurn().mm() / flutes / Math.cos(swivel.rad());
        }

        List<LandGround> lands() {
            double[] edges = new double[flutes];
            double mean = 0;
            for (int i = 0; i < flutes; i++) {
                edges[i] = left(i, 0);
                mean += edges[i] / flutes;
            }
            List<LandGround> lands = new ArrayList<>();
            for (int i = 0; i < flutes; i++) {
                lands.add(land(i, edges[i], mean));
            }
            return lands;
        }

        /** Radius about the thread's own axis at land angle theta of land i. */
        private double left(int i, double theta) {
            double round = i * 2 * Math.PI / flutes + theta;
            return section.radius(round) - off(round) + wear * i;
        }

        private double off(double round) {
            return errors.runOut().mm() * Math.cos(round - errors.direction().rad());
        }

        private LandGround land(int i, double edge, double mean) {
            double perRadian = ChamferGround.advance(setup);
            double least = Double.POSITIVE_INFINITY;
            double leastAt = 0;
            List<LandGround.Place> places = new ArrayList<>();
            int steps = (int) Math.ceil(Math.toDegrees(landRad) / PLACE_DEG);
            for (int k = 0; k <= steps; k++) {
                double theta = landRad * k / steps;
                double fall = edge - left(i, theta);
                double gap = fall - perRadian * theta;
                places.add(new LandGround.Place(Angle.ofRad(theta), Length.ofMm(fall), Length.ofMm(gap)));
                if (theta >= NEAR_EDGE && gap < least) {
                    least = gap;
                    leastAt = theta;
                }
            }
            double round = i * 2 * Math.PI / flutes;
            double own = section.ofLobe(i, round) - off(round) + wear * i;
            return new LandGround(
                    i + 1,
                    Length.ofMm(edge - mean),
                    places.get(places.size() - 1).fall(),
                    working(i, edge),
                    Length.ofMm(least),
                    Angle.ofRad(leastAt),
                    Length.ofMm(Math.max(0, own - edge)),
                    Angle.ofRad(section.contact(round + NEAR_EDGE) - round - NEAR_EDGE),
                    places);
        }

        private Angle working(int i, double edge) {
            double kappa = setup.tap().chamfer().angle().rad();
            double slope = (edge - left(i, 2 * NEAR_EDGE)) / (2 * NEAR_EDGE);
            double ground = Math.atan(Math.cos(kappa) * slope / radius);
            double lead = setup.shape().place().leadFelt().mm() / (2 * Math.PI * radius);
            return Angle.ofRad(ground - Math.atan(lead * Math.sin(kappa)));
        }

        /**
         * Chip of each tooth: what it stands above the highest of the teeth before it, teeth cutting in the order of
         * the lands.
         */
        List<Share> shares(List<LandGround> lands) {
            double kappa = setup.tap().chamfer().angle().rad();
            double step = setup.tap().thread().lead().perTurn().mm() / flutes * Math.tan(kappa);
            List<Share> shares = new ArrayList<>();
            for (int i = 0; i < flutes; i++) {
                double before = Double.NEGATIVE_INFINITY;
                for (int back = 1; back <= flutes; back++) {
                    int j = Math.floorMod(i - back, flutes);
                    before = Math.max(before, lands.get(j).edge().mm() - back * step);
                }
                double chip = Math.max(0, lands.get(i).edge().mm() - before);
                shares.add(new Share(i + 1, chip / (flutes * step)));
            }
            return shares;
        }
    }
}
