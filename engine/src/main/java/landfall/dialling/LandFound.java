// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

import org.jspecify.annotations.Nullable;

/**
 * One land as found.
 *
 * @param land 1, 2, .. backwards over the lands
 * @param height above the mean of the lands, sign as read; none where heights were not fitted
 * @param edge how far its edge stands above the mean of the edges against the thread, sign as read: height and run-out
 *     together, less the reference; none where the land was not read
 * @param share of the chip that it cuts; none where a land or a fit is lacking
 */
public record LandFound(
        int land,
        @Nullable Fitted height,
        @Nullable Fitted edge,
        @Nullable LoadShare share) {}
