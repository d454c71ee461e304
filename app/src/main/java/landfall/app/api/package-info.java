// SPDX-License-Identifier: Apache-2.0
/** The HTTP JSON interface as other programs are told of it. */
@NullMarked
package landfall.app.api;

import org.jspecify.annotations.NullMarked;
