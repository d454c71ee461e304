// SPDX-License-Identifier: Apache-2.0
package landfall.tap;

/** The centres that a tap can turn on, at its point above all. */
public enum Centres {
    /** Sound centre holes in both ends. */
    HOLES("holes"),
    /** A male centre at the point. */
    MALE("male"),
    /** None: ground off, broken away, or battered. */
    NONE("none");

    private final String code;

    Centres(String code) {
        this.code = code;
    }

    /** As written on a card. */
    public String code() {
        return code;
    }
}
