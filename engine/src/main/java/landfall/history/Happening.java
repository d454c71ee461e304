// SPDX-License-Identifier: Apache-2.0
package landfall.history;

import java.time.LocalDate;
import landfall.quantity.Length;
import landfall.quantity.Torque;
import org.jspecify.annotations.Nullable;

/** One thing that happened, with what was told about it; null is what nobody told. */
public sealed interface Happening {
    EventKind kind();

    /** @param supplier the supplier's own reference */
    record Bought(@Nullable Price price, @Nullable String supplier) implements Happening {
        @Override
        public EventKind kind() {
            return EventKind.BOUGHT;
        }
    }

    /** Given out to a person, a machine or a job. */
    record Issued(String to) implements Happening {
        @Override
        public EventKind kind() {
            return EventKind.ISSUED;
        }
    }

    /** Back from a person, a machine, a job or another shop. */
    record Returned(@Nullable String place) implements Happening {
        @Override
        public EventKind kind() {
            return EventKind.RETURNED;
        }
    }

    /** Holes cut with it. */
    record Tapped(Holes holes, Work work, Felt felt) implements Happening {
        @Override
        public EventKind kind() {
            return EventKind.TAPPED;
        }
    }

    /** @param about whether the count is a guess, such as all of the holes since Monday */
    record Holes(int count, boolean about) {}

    record Work(@Nullable String material, @Nullable Length depth) {}

    /**
     * What the cut told.
     *
     * @param torque as measured
     * @param feel by hand: as fresh, heavier, or heavy
     * @param gaugeTurns turns that the GO plug went in at the first hole
     */
    record Felt(
            @Nullable Torque torque,
            @Nullable Feel feel,
            @Nullable Double gaugeTurns) {}

    enum Feel {
        FRESH,
        HEAVIER,
        HEAVY
    }

    record Measured(Sizes sizes) implements Happening {
        @Override
        public EventKind kind() {
            return EventKind.MEASURED;
        }
    }

    record Sizes(
            @Nullable Length wearLand,
            @Nullable Length pitchDiameter,
            @Nullable Length threadLength,
            @Nullable Length landWidth) {}

    /**
     * Ground again.
     *
     * @param stock taken along the axis on the chamfer, or square to the face
     * @param dialFound what the dial read on the relief before the grind
     */
    record Sharpened(
            SharpeningWay way,
            @Nullable Length stock,
            @Nullable String wheel,
            @Nullable Length dialFound) implements Happening {
        @Override
        public EventKind kind() {
            return EventKind.SHARPENED;
        }
    }

    record Inspected(boolean passed, @Nullable String note) implements Happening {
        @Override
        public EventKind kind() {
            return EventKind.INSPECTED;
        }
    }

    record Moved(String place) implements Happening {
        @Override
        public EventKind kind() {
            return EventKind.MOVED;
        }
    }

    record Lent(String to) implements Happening {
        @Override
        public EventKind kind() {
            return EventKind.LENT;
        }
    }

    /** @param on false: the coating is gone */
    record Coated(boolean on, @Nullable String with) implements Happening {
        @Override
        public EventKind kind() {
            return EventKind.COATED;
        }
    }

    /** @param due the day until which the calibration holds */
    record Calibrated(boolean passed, LocalDate due) implements Happening {
        @Override
        public EventKind kind() {
            return EventKind.CALIBRATED;
        }
    }

    /** @param when in the cut: entry, depth or reversal; what was known of it */
    record Broken(@Nullable String when, boolean partLost) implements Happening {
        @Override
        public EventKind kind() {
            return EventKind.BROKEN;
        }
    }

    record Scrapped(@Nullable String because) implements Happening {
        @Override
        public EventKind kind() {
            return EventKind.SCRAPPED;
        }
    }

    /** Takes back the event of that number. */
    record Corrected(long takesBack, String because) implements Happening {
        @Override
        public EventKind kind() {
            return EventKind.CORRECTED;
        }
    }
}
