// SPDX-License-Identifier: Apache-2.0
package landfall.thread;

import landfall.quantity.Limits;

/** Limits of size of one of the mating threads, in one class. */
public record SideLimits(Side side, String className, Limits major, Limits pitch, Limits minor) {}
