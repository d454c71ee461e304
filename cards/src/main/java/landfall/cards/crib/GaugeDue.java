// SPDX-License-Identifier: Apache-2.0
package landfall.cards.crib;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/**
 * A gauge and the day until which its calibration holds.
 *
 * @param what the gauge, and its call-out where it has one
 */
public record GaugeDue(String mark, String what, LocalDate due) {
    /** Days before the end of a calibration from which it is near: time to send the gauge away; common practice. */
    public static final int NEAR_DAYS = 30;

    /** Days left; below 0 the calibration is over. */
    public long daysFrom(LocalDate today) {
        return ChronoUnit.DAYS.between(today, due);
    }
}
