// SPDX-License-Identifier: Apache-2.0
/** The page What if: many set-ups at once, worked on in the background, with progress, stop and going on. */
@NullMarked
package landfall.app.spread;

import org.jspecify.annotations.NullMarked;
