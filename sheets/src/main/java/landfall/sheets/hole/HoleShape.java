// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.hole;

import landfall.hole.DepthStack;
import landfall.hole.HoleChoice;
import landfall.hole.HoleEnd;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.quantity.UnitSystem;
import landfall.tap.blank.TapBlank;
import landfall.thread.ScrewThread;
import org.jspecify.annotations.Nullable;

/**
 * A hole as its section needs it.
 *
 * @param depths null when nobody told how deep
 * @param countersink null when none is called for
 */
public record HoleShape(
        ScrewThread thread,
        Bore bore,
        @Nullable Depths depths,
        @Nullable Limits countersink,
        Tool tool) {
    /**
     * The hole before tapping.
     *
     * @param through whether it goes through; what was not told is drawn blind
     * @param drill what it is drilled with, as the drawer calls it; empty when only the hole was told
     */
    public record Bore(Length diameter, boolean through, String drill) {}

    /**
     * From the face.
     *
     * @param drill depth of full diameter; null when nobody told it
     * @param tip of the drill; null with it
     * @param chipStore share of the room below the tap that is kept for chips
     */
    public record Depths(
            Length fullThread,
            Length tapPoint,
            @Nullable Length drill,
            @Nullable Length tip,
            Length chipStore) {
        static Depths of(DepthStack stack) {
            return new Depths(
                    stack.fullThread(), stack.tapPoint(), stack.drill(), stack.drillPoint(), stack.chipStore());
        }
    }

    /**
     * The tap that stands in it.
     *
     * @param point its diameter; null when not told: drawn at the basic minor diameter
     * @param threadLength with the chamfer; null when not told: drawn as far as the sketch goes
     * @param shank its diameter; null when not told
     * @param known whose sizes these are, in words; empty when none are told
     */
    public record Tool(
            @Nullable Length point,
            @Nullable Length threadLength,
            @Nullable Length shank,
            String known) {}

    /** The hole chosen for a call-out, with the usual blank of that size standing in it. */
    public static HoleShape of(HoleChoice choice) {
        ScrewThread thread = choice.wish().callOut().thread();
        var drilled = choice.tools().drill();
        Bore bore = new Bore(
                drilled.drill().diameter(),
                choice.wish().place().end() == HoleEnd.THROUGH,
                drilled.drill().called());
        DepthStack stack = choice.depth();
        return new HoleShape(
                thread,
                bore,
                stack == null ? null : Depths.of(stack),
                choice.entry().countersink(),
                usual(thread));
    }

    /** The hand tap of the lists, where one is held for this size. */
    private static Tool usual(ScrewThread thread) {
        boolean inch = thread.family().system() == UnitSystem.INCH;
        return TapBlank.of(thread.major()).stream()
                .filter(blank -> blank.list().startsWith("USCTI") == inch)
                .findFirst()
                .map(blank -> new Tool(null, blank.lengths().thread(), blank.shank(), "usual blank, " + blank.list()))
                .orElse(new Tool(null, null, null, ""));
    }

    /** The same hole with another tap in it. */
    public HoleShape with(Tool other) {
        return new HoleShape(thread, bore, depths, countersink, other);
    }

    Length pointDiameter() {
        return tool.point != null ? tool.point : thread.minorDiameter();
    }

    /** Whether the tap's shank passes the hole; taken so when it is not known. */
    boolean shankEnters() {
        return tool.shank == null || tool.shank.compareTo(bore.diameter) <= 0;
    }

    /** How deep the sketch goes into the part, without the room under it: to the drill's tip or the tap's point. */
    Length drawnDepth() {
        if (depths == null) {
            return thread.major().times(1.5);
        }
        return depths.tip != null && !bore.through ? depths.tip : depths.tapPoint;
    }
}
