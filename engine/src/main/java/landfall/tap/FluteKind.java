// SPDX-License-Identifier: Apache-2.0
package landfall.tap;

/** How the flutes run, or why there are none. */
public enum FluteKind {
    STRAIGHT("straight"),
    SPIRAL_RIGHT("spiral-right"),
    SPIRAL_LEFT("spiral-left"),
    SPIRAL_POINT("spiral-point"),
    /** A forming tap presses its thread and has no cutting edge. */
    FORMING("forming");

    private final String code;

    FluteKind(String code) {
        this.code = code;
    }

    /** As written on a card. */
    public String code() {
        return code;
    }

    public boolean isSpiral() {
        return this == SPIRAL_RIGHT || this == SPIRAL_LEFT;
    }
}
