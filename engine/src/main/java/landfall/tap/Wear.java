// SPDX-License-Identifier: Apache-2.0
package landfall.tap;

import landfall.fault.OutOfRange;
import landfall.quantity.Length;
import landfall.thread.ScrewThread;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;
import org.jspecify.annotations.Nullable;

/**
 * How far a tap is worn, by the width of the wear land on its chamfer edges.
 *
 * @param measured the width, null when only the state is known
 */
public record Wear(State state, @Nullable Length measured) {
    /** In words, with the widths that common practice gives them. */
    public enum State {
        FRESH(0),
        DUE(1),
        SPENT(1.5),
        MEASURED(Double.NaN);

        private final double shareOfDue;

        State(double shareOfDue) {
            this.shareOfDue = shareOfDue;
        }
    }

    public static final Wear FRESH = new Wear(State.FRESH, null);
    public static final Wear DUE = new Wear(State.DUE, null);
    public static final Wear SPENT = new Wear(State.SPENT, null);

    private static final Source PRACTICE = Source.of("common-practice", "wear land at which a tap is due");
    static final Rule GIVEN = Rule.given("w_wear", "mm", "width of the wear land");
    static final Rule DUE_BY_SIZE =
            Rule.table("w_due", "mm", PRACTICE, Trust.PRACTICE, "wear land at which a tap of this size is due");
    static final Rule SHARE = Rule.table("k_wear", "1", PRACTICE, Trust.PRACTICE, "share of it at this state of wear");
    static final Rule FROM_STATE =
            new Rule("w_wear", "k_wear*w_due", "mm", PRACTICE, Trust.PRACTICE, "width of the wear land");

    public Wear {
        if ((state == State.MEASURED) != (measured != null)) {
            throw new IllegalArgumentException("a measured wear land has a width, a state has none");
        }
        if (measured != null && measured.mm() < 0) {
            throw new OutOfRange("wear", measured.mm() + " mm", "0 or more", "measure the bright land at the edge");
        }
    }

    public static Wear of(Length width) {
        return new Wear(State.MEASURED, width);
    }

    /** Width of the wear land: as measured, or 0.15 mm to M6, 0.2 to M12, 0.3 above when due (common practice). */
    public Length land(ScrewThread thread, Pen pen) {
        if (measured != null) {
            return Length.ofMm(pen.write(GIVEN, measured.mm()));
        }
        double w_due = pen.write(DUE_BY_SIZE, dueMm(thread.major().mm()));
        double k = pen.write(SHARE, state.shareOfDue);
        return Length.ofMm(pen.write(FROM_STATE, k * w_due));
    }

    private static double dueMm(double majorMm) {
        if (majorMm <= 6) {
            return 0.15;
        }
        return majorMm <= 12 ? 0.2 : 0.3;
    }
}
