// SPDX-License-Identifier: Apache-2.0
package landfall.hole;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import landfall.fault.Caution;
import landfall.quantity.Length;
import landfall.quantity.UnitSystem;
import landfall.tap.blank.TapBlank;
import landfall.thread.Family;
import landfall.thread.ScrewThread;
import org.jspecify.annotations.Nullable;

/**
 * What must be said of where the thread stands: wall, mouth, squareness, skin, reach of a usual tap, insert, strength.
 */
final class PlaceCautions {
    private static final Set<Family> WITH_BLANKS = Set.of(Family.METRIC, Family.MJ, Family.UNIFIED, Family.UNJ);
    private static final double DEEP_ENOUGH_TO_SKEW = 1;

    private final HoleWish wish;
    private final ScrewThread thread;
    private final List<Caution> cautions = new ArrayList<>();

    private PlaceCautions(HoleWish wish) {
        this.wish = wish;
        this.thread = wish.callOut().thread();
    }

    static List<Caution> of(
            HoleWish wish, @Nullable DepthStack depth, Optional<InsertSeat> insert, boolean withoutStrength) {
        PlaceCautions found = new PlaceCautions(wish);
        found.wall();
        found.mouth(depth);
        found.reach(depth);
        found.insert(depth, insert);
        if (withoutStrength) {
            found.noStrength();
        }
        return found.cautions;
    }

    private void add(String code, String raisedBy, String text) {
        cautions.add(new Caution(code, text, raisedBy));
    }

    private void wall() {
        Length wall = wish.place().wall();
        if (wall != null && wall.over(thread.major()) < 0.5) {
            add(
                    "thinWall",
                    wall.words(),
                    "Less than half a diameter of metal outside the thread (common practice, no source): the"
                            + " wall can swell while tapping and spring back, and the GO goes tight.");
        }
        if (wish.material() != null && wish.material().group().hardensUnderTheTool()) {
            add(
                    "hardenedSkin",
                    wish.material().id(),
                    "This material hardens where it is rubbed: a dull drill or a dwelling one leaves a skin"
                            + " that ruins the tap. Sharp drill, steady feed, never dwell.");
        }
    }

    private void mouth(@Nullable DepthStack depth) {
        if (depth == null) {
            return;
        }
        add(
                "bellMouth",
                "D_c1",
                "A tap that starts out of line, or is pushed, opens the mouth: countersink first, and try the GO for"
                        + " wobble and the NOT GO in the first turns, not only deeper.");
        if (depth.fullThread().over(thread.major()) >= DEEP_ENOUGH_TO_SKEW) {
            add(
                    "skew",
                    "S_k",
                    "Drill and tap in one clamping, square to the face: each degree out of square shifts the far end of"
                            + " this thread by "
                            + Length.ofMm(depth.fullThread().mm() * Math.tan(Math.toRadians(1)))
                                    .words()
                            + ", and the screw's head bears on one side.");
        }
    }

    /** The longest of the listed blanks; a longer tap must be asked for. */
    private void reach(@Nullable DepthStack depth) {
        if (depth == null || !WITH_BLANKS.contains(thread.family())) {
            return;
        }
        boolean inch = thread.family().system() == UnitSystem.INCH;
        Optional<TapBlank> longest = TapBlank.of(thread.major()).stream()
                .filter(blank -> blank.list().startsWith("USCTI") == inch)
                .max(Comparator.comparing(blank -> blank.reach(thread.minorDiameter())));
        longest.filter(blank -> blank.reach(thread.minorDiameter()).compareTo(depth.tapPoint()) < 0)
                .ifPresent(blank -> add(
                        "tapTooShort",
                        "T_p",
                        "The tap's point must go " + depth.tapPoint().words() + " deep; a usual tap (" + blank.list()
                                + ") reaches "
                                + blank.reach(thread.minorDiameter()).words()
                                + ": ask for a long one, with a thin shank."));
    }

    private void insert(@Nullable DepthStack depth, Optional<InsertSeat> insert) {
        Optional<Length> diameter = InsertSeat.diameter(wish.callOut());
        if (diameter.isEmpty()) {
            return;
        }
        if (depth == null) {
            add("insertNotTold", "", "Tell the insert's length or the depth: the seat of the insert rests on it.");
            return;
        }
        if (insert.isEmpty()) {
            add(
                    "tooShallowForInsert",
                    "T_f",
                    "Too shallow for any insert: the shortest is one diameter long and needs "
                            + InsertSeat.fullThread(diameter.get(), thread).words() + " of full thread.");
            return;
        }
        seat(depth, insert.get());
    }

    private void seat(DepthStack depth, InsertSeat insert) {
        if (insert.fullThread().compareTo(depth.fullThread()) > 0) {
            add(
                    "insertLongerThanThread",
                    "T_i",
                    "This insert needs " + insert.fullThread().words() + " of full thread, "
                            + depth.fullThread().words() + " is asked for: it would stand proud or bind.");
        }
        if (depth.drill().compareTo(insert.drill()) < 0) {
            add(
                    "insertDrillsDeeper",
                    "T_iq",
                    "The standard of the insert drills " + insert.drill().words()
                            + " deep, more than the sum of thread, chamfer and room here: go by it.");
        }
        if (thread.family() == Family.STI_INCH) {
            add(
                    "insertSeatMetric",
                    "Q_i",
                    "The depths of the insert were read for metric inserts; inch ones are taken alike.");
        }
        add(
                "insertWall",
                "",
                "Metal beside the hole: about a whole diameter of the insert's tap all round (a maker's advice).");
    }

    private void noStrength() {
        String why = switch (thread.family()) {
            case STI_INCH, STI_METRIC ->
                "what strips is the insert's outside in the part, and its sizes are not held. Inserts of 1.5 diameters"
                        + " usually hold the screw in aluminium (common practice)";
            case UNJ -> "the greatest minor diameter of this class is not held; tell the hole as found";
            case ACME, STUB_ACME, TRAPEZOIDAL ->
                "a power thread is loaded by wear and bending of its flanks, not by the formulas for fastening threads";
            case G, R, NPT, NPTF -> "a pipe thread is there to seal or to join pipes, not to break a screw";
            case WHITWORTH, BA -> "the formulas held are for 60 degrees; this form has other flanks";
            default -> "a limit that it needs is not held";
        };
        add("noStrength", "", "No strength and no trade-off are told: " + why + ".");
    }
}
