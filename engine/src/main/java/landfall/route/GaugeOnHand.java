// SPDX-License-Identifier: Apache-2.0
package landfall.route;

import java.time.LocalDate;
import landfall.history.Status;
import landfall.thread.CallOut;
import org.jspecify.annotations.Nullable;

/**
 * A thread plug of the shop.
 *
 * @param name its mark, or what the shop's card calls it
 * @param callOut that it gauges, with its class where it was told
 */
public record GaugeOnHand(String name, CallOut callOut, Ends ends, Status status, Calibration calibration) {
    /** Which ends of a plug it has. */
    public enum Ends {
        GO,
        NOT_GO,
        BOTH;

        boolean has(Ends wanted) {
            return this == BOTH || this == wanted;
        }
    }

    /**
     * What is known of its calibration.
     *
     * @param due the day until which it holds; null when nobody told
     * @param passed the last verdict; null when there is none
     */
    public record Calibration(
            @Nullable LocalDate due, @Nullable Boolean passed) {
        public static final Calibration UNKNOWN = new Calibration(null, null);
    }
}
