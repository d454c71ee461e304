// SPDX-License-Identifier: Apache-2.0
package landfall.symptom;

/** How soon a cause is looked at. */
public enum Likelihood {
    SELDOM("seldom"),
    POSSIBLE("possible"),
    LIKELY("likely");

    private final String word;

    Likelihood(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    Likelihood up() {
        return this == SELDOM ? POSSIBLE : LIKELY;
    }

    Likelihood down() {
        return this == LIKELY ? POSSIBLE : SELDOM;
    }
}
