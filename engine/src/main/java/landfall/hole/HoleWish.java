// SPDX-License-Identifier: Apache-2.0
package landfall.hole;

import java.util.List;
import landfall.drill.Drill;
import landfall.material.WorkMaterial;
import landfall.quantity.Length;
import landfall.quantity.Stress;
import landfall.tap.FluteKind;
import landfall.thread.CallOut;
import org.jspecify.annotations.Nullable;

/**
 * What is asked of a hole. What was not told is null; what is then taken instead is said in the answer.
 *
 * @param hole diameter found in the part, in place of the greatest allowed one, for the strength
 */
public record HoleWish(
        CallOut callOut,
        @Nullable WorkMaterial material,
        Place place,
        Tools tools,
        Strengths strengths,
        @Nullable Length hole) {

    /**
     * Where the thread stands.
     *
     * @param depth of full thread, from the face; taken as the engagement too
     * @param wall least metal left outside the thread's major diameter
     * @param insert nominal length of the wire insert that goes in; only in holes for one
     */
    public record Place(
            @Nullable Length depth,
            @Nullable HoleEnd end,
            @Nullable Length wall,
            @Nullable Length insert) {
        public static final Place UNKNOWN = new Place(null, null, null, null);

        /** A place without a wire insert, or whose insert is not known. */
        public Place(@Nullable Length depth, @Nullable HoleEnd end, @Nullable Length wall) {
            this(depth, end, wall, null);
        }
    }

    /**
     * What the shop drills and taps with.
     *
     * @param drills the shop owns; null for the drawers that the call-out's system uses
     * @param share wanted, as a fraction of the full depth
     * @param chamferThreads of the tap
     * @param flutes of the tap; forming taps have their own rule
     */
    public record Tools(
            @Nullable List<Drill> drills,
            @Nullable Double share,
            @Nullable Double chamferThreads,
            @Nullable FluteKind flutes) {
        public static final Tools UNKNOWN = new Tools(null, null, null, null);

        public boolean forming() {
            return flutes == FluteKind.FORMING;
        }
    }

    /** Tensile strengths; both null for equal materials. */
    public record Strengths(
            @Nullable Stress screw, @Nullable Stress part) {
        public static final Strengths EQUAL = new Strengths(null, null);
    }

    public static HoleWish of(CallOut callOut) {
        return new HoleWish(callOut, null, Place.UNKNOWN, Tools.UNKNOWN, Strengths.EQUAL, null);
    }

    public HoleWish at(Place other) {
        return new HoleWish(callOut, material, other, tools, strengths, hole);
    }

    public HoleWish with(Tools other) {
        return new HoleWish(callOut, material, place, other, strengths, hole);
    }

    public HoleWish with(Strengths other) {
        return new HoleWish(callOut, material, place, tools, other, hole);
    }

    /** Depth of full thread: as told, else what the insert needs; null when neither was told. */
    @Nullable
    Length depth() {
        Length insert = place.insert;
        return place.depth != null || insert == null ? place.depth : InsertSeat.fullThread(insert, callOut.thread());
    }

    boolean through() {
        return place.end() == HoleEnd.THROUGH;
    }
}
