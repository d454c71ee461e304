// SPDX-License-Identifier: Apache-2.0
package landfall.regrind;

import landfall.fault.OutOfRange;
import landfall.material.WorkMaterial;
import landfall.quantity.Length;
import landfall.tap.Wear;
import org.jspecify.annotations.Nullable;

/**
 * What the count of sharpenings stands on besides the tap.
 *
 * @param wear at which it is sharpened each time
 * @param reach length of a spiral point from the tap's point, null when there is none or it was not measured
 * @param cap most sharpenings that the shop has agreed on, null for none
 * @param cuts material that the tap is to cut, which sets its relief; null when not told
 * @param end what becomes of the tap's end
 */
public record LifeWish(
        Wear wear,
        @Nullable Length reach,
        @Nullable Integer cap,
        @Nullable WorkMaterial cuts,
        End end) {
    public static final LifeWish USUAL = new LifeWish(Wear.DUE, null, null);

    /** The end of the tap at each sharpening of the chamfer. */
    public enum End {
        /** Ground back with the chamfer: the point keeps its diameter, the tap grows shorter. */
        GROUND("ground"),
        /** Left alone, as for a centre at the point: the point's diameter falls with each sharpening. */
        KEPT("kept");

        private final String code;

        End(String code) {
            this.code = code;
        }

        /** As a person writes it. */
        public String code() {
            return code;
        }
    }

    public LifeWish {
        if (cap != null && cap < 0) {
            throw new OutOfRange("cap", cap.toString(), "0 or more", "give the most sharpenings that the shop allows");
        }
        if (reach != null && reach.mm() <= 0) {
            throw new OutOfRange("reach", reach.words(), "more than 0", "measure the ground point from the tap's end");
        }
    }

    /** No material told, the end ground back with the chamfer. */
    public LifeWish(Wear wear, @Nullable Length reach, @Nullable Integer cap) {
        this(wear, reach, cap, null, End.GROUND);
    }
}
