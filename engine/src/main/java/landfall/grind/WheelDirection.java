// SPDX-License-Identifier: Apache-2.0
package landfall.grind;

/**
 * Which way the rim runs over the cutting edge; a choice of whoever grinds. With a cam the tap is driven, so nothing
 * rests on a stop and both ways can be used. Common practice, no source.
 */
public enum WheelDirection {
    INTO_EDGE("into-edge", "into the edge: the cleaner edge, the burr stays at the heel; hold the tap well"),
    OFF_EDGE("off-edge", "off the edge: the burr hangs on the edge and is honed off the face, never off the chamfer");

    private final String code;
    private final String words;

    WheelDirection(String code, String words) {
        this.code = code;
        this.words = words;
    }

    public String code() {
        return code;
    }

    public String words() {
        return words;
    }
}
