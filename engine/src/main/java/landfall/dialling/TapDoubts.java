// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

import java.util.ArrayList;
import java.util.List;
import landfall.fault.Caution;

/** Cautions on the tap and on where the dial stands. */
final class TapDoubts {
    /** Largest chip over the mean chip that a sound regrind keeps under: common practice, no source. */
    static final double WORST_LOAD = 1.3;

    private TapDoubts() {}

    static List<Caution> of(DialAsk ask, DialFindings found) {
        List<Caution> list = new ArrayList<>();
        ReliefFound relief = found.relief();
        if (relief != null) {
            relief(relief, list);
        }
        load(found.lands(), list);
        stand(found, list);
        Swivel swivel = found.swivel();
        if (swivel != null && swivel.low().differsFromZero()) {
            list.add(new Caution(
                    "swivelOff",
                    "With the swivel off, an axial rise gives another fall and the chamfer another"
                            + " length; a radial rise gives the same fall.",
                    "swivel %s deg".formatted(Numbers.plain(swivel.low().value().deg()))));
        }
        return list;
    }

    private static void relief(ReliefFound relief, List<Caution> list) {
        String by = "working relief %s deg, uncertainty %s deg"
                .formatted(
                        Numbers.plain(relief.working().value().deg()),
                        Numbers.plain(relief.working().uncertainty().deg()));
        switch (relief.verdict()) {
            case RUBS ->
                list.add(new Caution(
                        "reliefRubs",
                        "Ground like this the heel rubs: the tap advances faster than the land falls.",
                        by));
            case BARE_MARGIN ->
                list.add(new Caution(
                        "reliefBareMargin",
                        "The land begins to fall only behind a bare margin, which rubs; the relief told is that of"
                                + " the fall behind it.",
                        by));
            case MAY_RUB ->
                list.add(new Caution(
                        "reliefMayRub",
                        "These readings do not show any working relief: read more of the land, or grind it.",
                        by));
            case LITTLE ->
                list.add(new Caution(
                        "reliefLittle", "Less relief than is usual for this chamfer: do not set it like it was.", by));
            case MUCH ->
                list.add(new Caution(
                        "reliefMuch",
                        "More relief than is usual for this chamfer: a weak edge that chatters and chips.",
                        by));
            case SOUND -> {}
        }
    }

    private static void load(LandsFound lands, List<Caution> list) {
        for (LandFound land : lands.lands()) {
            LoadShare share = land.share();
            if (share != null && share.isIdle()) {
                list.add(new Caution(
                        "idleTooth",
                        "Tooth %d cuts nothing: the teeth before it have taken its chip.".formatted(land.land()),
                        "share of land " + land.land()));
            }
        }
        Double worst = lands.worst();
        if (worst != null && worst > WORST_LOAD) {
            list.add(new Caution(
                    "loadUneven",
                    "One tooth cuts %s times the mean chip; up to %s is sound (common practice)."
                            .formatted(Numbers.plain(worst), Numbers.plain(WORST_LOAD)),
                    "share"));
        }
    }

    private static void stand(DialFindings found, List<Caution> list) {
        switch (found.place()) {
            case FLANK ->
                list.add(new Caution(
                        "flankSquare",
                        "On a flank the dial must stand square to the radial rise, or that rise times"
                                + " tan of the flank angle comes into the reading.",
                        found.place().code()));
            case CREST ->
                list.add(new Caution(
                        "flatAnvil",
                        "A pointed stylus falls off the crest as the thread walks by: use a flat anvil"
                                + " over two crests or more; the crest's own relief is in the reading.",
                        found.place().code()));
            case CHAMFER_WORKING ->
                list.add(new Caution(
                        "followsOldRelief",
                        "A dial that stands still here means that the fixture follows the relief that"
                                + " is on the tap, good or bad: dial it with the cam at rest to judge it.",
                        found.place().code()));
            case END, SHANK, CHAMFER_STILL -> {}
        }
    }
}
