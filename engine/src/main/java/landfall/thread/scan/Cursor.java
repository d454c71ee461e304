// SPDX-License-Identifier: Apache-2.0
package landfall.thread.scan;

import java.util.ArrayList;
import java.util.List;
import landfall.fault.Caution;

/** A place in a call-out that moves to the right. Characters are seen in their plain upper-case form. */
public final class Cursor {
    /** What {@link #peek} sees past the last character. */
    public static final char END = 0;

    private final String text;
    private final String typed;
    private final List<Caution> assumed = new ArrayList<>();
    private int at;

    public Cursor(String text) {
        this(text, text);
    }

    /** Reads one text and quotes another of the same length: what was typed before something in it was blanked out. */
    public Cursor(String text, String typed) {
        if (text.length() != typed.length()) {
            throw new IllegalArgumentException("texts of different length: " + text + ", " + typed);
        }
        this.text = text;
        this.typed = typed;
    }

    /** A reader notes what it took for granted. */
    public void assume(Caution caution) {
        assumed.add(caution);
    }

    public List<Caution> assumed() {
        return List.copyOf(assumed);
    }

    public int at() {
        return at;
    }

    /** Moves back, or on, to a place that {@link #at} gave. */
    public void to(int place) {
        at = place;
    }

    public String text() {
        return text;
    }

    public boolean atEnd() {
        return at >= text.length();
    }

    /** The character here in its plain upper-case form. */
    public char peek() {
        return at < text.length() ? plain(text.charAt(at)) : END;
    }

    /** The character some places on, in its plain upper-case form. */
    public char peek(int on) {
        return at + on < text.length() ? plain(text.charAt(at + on)) : END;
    }

    /** The character here as typed: small letters of a metric class mean the external thread. */
    public char typed() {
        return at < text.length() ? text.charAt(at) : END;
    }

    public void skip() {
        at++;
    }

    public void blanks() {
        while (peek() == ' ') {
            at++;
        }
    }

    /** Passes one character if it stands here. */
    public boolean take(char wanted) {
        if (peek() != wanted) {
            return false;
        }
        at++;
        return true;
    }

    /** Passes a word in capitals if it stands here and no letter follows it. */
    public boolean takeWord(String word) {
        if (!startsWith(word) || isLetter(peek(word.length()))) {
            return false;
        }
        at += word.length();
        return true;
    }

    /** Whether these characters, in plain upper case, stand here. */
    public boolean startsWith(String wanted) {
        for (int i = 0; i < wanted.length(); i++) {
            if (peek(i) != wanted.charAt(i)) {
                return false;
            }
        }
        return true;
    }

    /** Passes blanks and dashes, the separators of every family. */
    public void separators() {
        while (peek() == ' ' || peek() == '-') {
            at++;
        }
    }

    public boolean atDigit() {
        return isDigit(peek());
    }

    public static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    public static boolean isLetter(char c) {
        return c >= 'A' && c <= 'Z';
    }

    /** A reader's refusal at this place. */
    public Misread expected(String what) {
        return refuse(at, "has " + seen(at) + " at character " + (at + 1) + ", where " + what + " was expected", "");
    }

    /** A reader's refusal of something that began at a place. */
    public Misread refuse(int place, String why, String mend) {
        return new Misread(typed, place, why, mend);
    }

    private String seen(int place) {
        if (place >= text.length()) {
            return "nothing";
        }
        int end = place + 1;
        while (end < text.length()
                && end - place < 12
                && Character.isLetterOrDigit(text.charAt(end))
                && Character.isLetterOrDigit(text.charAt(place))) {
            end++;
        }
        return "\"" + Misread.quoted(text.substring(place, end)) + "\"";
    }

    private static char plain(char c) {
        if (c < 128) {
            return c >= 'a' && c <= 'z' ? (char) (c - 32) : c == '*' ? 'X' : c < ' ' ? ' ' : c;
        }
        return switch (c) {
            case '\u00d7', '\u2715', '\u2a2f', '\u2217' -> 'X';
            case '\u2010', '\u2011', '\u2012', '\u2013', '\u2014', '\u2212' -> '-';
            case '\u201c', '\u201d', '\u2033' -> '"';
            case '\u00a0', '\u2002', '\u2003', '\u2009', '\u202f' -> ' ';
            case '\u2044', '\u2215' -> '/';
            default -> c;
        };
    }
}
