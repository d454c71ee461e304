// SPDX-License-Identifier: Apache-2.0
package landfall.salvage;

/** What the part is worth with the work that is in it, against the bench time to save it. */
public enum Worth {
    /** Less than an hour's work. */
    LOW("low"),
    MIDDLE("middle"),
    /** Not to be lost: days of work, or none other to be had. */
    HIGH("high");

    private final String word;

    Worth(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
