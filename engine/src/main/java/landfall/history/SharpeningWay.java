// SPDX-License-Identifier: Apache-2.0
package landfall.history;

/** How a tap was ground again. */
public enum SharpeningWay {
    CHAMFER,
    FACE,
    CUT_OFF,
    SPIRAL_POINT
}
