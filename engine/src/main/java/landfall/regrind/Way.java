// SPDX-License-Identifier: Apache-2.0
package landfall.regrind;

/** What can be done with a worn or broken tap. */
public enum Way {
    /** Grind the chamfer back. */
    CHAMFER("chamfer"),
    /** Grind the faces back. */
    FACE("face"),
    /** Cut the end off and grind a new chamfer. */
    CUT_OFF("cut-off"),
    /** Throw it away. */
    SCRAP("scrap");

    private final String code;

    Way(String code) {
        this.code = code;
    }

    /** As written in JSON. */
    public String code() {
        return code;
    }
}
