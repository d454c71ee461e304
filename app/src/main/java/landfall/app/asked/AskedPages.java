// SPDX-License-Identifier: Apache-2.0
package landfall.app.asked;

import java.util.List;
import landfall.app.shell.Place;
import landfall.app.shell.Shell;
import landfall.cards.ask.BrokenAsk;
import landfall.cards.ask.DecideAsk;
import landfall.cards.ask.InspectAsk;
import landfall.cards.ask.LifeAsk;

/** The questions that have a page without a layout of its own. A new one is one entry here. */
public final class AskedPages {
    private static final List<String> LIFE = List.of(
            "thread", "flutes.count", "land.width", "chamfer.angle", "chamfer.pointDiameter", "threadLength", "wear");

    private static final List<String> DECIDE = List.of(
            "thread",
            "flutes.count",
            "land.width",
            "chamfer.angle",
            "chamfer.pointDiameter",
            "threadLength",
            "wear",
            "chip",
            "flank",
            "torn",
            "nose");
    private static final List<String> INSPECT = List.of(
            "thread",
            "flutes.count",
            "land.width",
            "chamfer.angle",
            "chamfer.pointDiameter",
            "ground-back",
            "working-relief",
            "chamfer-lengths",
            "falls",
            "run-out",
            "point-diameter",
            "pitch-diameter",
            "uncertainty",
            "edges-sharp",
            "no-burn",
            "heel-clear",
            "trial-go",
            "trial-not-go-turns");

    private AskedPages() {}

    public static List<AskedPage> of(Shell shell) {
        return List.of(
                new AskedPage(shell, new LifeAsk(), Place.GRIND, Place.GRIND.path() + "/life", LIFE),
                new AskedPage(shell, new DecideAsk(), Place.GRIND, Place.GRIND.path() + "/decide", DECIDE),
                new AskedPage(shell, new InspectAsk(), Place.GRIND, Place.GRIND.path() + "/inspect", INSPECT),
                new AskedPage(
                        shell,
                        new BrokenAsk(),
                        Place.WHY,
                        Place.WHY.path() + "/broken",
                        List.of("thread", "material", "depth", "blind", "through", "worth", "proud", "flutes")));
    }
}
