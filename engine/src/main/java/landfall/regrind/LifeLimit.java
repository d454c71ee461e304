// SPDX-License-Identifier: Apache-2.0
package landfall.regrind;

/** What ends a tap's sharpenings. */
public enum LifeLimit {
    /** Too little thread left behind the chamfer. */
    THREAD_LENGTH("threadLength"),
    /** The first full thread has become too small: back taper, or thread relief when the face is ground. */
    PITCH_DIAMETER("pitchDiameter"),
    /** The land has become too narrow. */
    LAND_ANGLE("landAngle"),
    /** The end is kept, and its point has come down to the core. */
    CORE("core"),
    /** A spiral point no longer reaches two threads past the chamfer. */
    REACH("reach"),
    /** As many as the shop has agreed on. */
    CAP("cap");

    private final String code;

    LifeLimit(String code) {
        this.code = code;
    }

    /** As written in JSON. */
    public String code() {
        return code;
    }
}
