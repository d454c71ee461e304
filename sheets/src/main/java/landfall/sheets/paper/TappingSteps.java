// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.paper;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import landfall.chip.ChipBreak;
import landfall.chip.ChipFlow;
import landfall.cut.CutForecast;
import landfall.cut.CutWish.Opening;
import landfall.cut.DriveEffect.Slip;
import landfall.cut.Driven.Drive;
import landfall.fault.Caution;
import landfall.hole.DepthStack;
import landfall.hole.HoleChoice;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.sheets.cut.Tapping;
import landfall.sheets.figure.Figures;
import landfall.sheets.paper.SheetContent.Cautions;
import landfall.sheets.paper.SheetContent.Tick;
import org.jspecify.annotations.Nullable;

/** What is done at the hole, in order, and what to beware of. */
final class TappingSteps {
    /** Common practice, no source; the last is the line to licensed work. */
    static final List<String> ALWAYS = List.of(
            "Swarf cuts: brush or hook, never the bare hand; no gloves near a turning spindle.",
            "Never water or emulsion on magnesium; keep its chips dry and away from sparks.",
            "Threads that hold gas, steam, oxygen, refrigerant, fuel or pressure, that lift or carry people, or that"
                    + " fly: the local code and licensed practice decide. A gauge that fits proves nothing there.");

    static final String SHARDS =
            "Broken taps are glass-hard, sharp and under stress: eye protection, no fingers near the pieces.";

    private final Tapping tapping;
    private final CutForecast cut;
    private final Figures figures;
    private final List<Tick> ticks = new ArrayList<>();

    TappingSteps(Tapping tapping, Figures figures) {
        this.tapping = tapping;
        this.cut = tapping.cut();
        this.figures = figures;
    }

    List<Tick> steps() {
        ticks.clear();
        hole();
        tap();
        gauge();
        return List.copyOf(ticks);
    }

    private void add(String text, String figure) {
        ticks.add(new Tick(text, figure, false, 0));
    }

    private void measured(String text, String figure) {
        ticks.add(new Tick(text, figure, true, 0));
    }

    private boolean through() {
        return cut.wish().how().opening() == Opening.THROUGH;
    }

    private @Nullable DepthStack stack() {
        HoleChoice hole = tapping.hole();
        return hole == null ? null : hole.depth();
    }

    private void hole() {
        DepthStack stack = stack();
        if (!through() && stack != null) {
            add(
                    "Drill, full diameter to this depth from the face; the tip comes to "
                            + figures.coarse(stack.drillPoint()) + ".",
                    figures.coarse(stack.drill()));
        } else {
            add(
                    "Drill" + (through() ? " through." : "."),
                    figures.diameter(cut.wish().hole()));
        }
        HoleChoice hole = tapping.hole();
        if (hole != null) {
            Limits sink = hole.entry().countersink();
            if (sink.min() != null && sink.max() != null) {
                add(
                        "Countersink 90 or 120\u00b0 to a diameter of " + figures.bare(sink.min()) + " to "
                                + figures.length(sink.max()) + " before tapping.",
                        "");
            }
            Limits minor = hole.minor();
            if (minor.min() != null && minor.max() != null) {
                measured(
                        "Measure the hole: " + figures.bare(minor.min()) + " to " + figures.length(minor.max())
                                + " is allowed for this engagement.",
                        "");
            }
        }
        add("Clear the hole of chips" + (through() ? "." : ", down to its bottom."), "");
    }

    private void tap() {
        boolean byHand = cut.wish().how().driven().by() == Drive.HAND;
        if (!byHand) {
            add(
                    "Set the spindle; feed "
                            + figures.length(tapping.tap().thread().lead().perTurn()) + " each turn, both ways.",
                    Figures.number(cut.pace().spindle().revPerMin(), 0) + " rev/min");
        }
        add("Fluid to the edges: " + cut.fluid() + ".", "");
        Length depth = cut.wish().depth();
        DepthStack stack = stack();
        Length point = stack != null
                ? stack.tapPoint()
                : depth.plus(tapping.tap()
                        .thread()
                        .pitch()
                        .times(tapping.tap().chamfer().threads()));
        add(
                (byHand ? "Start square, then tap" : "Tap")
                        + " until the point is so deep from the face: full thread to " + figures.coarse(depth) + ".",
                figures.coarse(point));
        clearing();
        add("Back out at the lead, without a pull.", "");
    }

    private void clearing() {
        ChipBreak turns = cut.chips().turns();
        boolean byHand = cut.wish().how().driven().by() == Drive.HAND;
        if (turns != null && byHand) {
            add(
                    "Break the chips: by habit %s turn on, %s back; the heel shears them after %s back."
                            .formatted(
                                    Figures.plain(turns.habitForward(), 2),
                                    Figures.plain(turns.habitBack(), 2),
                                    Figures.number(turns.back(), 2)),
                    "");
        }
        Length least = Length.ofMm(cut.chips().room().clearAfter().low());
        if (cut.chips().flow() == ChipFlow.STAYS && least.compareTo(cut.wish().depth()) < 0) {
            add("Come out and clear the flutes after this depth at the latest, and again.", figures.coarse(least));
        }
    }

    private void gauge() {
        HoleChoice hole = tapping.hole();
        Double turns = hole == null ? null : hole.entry().goTurns();
        String deep = turns == null || through()
                ? "GO through its whole length"
                : "GO stops after about " + Figures.number(turns, 1) + " turns at full depth";
        measured(deep + "; NOT GO does not enter, or holds within its turns.", "");
    }

    /** By what, and what that asks for. */
    String driven() {
        var driven = cut.wish().how().driven();
        var hand = cut.load().hand();
        StringBuilder words = new StringBuilder(
                driven.by() == null
                        ? "not told"
                        : driven.by().name().toLowerCase(java.util.Locale.ROOT).replace('_', ' '));
        if (driven.holder() != null) {
            words.append(", ")
                    .append(driven.holder()
                            .name()
                            .toLowerCase(java.util.Locale.ROOT)
                            .replace('_', ' '))
                    .append(" holder");
        }
        words.append(". ");
        Slip slip = cut.load().drive().slip();
        if (slip != null) {
            words.append("Slip set from %s to %s N\u00b7m. "
                    .formatted(
                            Figures.significant(slip.least().nm(), 2),
                            Figures.significant(slip.most().nm(), 2)));
        }
        if (driven.by() == null || driven.by() == Drive.HAND) {
            words.append("Bar for two firm hands: %s whole length is needed, %s can break the tap."
                    .formatted(coarser(hand.needed()), coarser(hand.breaks())));
        }
        return words.toString().strip();
    }

    private String coarser(Length length) {
        return figures.isInch() ? Figures.number(length.inch(), 1) + " in" : Figures.number(length.mm(), 0) + " mm";
    }

    /** Raised by this job's figures; and what was assumed, with what the work always asks for. */
    Cautions cautions() {
        Set<String> raised = new LinkedHashSet<>();
        Set<String> always = new LinkedHashSet<>();
        List<Caution> all = new ArrayList<>(cut.cautions());
        if (tapping.hole() != null) {
            all.addAll(tapping.hole().cautions());
        }
        for (Caution caution : all) {
            if (caution.code().equals("noDrillInside") && tapping.isOfDrill()) {
                raised.add(outside(tapping.hole()));
            } else if (caution.code().endsWith("Assumed")) {
                always.add("Assumed: " + caution.text());
            } else {
                (caution.raisedBy().isEmpty() ? always : raised).add(caution.text());
            }
        }
        if (always.stream().noneMatch(text -> text.contains("roken tap"))) {
            always.add(SHARDS);
        }
        always.addAll(ALWAYS);
        return new Cautions(List.copyOf(raised), List.copyOf(always));
    }

    /** The question of the hole was asked with this drill alone; its own words would speak of drawers. */
    private String outside(@Nullable HoleChoice hole) {
        if (hole == null) {
            return "";
        }
        var drilled = hole.tools().drill();
        return ("The hole of drill %s is expected at %s, which is not inside the limits: measure it;"
                        + " ream to size, or take another drill.")
                .formatted(
                        drilled.drill().called(),
                        figures.length(Length.ofMm(drilled.expected().expected())));
    }
}
