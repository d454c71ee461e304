// SPDX-License-Identifier: Apache-2.0
package landfall.salvage;

import landfall.hole.HoleEnd;
import landfall.material.WorkMaterial;
import landfall.quantity.Length;
import landfall.tap.FluteKind;
import landfall.tap.TapMaterial;
import landfall.thread.CallOut;
import org.jspecify.annotations.Nullable;

/**
 * What is known of a tap that broke in its hole. Null is not told.
 *
 * @param worth of the part
 */
public record BrokenTap(
        CallOut callOut, Part part, Stump stump, @Nullable Worth worth) {
    /**
     * The part it sits in.
     *
     * @param depth to the point of the tap, from the face
     */
    public record Part(
            @Nullable WorkMaterial material,
            @Nullable Length depth,
            @Nullable HoleEnd end) {
        public static final Part UNTOLD = new Part(null, null, null);
    }

    /**
     * What is left of the tap.
     *
     * @param flutes how many
     * @param kind how they run
     * @param proud how far it stands out of the face; zero when flush or below
     */
    public record Stump(
            TapMaterial material,
            @Nullable Integer flutes,
            @Nullable FluteKind kind,
            @Nullable Length proud) {
        public static final Stump UNTOLD = new Stump(TapMaterial.HSS, null, null, null);
    }

    Worth worthUsed() {
        return worth == null ? Worth.MIDDLE : worth;
    }

    Length major() {
        return callOut.thread().major();
    }

    boolean through() {
        return part.end == HoleEnd.THROUGH;
    }

    boolean forming() {
        return stump.kind == FluteKind.FORMING;
    }
}
