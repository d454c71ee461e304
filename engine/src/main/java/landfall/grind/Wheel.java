// SPDX-License-Identifier: Apache-2.0
package landfall.grind;

import landfall.fault.OutOfRange;
import landfall.quantity.Length;
import landfall.quantity.Turning;
import org.jspecify.annotations.Nullable;

/**
 * The grinding wheel and its spindle.
 *
 * @param marking as printed on the wheel, ISO 525
 * @param markedSpeed greatest speed marked on the wheel
 */
public record Wheel(
        Length diameter,
        @Nullable String marking,
        @Nullable Turning markedSpeed,
        @Nullable Turning spindle) {
    public Wheel {
        if (!(diameter.mm() > 0 && diameter.mm() <= 1000)) {
            throw new OutOfRange(
                    "wheel.diameter",
                    diameter.mm() + " mm",
                    "over 0 and at most 1000 mm",
                    "measure the wheel as it is now");
        }
        if (markedSpeed != null && spindle != null && spindle.revPerMin() > markedSpeed.revPerMin()) {
            throw new OutOfRange(
                    "wheel.spindle",
                    "%.0f rev/min".formatted(spindle.revPerMin()),
                    "at most the %.0f rev/min marked on the wheel".formatted(markedSpeed.revPerMin()),
                    "set a slower spindle speed or mount a wheel marked for this one; a wheel over its mark can burst");
        }
    }

    public Length radius() {
        return diameter.times(0.5);
    }
}
