// SPDX-License-Identifier: Apache-2.0
package landfall.tap.mark;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import landfall.fault.Answer;
import landfall.fault.Caution;
import landfall.fault.Finding;
import landfall.tap.mark.Marking.Field;
import landfall.thread.CallOut;
import landfall.thread.callout.CallOuts;
import landfall.thread.callout.Heard;

/**
 * Reads the text off a tap's shank: what is known is taken out part by part, and what is left must be the thread.
 *
 * <p>On a tap 6H is the class of hole that it is meant for, and 2B the same on inch taps; neither is the class of the
 * tap. So both are taken out before the thread is read.
 */
public final class MarkingReader {
    private static final int LONGEST = 120;
    private static final Pattern LIMIT = pattern("(?:G\\s*)?[HL]\\s?(?:1?[1-9]|[12]0)|(?:G\\s*)?D\\s?(?:1?[1-9]|[12]0)"
            + "|ISO\\s*[123](?:\\s*/\\s*[4-8][GH](?:[4-8]H)?X?)?"
            + "|(?:PLUS|\\+)\\s*0?\\.\\d{3,4}|CLASS\\s*[123]");
    private static final Pattern HOLE_METRIC = pattern("[4-8][GH](?:[4-8]H)?");
    private static final Pattern HOLE_X = pattern("[4-8][GH]X");
    private static final Pattern HOLE_INCH = pattern("[123]BX?");
    private static final Pattern FLUTES = pattern("(\\d)\\s?FL(?:UTES?)?");

    private final String typed;
    private final StringBuilder left;
    private final List<Field> fields = new ArrayList<>();
    private final List<Caution> cautions = new ArrayList<>();
    private Optional<TapMark> mark = Optional.empty();
    private boolean leftHand;
    private boolean insert;

    private MarkingReader(String typed) {
        this.typed = typed;
        this.left = new StringBuilder(typed.toUpperCase(Locale.ROOT));
    }

    private static Pattern pattern(String regex) {
        return Pattern.compile("(?<![A-Z0-9.])(?:" + regex + ")(?![A-Z0-9])");
    }

    /** The marking, or why it cannot be read. */
    public static Answer<Marking> read(String text) {
        if (text.isBlank()
                || text.length() > LONGEST
                || text.toUpperCase(Locale.ROOT).length() != text.length()) {
            return Answer.refused(new Finding(
                    "marking",
                    text.length() > LONGEST ? text.substring(0, 40) + " .." : text,
                    text.isBlank() ? "is empty" : "is no marking of a tap",
                    "write what stands on the shank, as in 1/4-20 UNC GH3 HSS or M10x1.5 D6"));
        }
        return new MarkingReader(text).read();
    }

    private Answer<Marking> read() {
        limit();
        holes();
        counts();
        words();
        return thread();
    }

    /** The first mark that stands for figures is the limit; what follows only repeats what it is meant for. */
    private void limit() {
        Matcher found = LIMIT.matcher(left);
        if (!found.find()) {
            return;
        }
        String text = found.group();
        mark = TapMark.read(text.replaceFirst("X$", ""));
        String means = text.endsWith("X")
                ? "a class with a maker's X position"
                : "limit of pitch diameter: " + mark.map(TapMark::words).orElse(text);
        take(found, "limit", means + ground(text), true);
    }

    private static String ground(String text) {
        return text.startsWith("G") ? ", ground thread" : "";
    }

    private void holes() {
        Matcher x = HOLE_X.matcher(left);
        if (x.find()) {
            String position = x.group();
            take(x, "limit", "a maker's position above the class: no standard fixes it", false);
            cautions.add(new Caution(
                    "xPosition",
                    "An X position is not standard: two makers mean two zones by it. Take the tap's"
                            + " own limits, from the"
                            + " maker or by measuring.",
                    position));
        }
        Matcher metric = HOLE_METRIC.matcher(left);
        if (metric.find()) {
            Optional<TapMark> tapClass = TapMark.read(metric.group());
            boolean first = mark.isEmpty()
                    && fields.stream().noneMatch(field -> field.kind().equals("limit"));
            String means = "meant for %s holes".formatted(metric.group());
            mark = first ? tapClass : mark;
            take(
                    metric,
                    first ? "limit" : "class",
                    means + tapClass.map(c -> ": class " + c.words()).orElse(""),
                    true);
        }
        Matcher inch = HOLE_INCH.matcher(left);
        if (inch.find()) {
            take(
                    inch,
                    "class",
                    "meant for class %s holes; it fixes no limit of the tap".formatted(inch.group()),
                    false);
        }
    }

    private void counts() {
        Matcher flutes = FLUTES.matcher(left);
        if (flutes.find()) {
            take(flutes, "flutes", flutes.group(1) + " flutes", false);
        }
    }

    private void words() {
        for (MarkWords.Known known : MarkWords.ALL) {
            Matcher found = known.pattern().matcher(left);
            // a G that begins the text is the pipe thread
            if (found.find()
                    && !(known.length() == 1 && left.substring(0, found.start()).isBlank())) {
                take(found, known.kind(), known.means(), known.read());
                leftHand |= known.means().startsWith("left hand");
                insert |= known.kind().equals("thread");
                if (known.means().startsWith("the thread is cut") && mark.isEmpty()) {
                    mark = Optional.of(new TapMark.CutThread());
                }
            }
        }
    }

    private void take(Matcher found, String kind, String means, boolean read) {
        fields.add(new Field(found.start(), typed.substring(found.start(), found.end()), kind, means, read));
        left.replace(found.start(), found.end(), " ".repeat(found.end() - found.start()));
    }

    /** The longest run of what is left that is a thread; the rest is the maker's own. */
    private Answer<Marking> thread() {
        List<int[]> words = new ArrayList<>();
        Matcher word = Pattern.compile("[^\\s,;]+").matcher(left);
        while (word.find()) {
            words.add(new int[] {word.start(), word.end()});
        }
        for (int length = words.size(); length > 0; length--) {
            for (int i = 0; i + length <= words.size(); i++) {
                int from = words.get(i)[0];
                int to = words.get(i + length - 1)[1];
                if (hear(typed.substring(from, to)) instanceof Answer.Of<Heard> heard) {
                    words.subList(i, i + length).clear();
                    return Answer.of(marking(heard.value(), from, to, words));
                }
            }
        }
        List<Finding> findings = hear(asTyped().strip()).findings();
        return Answer.refused(findings.isEmpty() ? List.of() : List.of(noThread(findings.get(0))));
    }

    /** What is left, in the letters that were typed. */
    private String asTyped() {
        StringBuilder text = new StringBuilder(typed);
        for (int i = 0; i < left.length(); i++) {
            if (left.charAt(i) == ' ') {
                text.setCharAt(i, ' ');
            }
        }
        return text.toString();
    }

    private Finding noThread(Finding reason) {
        return new Finding("marking", typed, "names no thread: " + reason.why(), reason.mend());
    }

    private Answer<Heard> hear(String thread) {
        return CallOuts.hear((insert ? "STI " : "") + thread + (leftHand ? "-LH" : ""));
    }

    private Marking marking(Heard heard, int from, int to, List<int[]> unknown) {
        CallOut callOut = heard.callOut().withoutClass();
        cautions.addAll(heard.assumed());
        fields.add(new Field(from, typed.substring(from, to), "thread", "the thread, " + callOut.normal(), true));
        for (int[] place : unknown) {
            fields.add(new Field(
                    place[0],
                    typed.substring(place[0], place[1]),
                    "unknown",
                    "not known here: a maker's name, a catalogue or lot number",
                    false));
        }
        fields.sort(Comparator.comparingInt(Field::at));
        if (mark.isEmpty()) {
            cautions.add(new Caution(
                    "noLimitMarked", "No mark here fixes the tap's pitch diameter: measure it, or ask its maker."));
        }
        return new Marking(callOut, mark, fields, cautions);
    }
}
