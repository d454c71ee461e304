// SPDX-License-Identifier: Apache-2.0
package landfall.tap;

import landfall.fault.OutOfRange;
import landfall.quantity.Angle;

/**
 * The flutes.
 *
 * @param helix angle of the flute to the axis at the basic major diameter; 0 on straight flutes
 */
public record Flutes(int count, FluteKind kind, FluteForm form, Angle helix) {
    public Flutes {
        if (count < 1 || count > 16) {
            throw new OutOfRange("flutes.count", Integer.toString(count), "from 1 to 16", "count the cutting edges");
        }
        if (kind.isSpiral() && !(helix.deg() > 0 && helix.deg() <= 60)) {
            throw new OutOfRange(
                    "flutes.helix",
                    helix.deg() + " deg",
                    "over 0 and at most 60 deg on spiral flutes",
                    "give the angle between flute and axis, or the kind straight");
        }
        if (!kind.isSpiral() && helix.deg() != 0) {
            throw new OutOfRange(
                    "flutes.helix",
                    helix.deg() + " deg",
                    "0 deg on " + kind.code() + " flutes",
                    "leave helix out, or give the kind spiral-right or spiral-left");
        }
    }

    public static Flutes straight(int count) {
        return new Flutes(count, FluteKind.STRAIGHT, FluteForm.UNKNOWN, Angle.ZERO);
    }

    /** Angle from one cutting edge to the next. */
    public Angle division() {
        return Angle.ofDeg(360.0 / count);
    }
}
