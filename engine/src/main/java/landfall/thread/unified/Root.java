// SPDX-License-Identifier: Apache-2.0
package landfall.thread.unified;

/** What the root of the external thread must be like; the letters after UN say it. */
public enum Root {
    /** UN: flat or rounded as it comes. */
    FREE("UN"),
    /** UNR: rounded. */
    ROUNDED("UNR"),
    /** UNJ: rounded to a controlled, larger radius; the internal thread's minor diameter is raised to clear it. */
    CONTROLLED("UNJ");

    private final String letters;

    Root(String letters) {
        this.letters = letters;
    }

    public String letters() {
        return letters;
    }

    boolean isJ() {
        return this == CONTROLLED;
    }
}
