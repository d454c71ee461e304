// SPDX-License-Identifier: Apache-2.0
package landfall.grind;

import landfall.quantity.Length;

/**
 * What the later figures of a set-up stand on.
 *
 * @param division of the dial in use
 */
record Grinding(ChamferPlace place, Relief relief, Fall fall, Fixture fixture, Phase phase, Length division) {}
