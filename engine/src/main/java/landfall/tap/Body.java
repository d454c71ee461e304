// SPDX-License-Identifier: Apache-2.0
package landfall.tap;

import landfall.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * The tap's body.
 *
 * @param threadLength of full thread and chamfer together
 * @param neck thinner part between thread and shank; null when there is none or it was not measured
 * @param centres it turns on; null when not told
 * @param backTaper loss of pitch diameter towards the shank, length on diameter per length; null when not measured
 */
public record Body(
        @Nullable Length threadLength,
        @Nullable Length overallLength,
        @Nullable Length shank,
        @Nullable Length neck,
        @Nullable Double backTaper,
        @Nullable Centres centres) {
    public static final Body UNKNOWN = new Body(null, null, null, null, null, null);

    /** A body without a neck, or whose neck is not known. */
    public Body(
            @Nullable Length threadLength,
            @Nullable Length overallLength,
            @Nullable Length shank,
            @Nullable Double backTaper) {
        this(threadLength, overallLength, shank, null, backTaper, null);
    }

    /** A body whose centres are not told. */
    public Body(
            @Nullable Length threadLength,
            @Nullable Length overallLength,
            @Nullable Length shank,
            @Nullable Length neck,
            @Nullable Double backTaper) {
        this(threadLength, overallLength, shank, neck, backTaper, null);
    }
}
