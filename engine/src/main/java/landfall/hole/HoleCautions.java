// SPDX-License-Identifier: Apache-2.0
package landfall.hole;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import landfall.fault.Caution;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.quantity.UnitSystem;
import landfall.thread.ScrewThread;
import org.jspecify.annotations.Nullable;

/** What must be said with a hole: what its own figures raise, then what the work itself always asks for. */
final class HoleCautions {
    private static final Caution LOCAL_CODE = new Caution(
            "localCode",
            "Threads that hold gas, steam, oxygen, refrigerant, fuel or pressure, that lift or carry people,"
                    + " or that"
                    + " fly: the local code and licensed practice decide. A gauge that fits proves nothing there.");
    private static final Length QUARTER_INCH = Length.ofInch(0.25);

    private final HoleWish wish;
    private final ScrewThread thread;
    private final List<Caution> cautions = new ArrayList<>();

    private HoleCautions(HoleWish wish) {
        this.wish = wish;
        this.thread = wish.callOut().thread();
    }

    static List<Caution> of(
            HoleWish wish,
            Limits minor,
            HoleChoice.Tools tools,
            @Nullable DepthStack depth,
            Optional<Strength> strength) {
        HoleCautions found = new HoleCautions(wish);
        found.drill(tools, tools.forming() == null ? minor : tools.forming().limits());
        if (tools.forming() != null) {
            found.forming(tools.forming());
        }
        found.listed(tools);
        found.engagement(depth);
        found.strength(strength);
        found.cautions.addAll(wish.callOut().cautions());
        found.cautions.add(LOCAL_CODE);
        return List.copyOf(found.cautions);
    }

    private void add(String code, String raisedBy, String text, Object... figures) {
        cautions.add(new Caution(code, figures.length == 0 ? text : text.formatted(figures), raisedBy));
    }

    private void drill(HoleChoice.Tools tools, Limits limits) {
        Drilled drill = tools.drill();
        String called = drill.drill().called();
        Length low = Length.ofMm(drill.expected().low());
        Length middle = Length.ofMm(drill.expected().expected());
        Length high = Length.ofMm(drill.expected().high());
        if (!drill.inside()) {
            add(
                    "noDrillInside",
                    "E_x",
                    "No drill in these drawers leaves a hole inside the limits: %s is the nearest, its hole is"
                            + " expected at %s. Ream to size, or name more drawers.",
                    called,
                    middle.words());
        } else if (!limits.holds(low) || !limits.holds(high)) {
            add(
                    "bandCrossesLimit",
                    "E_x_hi",
                    "The hole of drill %s is expected inside, but %s to %s is usual, and not all of that is inside."
                            + " Gauge the first hole.",
                    called,
                    low.words(),
                    high.words());
        }
        if (!Oversize.covers(drill.drill().diameter())) {
            add(
                    "oversizeExtrapolated",
                    "o",
                    "The oversize of drilled holes is held from 1/16 to 1 in; for this"
                            + " drill the nearest row stands in.");
        }
    }

    private void forming(FormingHole forming) {
        add(
                "formingHole",
                "D_jam",
                "A forming tap wants its hole about three times as closely as a cutting one: never under %s, or it can"
                        + " jam. A reamer or a well ground drill, oil-rich or extreme-pressure"
                        + " fluid, and twice to three"
                        + " times the torque of a cutting tap.",
                forming.least().words());
        if (wish.material() == null) {
            add(
                    "formingMaterial",
                    "",
                    "Forming wants a material that makes a long chip when drilled, under"
                            + " about 35 HRC: not cast iron, not"
                            + " brittle brass, not hard bronze.");
        } else if (!wish.material().canBeFormed()) {
            add(
                    "notFormable",
                    wish.material().id(),
                    "%s is not known to take a forming tap: it breaks rather than flows. Cut the thread.",
                    wish.material().id());
        }
    }

    private void listed(HoleChoice.Tools tools) {
        for (ListedDrill listed : tools.listed()) {
            if (!listed.inside()) {
                add(
                        "listBreaksLimits",
                        listed.drill().list(),
                        "A list in use (%s) names %s, %.0f %% of thread: already by its own diameter outside the minor"
                                + " limits of the thread.",
                        listed.drill().list(),
                        listed.drill().called(),
                        100 * listed.share());
            }
        }
    }

    private void engagement(@Nullable DepthStack depth) {
        if (depth == null) {
            return;
        }
        double diameters = WantedShare.diameters(wish);
        boolean unified = thread.family().system() == UnitSystem.INCH;
        if (wish.place().end() == null) {
            add("endAssumed", "T_d", "Blind or through was not told: blind is taken.");
        }
        if (diameters > 1.5 + 1e-9) {
            add(
                    "longEngagement",
                    "T_f",
                    "Over one and a half diameters of thread: no real gain in strength, more torque, and the"
                            + " standard pitch"
                            + " diameter tolerance no longer applies.");
        }
        if (unified && diameters > 3 + 1e-9) {
            add(
                    "beyondTheTable",
                    "T_f",
                    "Over three diameters: the rule for the hole ends there; its last row is used.");
        }
        if (unified && thread.major().compareTo(QUARTER_INCH) < 0) {
            add(
                    "smallSizeHole",
                    "T_f",
                    "Under 1/4 in the handbook widens the hole limits by a tolerance that is not held here:"
                            + " these are half the"
                            + " minor diameter tolerance wide.");
        }
        if (!wish.through()) {
            chips(depth);
        }
    }

    private void chips(DepthStack depth) {
        if (depth.chipStore().mm() > 0) {
            add(
                    "chipStore",
                    "c_s",
                    "These flutes leave the chips in the hole: the room below the thread is an estimate (chips"
                            + " take 3 to 8 times"
                            + " their solid volume), or come out and clear the hole.");
        } else if (wish.tools().flutes() == null) {
            add(
                    "chipsAssumedOut",
                    "c_s",
                    "No room for chips is counted: a tap that brings them out is taken. A straight flute or a"
                            + " spiral point leaves"
                            + " them below the thread.");
        }
    }

    private void strength(Optional<Strength> strength) {
        if (strength.isEmpty()) {
            return;
        }
        add(
                "strengthLowerBound",
                "L_e",
                "The engagement is a lower bound: shear areas are geometric, and nut dilation, bending and"
                        + " friction lower what"
                        + " they hold. Leave a margin on the soft side.");
        if (wish.strengths().screw() == null != (wish.strengths().part() == null)) {
            add("strengthAssumedEqual", "J", "Only one strength was told: the other is taken equal.");
        }
        if (strength.get().ratio() > 1) {
            add("partStrips", "J", "The part's thread is the weaker one: it strips before the screw's.");
        }
    }
}
