// SPDX-License-Identifier: Apache-2.0
/**
 * The pages {@code Tap} (which tap suits a hole, and will it reach) and {@code Which tap is this?}.
 *
 * <p>They lay out the answers of the questions {@code tap} and {@code identify} beside the blank, the marking and the
 * candidates as drawn; each leads to the other.
 */
@NullMarked
package landfall.app.tap;

import org.jspecify.annotations.NullMarked;
