// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.paper;

/** The two papers that a shop's printer holds. */
public enum PaperSize {
    A4("210mm 297mm", "A4"),
    /** 8 1/2 by 11 in. */
    LETTER("215.9mm 279.4mm", "Letter");

    private final String css;
    private final String words;

    PaperSize(String css, String words) {
        this.css = css;
        this.words = words;
    }

    String css() {
        return css;
    }

    public String words() {
        return words;
    }
}
