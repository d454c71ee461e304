// SPDX-License-Identifier: Apache-2.0
package landfall.timing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import landfall.cards.ask.GrindAsk;
import landfall.cards.ask.GrindTrial;
import landfall.envelope.ChamferGrid;
import landfall.grind.GrindSetup;
import landfall.quantity.Length;

/**
 * The chamfer that is ground side by side: a 1/2-13 with four flutes on a radial cam whose lobes are not quite even, so
 * that every land must be worked out.
 */
final class Work {
    private static final Map<String, String> TYPED = Map.ofEntries(
            Map.entry("thread", "1/2-13 UNC-2B"),
            Map.entry("flutes.count", "4"),
            Map.entry("land.angle", "40 deg"),
            Map.entry("chamfer.angle", "9 deg"),
            Map.entry("chamfer.threads", "4"),
            Map.entry("cam.lobes", "4"),
            Map.entry("cam.riseAngle", "60 deg"),
            Map.entry("cam.returnAngle", "15 deg"),
            Map.entry("cam.radial.from", "0 mm"),
            Map.entry("cam.radial.to", "2 mm"),
            Map.entry("wheel.diameter", "150 mm"));
    private static final int PROBES = 2000;

    private Work() {}

    /** With lobes that are even, or a little off. */
    static GrindTrial trial(boolean even) {
        Map<String, String> typed = new java.util.LinkedHashMap<>(TYPED);
        if (!even) {
            typed.put("lobe-errors", "0.1 deg, 0 deg, -0.05 deg, 0.02 deg");
        }
        return new GrindAsk().trial(typed).orThrow();
    }

    /** Height from row to row: a fortieth of the pitch. */
    static Length between(GrindTrial trial) {
        return trial.setup().tap().thread().pitch().times(1.0 / 40);
    }

    /**
     * A place that both are asked for: round the tap in radians, over the point in mm, and its radius by brute force.
     */
    record Probe(int land, double theta, double z, double radius) {
        double round() {
            return land * Math.PI / 2 + theta;
        }
    }

    static List<Probe> probes(GrindTrial trial) {
        Brute brute = new Brute(trial);
        Random random = new Random(13);
        double land = trial.setup().land().rad();
        double length = trial.ground().length().mm();
        List<Probe> probes = new ArrayList<>();
        for (int i = 0; i < PROBES; i++) {
            int on = random.nextInt(4);
            double theta = land * (0.002 + 0.996 * random.nextDouble());
            double z = length * (0.002 + 0.996 * random.nextDouble());
            probes.add(new Probe(on, theta, z, brute.radius(on * Math.PI / 2 + theta, z)));
        }
        return probes;
    }

    /** Largest difference of a grid, interpolated in its cells, from brute force, micrometres. */
    static double error(ChamferGrid grid, List<Probe> probes, GrindSetup setup) {
        double worst = 0;
        double length = grid.height(grid.rows() - 1).mm();
        for (Probe probe : probes) {
            double x = probe.theta / setup.land().rad() * (grid.places() - 1);
            double y = probe.z / length * (grid.rows() - 1);
            int k = Math.min(grid.places() - 2, (int) x);
            int row = Math.min(grid.rows() - 2, (int) y);
            double low = mix(grid, probe.land, row, k, x - k);
            double high = mix(grid, probe.land, row + 1, k, x - k);
            worst = Math.max(worst, Math.abs(low + (y - row) * (high - low) - probe.radius));
        }
        return 1000 * worst;
    }

    private static double mix(ChamferGrid grid, int land, int row, int k, double share) {
        double here = grid.radius(land, row, k).mm();
        return here + share * (grid.radius(land, row, k + 1).mm() - here);
    }

    /** The work and its probes for the other side. */
    static String json(GrindTrial trial, List<Probe> probes) {
        GrindSetup setup = trial.setup();
        var cam = setup.fixture().cam();
        StringBuilder places = new StringBuilder();
        for (Probe probe : probes) {
            places.append(places.isEmpty() ? "" : ",")
                    .append("[%.12f,%.12f,%.12f]".formatted(probe.round(), probe.z, probe.radius));
        }
        StringBuilder starts = new StringBuilder();
        for (double start : Brute.starts(trial)) {
            starts.append(starts.isEmpty() ? "" : ",").append("%.12f".formatted(start));
        }
        return String.format(
                Locale.ROOT,
                "{\"point\":%.12f,\"kappa\":%.12f,\"length\":%.12f,\"wheel\":%.12f,\"rise\":%.12f,"
                        + "\"lobe\":{\"rise\":%.12f,\"back\":%.12f},\"starts\":[%s],\"probes\":[%s]}",
                setup.tap().chamfer().pointDiameter().mm() / 2,
                setup.motion().setting().swivel().rad(),
                trial.ground().length().mm(),
                setup.fixture().wheel().radius().mm(),
                setup.motion().setting().rises().radial().mm(),
                cam.lobe().riseAngle().rad(),
                cam.lobe().returnAngle().rad(),
                starts,
                places);
    }
}
