// SPDX-License-Identifier: Apache-2.0
package landfall.cut;

import java.util.ArrayList;
import java.util.List;
import landfall.chip.ChipFlow;
import landfall.chip.FluteShare;
import landfall.cut.CutForecast.Chips;
import landfall.cut.CutForecast.Load;
import landfall.cut.CutWish.Opening;
import landfall.fault.Caution;
import landfall.material.WorkGroup;
import landfall.quantity.Length;
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
        evenness();
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
        double most = chips.load().thickest().mm();
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
        if (most > (hard ? 0.10 : 0.15)) {
            add(
                    "chipThick",
                    "Chip of %.3f mm: thick; teeth may chip. ".formatted(most)
                            + (most > h
                                    ? "Even lands would cut %.3f mm.".formatted(h)
                                    : "A longer chamfer or more flutes thins it."),
                    most > h ? "h_max" : "h");
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

    private void shank() {
        Length shank = tap.body().shank();
        if (shank == null) {
            String list = load.strength().list();
            if (list.isEmpty()) {
                add(
                        "shankNotTold",
                        "Shank not told, and no blank of this thread is listed: only the thread's strength is counted,"
                                + " a thin shank may be weaker.",
                        "B_l");
            } else {
                add(
                        "shankListed",
                        "Shank not told: that of a tap after %s is taken. Measure it and its square.".formatted(list),
                        "d_s");
            }
        } else if (tap.body().neck() == null && shank.compareTo(tap.thread().major()) >= 0) {
            add(
                    "neckNotTold",
                    "The shank is as thick as the thread: such taps are often thinner behind the thread. Measure the"
                            + " neck, it may be the weakest place.",
                    "B_l");
        }
    }

    private void evenness() {
        List<FluteShare> shares = chips.load().shares();
        List<String> idle = shares.stream()
                .filter(FluteShare::isIdle)
                .map(share -> Integer.toString(share.flute()))
                .toList();
        if (!idle.isEmpty()) {
            add(
                    "idleTeeth",
                    "Teeth of flute %s cut nothing: those that stand proud take their chip as well, and push the tap"
                                    .formatted(String.join(", ", idle))
                            + " off its axis. Regrind the chamfer even.",
                    "h_max");
        }
    }

    private void tapItself() {
        shank();
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
}
