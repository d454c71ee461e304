// SPDX-License-Identifier: Apache-2.0
package landfall.thread.callout;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What stands around the thread in a drawing's note and is no part of it: how many, TAP, THRU, a depth, a screw's
 * length. Blanked out in place, so that a refusal still names the character as it was typed.
 *
 * @param text of the same length, with blanks where something was set aside
 * @param aside as typed, in order
 * @param insert the note asks for a wire insert after the thread instead of before it
 */
record DrawingNote(String text, List<String> aside, boolean insert) {
    private static final String NUMBER = "(?<![\\d.,/])(?>\\d+\\s?/\\s?\\d+|\\d*[.,]?\\d+)(?![\\d.,/])"
            + "(?:\\s*+(?:MM(?![A-Z])|IN(?![A-Z])\\.?|INCH|\"))?+";
    private static final String DEPTH =
            "(?<![A-Z])(?:DEEP|DP|DEPTH|LG|LONG|MIN|FULL|PLACES|PLCS?|PL|HOLES?|OFF)\\.?(?![A-Z])";
    private static final String WORD =
            "(?:[\u21a7\u2334\u2335\u00d8\u2300]|(?<![A-Z])(?:DEEP|DP|DEPTH|THRU|THROUGH|ALL|TAP(?:PED)?|THDS?|THREADS?"
                    + "|TYP|PLACES|PLCS?|PL|HOLES?|BOTTOM(?:ING)?|PLUG|MIN|FULL|COARSE|FAR|NEAR"
                    + "|SIDES?|FROM|LG|LONG|EQ|SP"
                    + "|EQUALLY|SPACED|ON|BC|BOTH|ENDS?)\\.?(?![A-Z]))";
    private static final String BETWEEN = "[\\s,;()/x\u00d7-]*+";
    /** To the end of the note: only such words, and numbers that go with them. */
    private static final String REST = "(?:" + BETWEEN + "(?:" + WORD + "|" + NUMBER + "))*+" + BETWEEN + "$";

    private static final String AFTER_MANY =
            "(?:[\u00d8\u2300]|TAP|DRILL|THREAD|THD|M\\s?J?\\s?\\d|#|NO\\b|G\\s?\\d|R[CP]?\\s?\\d"
                    + "|TR\\s?\\d|STI\\b|EG\\b|NPT|BS[WFP]|UN[CFRJSE]|[\\d.]+(?:[ -]\\d+/\\d+|/\\d+)?\"?\\s*"
                    + "(?:-|NPT|BS[WFP]|BA\\b|WHIT|ACME|STUB|UN|STI))";

    private static final Pattern HOW_MANY = pattern("^\\s*(\\(?\\d{1,3}\\s*[x\u00d7]\\)?|\\(\\d{1,3}\\)"
            + "|\\d{1,3}\\s*(?:PLACES|PLCS?|HOLES?|OFF)\\b)[\\s:-]*(?=" + AFTER_MANY + ")");
    private static final Pattern BEFORE = pattern("^\\s*((?:DRILL\\s*(?:AND|&)\\s*)?TAP(?:PED)?(?:\\s+HOLES?)?"
            + "|THREAD(?:ED)?|THD|ISO(?:\\s+METRIC)?|METRIC|DIN\\s+13|HOLES?"
            + "|[\u00d8\u2300]\\s*[\\d.,/]+\\s*(?:MM)?\\s*(?:THRU(?:\\s+ALL)?|\u21a7"
            + "\\s*[\\d.,]+)?)[\\s:,;/-]+(?=\\S)");
    /** A number before DEEP goes with it, but for the pitch: {@code M8x1 DEEP 20}, {@code 1/4-20 THRU}. */
    private static final Pattern AFTER = pattern("[\\s,;-]*+(?:\\(\\d{1,3}\\)\\s*+" + DEPTH
            + "|[\\s(]*+(?<![x\u00d7]\\s{0,3})(?<!\\d\"?\\s{0,2}-\\s{0,2})" + NUMBER
            + "\\s*+" + DEPTH + "|" + WORD + ")" + REST);

    private static final Pattern AFTER_LENGTH = pattern(BETWEEN + NUMBER + "\\s*+" + DEPTH + REST);
    private static final Pattern SCREW_LENGTH =
            pattern("(?<=^\\s{0,60}M\\s?J?[\\d.,]{1,8}\\s?[x\u00d7]\\s?[\\d.,]{1,8})\\s*[x\u00d7]\\s*\\d+(?:[.,]\\d+)?"
                    + "\\s*(?:MM)?\\s*$");
    private static final Pattern INSERT = pattern("(?<=\\S)[\\s(-]+(STI|EG|HELICAL\\s+INSERT"
            + "|WIRE\\s+(?:THREAD\\s+)?INSERT|THREAD\\s+INSERT)\\)?(?![A-Z])");
    private static final Pattern DOTTED = pattern("(?<![A-Z\\d])(?:U\\.?)?N\\.(?:E\\.?F|[CFS])\\.?");
    private static final Pattern LEFT = pattern("(?<![A-Z\\d])L\\.?\\s?H\\.?(?=$|[\\s,;)-])");

    DrawingNote {
        aside = List.copyOf(aside);
    }

    private static Pattern pattern(String regex) {
        return Pattern.compile(regex, Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    }

    /** What the note may be without that, likeliest first; empty when nothing of that kind stands in it. */
    static List<DrawingNote> of(String typed) {
        List<DrawingNote> notes = new ArrayList<>();
        for (Pattern after : List.of(AFTER, AFTER_LENGTH)) {
            DrawingNote note = without(typed, after);
            boolean changed = !note.text.equals(typed);
            if (changed && notes.stream().noneMatch(each -> each.text.equals(note.text))) {
                notes.add(note);
            }
        }
        return notes;
    }

    private static DrawingNote without(String typed, Pattern after) {
        Note note = new Note(typed);
        note.aside(HOW_MANY);
        while (note.aside(BEFORE)) {
            // one word after another
        }
        boolean insert = note.blank(INSERT);
        note.aside(after);
        note.aside(SCREW_LENGTH);
        note.withoutDots(LEFT);
        note.withoutDots(DOTTED);
        return new DrawingNote(note.text.toString(), note.aside, insert);
    }

    /** The text while it is being blanked out. */
    private static final class Note {
        private final StringBuilder text;
        private final List<String> aside = new ArrayList<>();

        Note(String typed) {
            this.text = new StringBuilder(typed);
        }

        boolean aside(Pattern pattern) {
            String found = taken(pattern);
            if (!found.isEmpty()) {
                aside.add(found.replaceAll("^[\\s,;(xX\u00d7-]+|[\\s,;:)-]+$", ""));
            }
            return !found.isEmpty();
        }

        boolean blank(Pattern pattern) {
            return !taken(pattern).isEmpty();
        }

        private String taken(Pattern pattern) {
            Matcher found = pattern.matcher(text);
            if (!found.find() || found.end() == found.start()) {
                return "";
            }
            String taken = found.group();
            text.replace(found.start(), found.end(), " ".repeat(taken.length()));
            return taken;
        }

        /** L.H. and L H are read as LH, N.C. as NC, in place. */
        void withoutDots(Pattern pattern) {
            Matcher found = pattern.matcher(text);
            if (found.find()) {
                String letters = found.group().replaceAll("[.\\s]", "");
                int room = found.group().length() - letters.length();
                text.replace(found.start(), found.end(), letters + " ".repeat(room));
            }
        }
    }
}
