// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import java.util.ArrayList;
import java.util.List;
import landfall.cards.answer.Item;
import landfall.cards.answer.Unit;
import landfall.envelope.ChamferFound;
import landfall.envelope.GrindRun;
import landfall.envelope.LandGround;

/** A numerical grind laid out: what comes out of a set-up, land by land. */
final class RunItems {
    private RunItems() {}

    static Item of(GrindRun run, Behind behind) {
        ChamferFound found = run.found();
        List<Item.Group> lands = new ArrayList<>();
        for (int i = 0; i < run.middle().lands().size(); i++) {
            LandGround land = run.middle().lands().get(i);
            lands.add(Item.Group.of(
                    "land",
                    new Item.Count("land", land.land()),
                    behind.figure("working", land.working(), "α_run"),
                    behind.figure("fall", land.fall(), "f_run"),
                    behind.figure("leastGap", land.leastGap(), "g_i"),
                    behind.figure("edge", land.edge(), "e_i"),
                    behind.figure("chamferLength", found.lands().get(i).length(), "l_i"),
                    behind.figure("share", 100 * run.middle().shares().get(i).share(), Unit.SHARE, "p_i")));
        }
        return Item.Group.of(
                "run",
                behind.figure("chamferAngle", found.angle(), "κ_run"),
                behind.figure("swivel", found.swivel(), "κ_mend"),
                behind.figure("clipped", run.clipped(), "q_clip"),
                Item.Group.of(
                        "leastGap",
                        behind.figure("gap", found.least().gap(), "g_least"),
                        new Item.Count("land", found.least().land()),
                        behind.figure("at", found.least().at(), "θ_least"),
                        behind.figure("fromPoint", found.least().fromPoint(), "z_least")),
                new Item.Rows("lands", lands));
    }
}
