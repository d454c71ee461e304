// SPDX-License-Identifier: Apache-2.0
package landfall.thread;

import java.util.Optional;
import landfall.quantity.Length;

/**
 * What the Unified standard states of an external thread beside its limits.
 *
 * @param allowance how far the greatest external thread stays under basic
 * @param roundedRootMinorMax greatest minor diameter with a rounded (UNR) root, a reference figure
 * @param unfinishedMajorMin least major diameter on unfinished hot-rolled stock, where the standard allows it
 */
public record ExternalExtras(Length allowance, Length roundedRootMinorMax, Optional<Length> unfinishedMajorMin) {}
