// SPDX-License-Identifier: Apache-2.0
package landfall.cut;

import java.util.ArrayList;
import java.util.List;
import landfall.chip.ChipFlow;
import landfall.cut.CutForecast.Chips;
import landfall.cut.CutForecast.Load;
import landfall.cut.CutWish.Drive;
import landfall.cut.CutWish.Opening;
import landfall.fault.Caution;
import landfall.material.WorkGroup;
import landfall.tap.Tap;
import landfall.tap.TapMaterial;
import landfall.tap.Wear;
import landfall.working.Pen;

/** What must be said with a forecast: what its own figures raise, then what the material and the work ask for. */
final class CutCautions {
    private static final double THIN_MARGIN = 2;
    private static final double NO_MARGIN = 4.0 / 3;
    private static final double HIGH_SHARE = 0.75;
    private static final double FULL_DEPTH_OVER_PITCH = 0.6495;
    private static final double FAR_RAKE_DEG = 15;

    private final Tap tap;
    private final CutWish wish;
    private final Chips chips;
    private final Load load;
    private final List<Caution> cautions = new ArrayList<>();

    CutCautions(Tap tap, CutWish wish, Chips chips, Load load) {
        this.tap = tap;
        this.wish = wish;
        this.chips = chips;
        this.load = load;
    }

    List<Caution> all(Pressure pressure) {
        margin();
        thickness();
        share();
        rake(pressure);
        room();
        wear();
        material();
        tapItself();
        drive();
        add(
                "brokenTap",
                "A broken tap is glass-hard and under stress: eye protection, and no hammer without a shield.",
                "");
        return cautions;
    }

    private void add(String code, String text, String raisedBy) {
        cautions.add(new Caution(code, text, raisedBy));
    }

    private void margin() {
        double low = load.margin().low();
        if (low < NO_MARGIN) {
            add(
                    "marginTooThin",
                    "The upper torque comes to %.0f %% of the lower breaking torque: this tap may break."
                                    .formatted(100 / low)
                            + " Sharpen it, open the hole as far as the thread allows, or take a stronger tap.",
                    "m_l");
        } else if (low < THIN_MARGIN) {
            add(
                    "marginThin",
                    "The upper torque comes to %.0f %% of the lower breaking torque: thin.".formatted(100 / low),
                    "m_l");
        }
    }

    private void thickness() {
        double h = chips.load().steps().thickness().mm();
        WorkGroup group = wish.material().group();
        String given = "Chip of %.3f mm: ".formatted(h);
        if (h < 0.010) {
            add("chipThin", given + "about as thick as a sharp edge is round, so teeth rub and plough.", "h");
        } else if (h < 0.025 && group.hardensUnderTheTool()) {
            add(
                    "chipThin",
                    given + "thin for a material that hardens under a rubbing tooth; take a shorter chamfer.",
                    "h");
        }
        boolean hard = group == WorkGroup.HARDENED || group == WorkGroup.TITANIUM_NICKEL;
        if (h > (hard ? 0.10 : 0.15)) {
            add("chipThick", given + "thick; teeth may chip. A longer chamfer or more flutes thins it.", "h");
        }
    }

    private void share() {
        double share = chips.load().groove().depth().mm()
                / (FULL_DEPTH_OVER_PITCH * tap.thread().pitch().mm());
        if (share > HIGH_SHARE + 0.02) {
            add(
                    "shareHigh",
                    "%.0f %% of the old full thread depth: crests rub and chips are crushed, so torque"
                                    .formatted(100 * share)
                            + " is rather over the model than under it.",
                    "t");
        }
    }

    private void rake(Pressure pressure) {
        if (Math.abs(pressure.offUsual().deg()) > FAR_RAKE_DEG) {
            add(
                    "rakeFarFromUsual",
                    "Rake of %.1f deg is %.0f deg off what is usual for this material; the rule of 1.5 %% a degree is"
                                    .formatted(
                                            pressure.rake().deg(),
                                            Math.abs(pressure.offUsual().deg()))
                            + " stretched.",
                    "γ");
        }
    }

    private void room() {
        double depth = wish.depth().mm();
        boolean leaves = chips.flow() != ChipFlow.STAYS;
        if (!leaves && chips.room().clearAfter().low() < depth) {
            add(
                    "clearChips",
                    "Chips may fill the flutes after %.1f mm: take the tap out and clean it by then."
                            .formatted(chips.room().clearAfter().low()),
                    "z_l");
        }
        if (wish.how().opening() == Opening.BLIND && chips.flow() == ChipFlow.FORWARD) {
            add(
                    "chipsAhead",
                    "Chips go ahead of the tap into the bottom of a blind hole: drill deeper, or take other"
                            + " flutes.",
                    "");
        }
        if (leaves) {
            add(
                    "chipsLeave",
                    "Chips are meant to leave by themselves; the depth that fills the flutes counts only if they"
                            + " do not.",
                    "z_c");
        }
    }

    private void wear() {
        if (wish.wear() == null) {
            add("wearAssumed", "Wear not told: a fresh edge is taken.", "K_w");
        }
        double width = wish.wearUsed().land(tap.thread(), Pen.NONE).mm();
        if (width > Wear.SPENT.land(tap.thread(), Pen.NONE).mm() + 1e-12) {
            add(
                    "wearBeyondSpent",
                    "The wear land is wider than that of a spent tap; the factor is carried on beyond its"
                            + " evidence. Sharpen first.",
                    "K_w");
        }
    }

    private void material() {
        WorkGroup group = wish.material().group();
        if (group == WorkGroup.MAGNESIUM) {
            add(
                    "magnesium",
                    "Magnesium chips burn: no water on them, none left lying, sand or class D powder at hand.",
                    "");
        }
        if (group == WorkGroup.COPPER) {
            add("copperTorque", "Sources for the torque of copper alloys differ by 2.6.", "T");
        }
        switch (group) {
            case TITANIUM_NICKEL, MAGNESIUM, ZINC, PLASTIC ->
                add(
                        "noTorquePoint",
                        "No measured torque was found for this group of materials: the band is a guess.",
                        "T");
            default -> {}
        }
        String doubt = wish.material().naming().doubt();
        if (!doubt.isEmpty()) {
            add("materialDoubt", "Of the material's figures: " + doubt + ".", "kc_1");
        }
    }

    private void tapItself() {
        if (tap.body().shank() == null) {
            add(
                    "shankNotTold",
                    "Shank not told: only the thread's strength is counted, a thin shank may be weaker.",
                    "B_l");
        }
        if (tap.flutes().kind().isSpiral()) {
            add(
                    "spiralSection",
                    "Strength is that of the section square to the axis, as if the flutes ran straight.",
                    "f_w");
        }
        if (tap.make().material() != TapMaterial.HSS) {
            add(
                    "speedIsOfHss",
                    "The list's speeds are of HSS taps"
                            + (tap.make().material() == TapMaterial.CARBON
                                    ? "; half of them is taken for carbon steel, common practice."
                                    : "; carbide may go faster in iron and cast aluminium."),
                    "v");
        }
        if (tap.make().material() == TapMaterial.CARBIDE) {
            add(
                    "carbideBrittle",
                    "Carbide breaks without warning, and at far less when it is not turned truly square.",
                    "B_l");
        }
    }

    private void drive() {
        Drive drive = wish.how().drive();
        if (drive == null) {
            return;
        }
        switch (drive) {
            case HAND ->
                add(
                        "byHand",
                        "By hand: start square in a guide block or under a spindle with the power off;"
                                + " bar by the tap's size;"
                                + " both hands, no side pull.",
                        "l_safe");
            case DRILL_PRESS ->
                add(
                        "drillPress",
                        "Drill press: reversing head or floating holder with a slip set under the"
                                + " breaking torque; the quill"
                                + " only follows.",
                        "B_l");
            case LATHE ->
                add(
                        "lathe",
                        "Lathe: tap follower or floating holder in the tailstock, lowest speed, stop"
                                + " short of the bottom.",
                        "");
            case MILL ->
                add(
                        "mill",
                        "Mill: feed is the lead each turn; a holder with float unless the spindle is"
                                + " held to the feed. A feed off"
                                + " by 1 %% shaves %.2f mm off a flank over this depth in a rigid holder."
                                        .formatted(0.01 * wish.depth().mm()),
                        "L");
        }
    }
}
