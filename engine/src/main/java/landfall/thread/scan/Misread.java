// SPDX-License-Identifier: Apache-2.0
package landfall.thread.scan;

import landfall.fault.Finding;

/** A call-out that cannot be read on: where, what was expected there, and how to mend it where the reader knows. */
public final class Misread extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private static final int LONGEST_QUOTE = 60;

    private final String text;
    private final int at;
    private final String mend;

    Misread(String text, int at, String why, String mend) {
        super(why, null, false, false);
        this.text = text;
        this.at = at;
        this.mend = mend;
    }

    /** The same, with the mend that only the family's reader can know. */
    public Misread mendedBy(String better) {
        return new Misread(text, at, why(), better);
    }

    /** The same, with this mend where the reader knew none; an empty one says nothing. */
    public Misread orMendedBy(String fallback) {
        return mend.isEmpty() && !fallback.isEmpty() ? mendedBy(fallback) : this;
    }

    /** Zero-based place in the text. */
    public int at() {
        return at;
    }

    public String why() {
        return String.valueOf(getMessage());
    }

    /** Empty when the reader knows none. */
    public String mend() {
        return mend;
    }

    /** As a refusal of the field {@code thread}. */
    public Finding finding() {
        return new Finding(
                "thread", quoted(text), why(), mend.isEmpty() ? "write it as M8x1.25-6H or 1/4-20 UNC-2B" : mend);
    }

    /** A text short enough to print back, without its control characters. */
    public static String quoted(String text) {
        String shown = text.length() > LONGEST_QUOTE ? text.substring(0, LONGEST_QUOTE) + "..." : text;
        StringBuilder plain = new StringBuilder(shown.length());
        shown.chars()
                .forEach(c ->
                        plain.append(Character.isISOControl(c) || Character.isSurrogate((char) c) ? '?' : (char) c));
        return plain.toString();
    }
}
