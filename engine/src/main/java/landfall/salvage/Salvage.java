// SPDX-License-Identifier: Apache-2.0
package landfall.salvage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import landfall.fault.Caution;
import landfall.material.WorkGroup;
import landfall.material.WorkMaterial;
import landfall.working.Pen;
import landfall.working.Worked;

/**
 * The whole answer to "the tap has broken: how do I get it out?".
 *
 * @param ways first the one to try first; those that cannot be done here stand last
 */
public record Salvage(BrokenTap broken, List<WayOut> ways, Sizes sizes, List<Caution> cautions) {
    private static final Caution PRACTICE = new Caution(
            "practice",
            "The order is common practice, not a standard. Find out why it broke before the next tap goes in:"
                    + " ask why.");
    private static final Caution SHARDS = new Caution(
            "shards",
            "A broken tap is glass-hard and under stress: eye protection for everybody near, no bare fingers, no"
                    + " hammer without a shield.");

    public Salvage {
        ways = List.copyOf(ways);
        cautions = List.copyOf(cautions);
    }

    public static Worked<Salvage> of(BrokenTap broken) {
        return Worked.of(pen -> compute(broken, pen));
    }

    private static Salvage compute(BrokenTap broken, Pen pen) {
        record Weighed(WayOut way, int points) {}

        List<WayOut> ways = Way.all().stream()
                .map(way -> {
                    Weighing weighing = new Weighing(broken);
                    WayOut out = weighing.of(way);
                    return new Weighed(out, weighing.points());
                })
                // the sort is stable: equal points keep the order of the list
                .sorted(Comparator.comparingInt(Weighed::points).reversed())
                .map(Weighed::way)
                .toList();
        Sizes sizes = Sizes.of(broken, pen);
        List<Caution> cautions = new ArrayList<>();
        if (sizes.tool() == null) {
            cautions.add(new Caution(
                    "noToolBetween",
                    "The core of the stump may be as thick as the hole: no mill or electrode frees it without touching"
                            + " the thread. Work down in steps under the minor diameter.",
                    "d_k2"));
        }
        cautions.addAll(cautions(broken));
        return new Salvage(broken, ways, sizes, cautions);
    }

    private static List<Caution> cautions(BrokenTap broken) {
        List<Caution> cautions = new ArrayList<>();
        if (broken.worth() == null) {
            cautions.add(new Caution("worthAssumed", "Worth of the part not told: middle is taken.", ""));
        }
        WorkMaterial material = broken.part().material();
        if (material == null) {
            cautions.add(new Caution(
                    "materialAssumed", "Material not told: nothing is ruled out for its sake. Tell it.", ""));
        } else if (material.group() == WorkGroup.MAGNESIUM) {
            cautions.add(
                    new Caution("magnesium", "Magnesium: no arc, no acid, no water; sparks and fine chips burn.", ""));
        }
        if (broken.worth() == Worth.HIGH) {
            cautions.add(new Caution(
                    "stopAndCall",
                    "Stop after one careful try by hand: each failed try makes the next way harder. Spark erosion"
                            + " by somebody who does it daily is cheaper than the part.",
                    ""));
        }
        if (broken.stump().flutes() == null && !broken.forming()) {
            cautions.add(new Caution(
                    "coreAssumed",
                    "Flutes not counted: the core of the stump is taken over all kinds of taps.",
                    "d_k2"));
        }
        cautions.add(new Caution(
                "acid",
                "Acids only by those who are licensed for them, with hood, gloves and a plan for the waste.",
                ""));
        cautions.add(SHARDS);
        cautions.add(PRACTICE);
        return cautions;
    }
}
