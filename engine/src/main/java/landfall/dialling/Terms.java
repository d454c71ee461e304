// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

/** Which terms of the model are fitted besides the constant. */
enum Terms {
    /** Slope, run-out and a height a land. */
    HEIGHTS(true, true, true),
    /** Slope and run-out, all lands of one height. */
    COMMON_ZERO(true, true, false),
    /** The slope alone: run-out cannot be told and leans into it. */
    RISE_ONLY(true, false, false),
    /** The run-out alone, of a round shank with the cam at rest. */
    RUN_OUT_ONLY(false, true, false);

    final boolean slope;
    final boolean runOut;
    final boolean heights;

    Terms(boolean slope, boolean runOut, boolean heights) {
        this.slope = slope;
        this.runOut = runOut;
        this.heights = heights;
    }
}
