// SPDX-License-Identifier: Apache-2.0
package landfall.cards.card;

import landfall.quantity.Length;
import landfall.quantity.Speed;
import landfall.quantity.Turning;
import org.jspecify.annotations.Nullable;

/** The greatest speed marked on a wheel, one of the two. */
record WheelMark(@Nullable Turning turning, @Nullable Speed rim) {
    /** In rev/min: a rim speed over the circumference of the wheel as it is now. */
    Turning at(Length diameter) {
        if (turning != null) {
            return turning;
        }
        if (rim == null) {
            throw new IllegalStateException("a wheel mark without a speed");
        }
        return Turning.ofRevPerMin(rim.mPerMin() * 1000 / (Math.PI * diameter.mm()));
    }
}
