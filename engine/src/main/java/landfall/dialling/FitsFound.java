// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The fit, and the others that a careful person would look at.
 *
 * @param main all readings, the fullest model that they carry
 * @param commonZero the same without land heights: narrower, but wrong where the lands differ
 * @param without the same without the suspected readings
 * @param outliers readings that the others do not bear out; they are in the main fit all the same
 * @param phase where the rise begins, if these readings tell it
 */
public record FitsFound(
        DialFit main,
        @Nullable DialFit commonZero,
        @Nullable DialFit without,
        List<Outlier> outliers,
        @Nullable Phase phase) {
    public FitsFound {
        outliers = List.copyOf(outliers);
    }

    /** Whether the rise begins behind the edge for certain. */
    public boolean bareMargin() {
        return phase != null
                && phase.start().differsFromZero()
                && phase.start().value().deg() > 0;
    }

    /** The slope where there is a rise: behind the margin if there is one, else over the whole land. */
    public Fitted risingSlope() {
        return phase != null && bareMargin() ? phase.slope() : main.slope();
    }
}
