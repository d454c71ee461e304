// SPDX-License-Identifier: Apache-2.0
package landfall.route;

import java.time.LocalDate;
import java.util.List;
import landfall.cut.Driven.Drive;
import landfall.drill.Drill;
import landfall.fault.OutOfRange;
import landfall.quantity.Money;
import org.jspecify.annotations.Nullable;

/**
 * A job that is to be planned.
 *
 * @param drive null when not told: a machine whose spindle is held to the feed is taken
 */
public record RouteWish(
        List<HoleLine> holes, Shop shop, @Nullable Drive drive, Prices prices, LocalDate today) {
    /**
     * What the shop has.
     *
     * @param drills null when not told: the drawers of the call-out's system are taken
     */
    public record Shop(@Nullable List<Drill> drills, TapShelf taps, List<GaugeOnHand> gauges) {
        public Shop {
            gauges = List.copyOf(gauges);
        }
    }

    /**
     * What things cost; null when not told.
     *
     * @param hour at the machine and the bench
     * @param tap a new one
     * @param spoilt what a broken tap spoils besides itself
     * @param sharpenings that a new tap allows; five when not told, common practice
     */
    public record Prices(
            @Nullable Money hour,
            @Nullable Money tap,
            @Nullable Money spoilt,
            @Nullable Integer sharpenings) {
        public static final Prices UNTOLD = new Prices(null, null, null, null);
    }

    public RouteWish {
        holes = List.copyOf(holes);
        if (holes.isEmpty()) {
            throw new OutOfRange("holes", "none", "one line or more", "give the call-outs of the drawing");
        }
    }

    boolean byHand() {
        return drive == Drive.HAND;
    }
}
