// SPDX-License-Identifier: Apache-2.0
package landfall.app.today;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import landfall.app.shell.Place;
import landfall.app.shell.Typed;
import landfall.fault.Answer;
import landfall.tap.mark.Marking;
import landfall.tap.mark.MarkingReader;
import landfall.thread.CallOut;
import landfall.thread.callout.CallOuts;
import landfall.thread.callout.StandardThreads;

/**
 * Where the one box of {@code Today} leads: a call-out to Thread; a diameter that was measured, with a pitch, to the
 * tap that it may be; what is stamped on a tap to its marking. What is neither goes to Thread, which refuses it with
 * the mend.
 */
final class Typing {
    private static final String LENGTH = "((?:\\d+\\s+)?\\d+/\\d+|\\d*\\.?\\d+)\\s*(mm|in|\")?";
    /** Threads in an inch: said, or a whole number over any pitch in millimetres that a bench tap has. */
    private static final Pattern MEASURED = Pattern.compile(
            "\\s*" + LENGTH + "\\s*(?:x|×|,|;|by|pitch|\\s)\\s*(\\d*\\.?\\d+)\\s*(tpi|threads|mm|in)?\\s*",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern LABEL = Pattern.compile(
            "https?://[^/?#\\s]+(/(?:crib|job)/[A-Za-z0-9][A-Za-z0-9._-]*)(?:[?#]\\S*)?", Pattern.CASE_INSENSITIVE);

    private static final double GREATEST_PITCH = 8;

    private Typing() {}

    /** A label's square code is the address of a page: scanned into the box, it opens that page on this server. */
    static Optional<String> label(String text) {
        Matcher page = LABEL.matcher(text.strip());
        return page.matches() ? Optional.of(page.group(1)) : Optional.empty();
    }

    static String address(String text) {
        Matcher measured = MEASURED.matcher(text);
        if (measured.matches() && !isStandard(text)) {
            return Typed.address("/identify", identify(measured));
        }
        if (CallOuts.read(text) instanceof Answer.Refused<?> && isMarking(text)) {
            return Typed.address("/marking", Map.of("marking", text.strip()));
        }
        return Typed.address(Place.THREAD.path(), text.isBlank() ? Map.of() : Map.of("thread", text.strip()));
    }

    /** {@code 8x1.25} is a call-out though no letter says so; {@code .2545 20} is no size of any series. */
    private static boolean isStandard(String text) {
        return CallOuts.read(text) instanceof Answer.Of<CallOut> read
                && StandardThreads.all().stream()
                        .anyMatch(each -> each.thread().equals(read.value().thread()));
    }

    /** A thread with something stamped beside it. */
    private static boolean isMarking(String text) {
        return MarkingReader.read(text) instanceof Answer.Of<Marking> read
                && read.value().fields().size() > 1;
    }

    private static Map<String, String> identify(Matcher measured) {
        String unit = measured.group(2) == null ? "" : " " + measured.group(2);
        String second = measured.group(3);
        String said = measured.group(4) == null ? "" : measured.group(4).toLowerCase(Locale.ROOT);
        boolean counts = said.startsWith("t")
                || said.isEmpty() && second.indexOf('.') < 0 && Double.parseDouble(second) > GREATEST_PITCH;
        Map<String, String> given = new LinkedHashMap<>();
        given.put("major", measured.group(1) + unit);
        given.put(counts ? "tpi" : "pitch", counts || said.isEmpty() ? second : second + " " + said);
        return given;
    }
}
