// SPDX-License-Identifier: Apache-2.0
package landfall.grind;

import java.util.ArrayList;
import java.util.List;
import landfall.fault.Caution;
import landfall.quantity.Length;
import landfall.tap.Tap;
import landfall.tap.TapMaterial;
import landfall.working.Pen;

/** What must be said with a set-up: what its own figures raise, then what the work itself always asks for. */
final class GrindCautions {
    /** One dial division over the land that moves the relief by more than this is too coarse a dial. */
    private static final double COARSE_DIAL_DEG = 0.5;

    /** Share by which the fall at the heel must part from the first-order one to be spoken of. */
    private static final double NOTABLE = 0.02;

    private static final List<Caution> ALWAYS = List.of(
            new Caution(
                    "guard", "Hood and flanges in place before the wheel turns; spindle end, nut and flanges guarded."),
            new Caution("ringTest", "Ring-test every vitrified wheel before mounting; a dead sound means scrap."),
            new Caution(
                    "markedSpeed",
                    "Never over the wheel's marked speed. As a wheel wears its rim slows: do not speed it up past "
                            + "the mark."),
            new Caution("eyes", "Eye and face protection. No gloves and no loose sleeves at the wheel."),
            new Caution("dust", "Dust extraction on. Wheel stopped before the fixture or a dial is touched."),
            new Caution(
                    "proveByHand",
                    "Prove one full turn of the cam by hand, wheel stopped and drawn back, before power."),
            new Caution(
                    "localCode",
                    "Threads that hold gas, steam, oxygen, refrigerant, fuel or pressure, that lift or carry people, "
                            + "or that"
                            + " fly: the local code and licensed practice decide. A gauge that fits proves nothing "
                            + "there."));

    private GrindCautions() {}

    static List<Caution> of(Tap tap, Grinding grinding, GrindSetup.Motion motion, WheelCheck wheel) {
        List<Caution> cautions = new ArrayList<>();
        gap(motion.gap(), cautions);
        phase(grinding.phase(), cautions);
        tap(tap, cautions);
        centre(motion.clearance(), cautions);
        fall(grinding.fall(), motion.dial(), cautions);
        dial(motion.setting(), cautions);
        cautions.addAll(wheel.cautions());
        cautions.addAll(ALWAYS);
        return List.copyOf(cautions);
    }

    private static void gap(Gap gap, List<Caution> cautions) {
        if (!gap.clear()) {
            cautions.add(new Caution(
                    "gapNotClear",
                    "The cam is not back before the next edge comes to the wheel: it would grind that edge away."
                            + (gap.longestReturn() == null
                                    ? " No return is short enough here: fit a cam with a shorter rise."
                                    : " Fit a cam whose return is at most %.1f deg, or a shorter rise."
                                            .formatted(gap.longestReturn().deg())),
                    "g_need"));
        }
    }

    /** The figures of the fall are first order; a cam that is not straight, or late, grinds another at the heel. */
    private static void fall(Fall fall, List<DialTarget> dial, List<Caution> cautions) {
        double ground = dial.stream()
                .filter(target -> target.place() == Place.CHAMFER_STILL)
                .mapToDouble(target -> -target.reading().mm())
                .reduce(0, (before, last) -> last);
        if (Math.abs(ground - fall.square().mm()) > NOTABLE * fall.square().mm()) {
            cautions.add(new Caution(
                    "fallOfThisCam",
                    "This cam does not fall evenly behind the edge: square to the chamfer it grinds about "
                            + Length.ofMm(ground).words() + " at the heel."
                            + " The dial targets follow the cam; the falls are those of an even cam.",
                    "f_n"));
        }
    }

    private static void centre(Clearance clearance, List<Caution> cautions) {
        if (clearance.overPoint().mm() <= 0) {
            cautions.add(new Caution(
                    "centreUnderWheel",
                    "The axial rise drives a centre at the point under the wheel: hold this tap in a collet, or let the"
                            + " wheel's edge end before the point.",
                    "x_c"));
        }
    }

    private static void phase(Phase phase, List<Caution> cautions) {
        if (phase.dying().deg() > 1e-9) {
            cautions.add(new Caution(
                    "slopeDies",
                    ("The rise ends before the heel is ground: the relief slope dies over the last %.1f deg of the"
                                            + " land. The")
                                    .formatted(phase.dying().deg())
                            + " wheel's own arc still clears it.",
                    "θ_dying"));
        }
        if (phase.bareMargin().deg() > 1e-9) {
            cautions.add(new Caution(
                    "bareMargin",
                    "The rise starts late: about %.1f deg of land behind the edge stays without relief and will rub."
                            .formatted(phase.bareMargin().deg()),
                    "m"));
        }
    }

    private static void tap(Tap tap, List<Caution> cautions) {
        if (tap.callOut().taper(Pen.NONE).isPresent()) {
            cautions.add(new Caution(
                    "wholeBodyCuts",
                    "A taper (pipe) tap cuts with its whole body: grinding the chamfer alone often is no cure,"
                            + " and where the end is cut back the depth stop moves by as much. The chamfer angle counts"
                            + " from the axis.",
                    "thread"));
        }
        if (tap.make().coating() != null) {
            cautions.add(new Caution(
                    "coatingLost",
                    "Grinding takes the coating off the chamfer: speed and life drop. Log the coating as lost.",
                    tap.make().coating()));
        }
        if (tap.make().material() == TapMaterial.CARBIDE) {
            cautions.add(new Caution(
                    "carbideDust", "Carbide dust holds cobalt: extraction at the wheel and a respirator.", "carbide"));
        }
        cautions.add(new Caution(
                "runOut",
                "Run-out counts against the tap's own thread: dialled in the chucking it was ground in it always "
                        + "reads nil and"
                        + " proves nothing."));
    }

    private static void dial(Setting setting, List<Caution> cautions) {
        if (setting.rises().radial().mm() > 0) {
            cautions.add(new Caution(
                    "flankDialSquare",
                    "A dial on a thread flank must stand square to the radial rise, or the rise shifts its reading by"
                            + " rise x tan 30.",
                    "b"));
        }
        cautions.add(new Caution(
                "crestAnvil",
                "A pointed stylus falls off the crests: use a flat anvil over two crests or more, or dial the shank."
                        + " Lift and re-set at every land."));
        if (Math.abs(setting.ways().get(0).byDivision().deg()) > COARSE_DIAL_DEG) {
            cautions.add(new Caution(
                    "dialTooCoarse",
                    ("One division of this dial over the land is worth %.2f deg of relief: too coarse for this tap."
                                            + " Use a finer")
                                    .formatted(Math.abs(
                                            setting.ways().get(0).byDivision().deg()))
                            + " dial or measure over several lands.",
                    "Δα_d"));
        }
    }
}
