// SPDX-License-Identifier: Apache-2.0
package landfall.working;

/** How far a figure is to be trusted. */
public enum Trust {
    STANDARD("standard"),
    HANDBOOK("handbook"),
    PRACTICE("common practice"),
    ESTIMATE("estimate"),
    MEASURED("measured"),
    DERIVED("derived");

    private final String words;

    Trust(String words) {
        this.words = words;
    }

    /** As printed beside a figure. */
    public String words() {
        return words;
    }

    /** As written in JSON: one word. */
    public String code() {
        return this == PRACTICE ? "practice" : words;
    }
}
