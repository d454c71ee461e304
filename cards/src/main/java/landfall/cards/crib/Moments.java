// SPDX-License-Identifier: Apache-2.0
package landfall.cards.crib;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZonedDateTime;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import landfall.fault.Answer;
import landfall.fault.Finding;

/** When something happened, as people write it. A day without an hour is its noon. */
public final class Moments {
    private static final int NOON = 12;
    private static final Pattern DAY_AND_HOUR = Pattern.compile("(\\S+) (\\S+)");

    private Moments() {}

    /** @param now what {@code today} and {@code yesterday} are counted from, with the place's own clock */
    public static Answer<Instant> read(String field, String typed, ZonedDateTime now) {
        String text = typed.strip().toLowerCase(Locale.ROOT);
        try {
            if (text.equals("now") || text.equals("today")) {
                return Answer.of(now.toInstant());
            }
            if (text.equals("yesterday")) {
                return Answer.of(now.minusDays(1).toInstant());
            }
            Instant at = moment(joined(text.toUpperCase(Locale.ROOT)), now);
            return at.isAfter(now.toInstant())
                    ? Answer.refused(new Finding(
                            field, typed, "is still to come", "write when it happened, or leave it out for now"))
                    : Answer.of(at);
        } catch (DateTimeException e) {
            return Answer.refused(new Finding(
                    field,
                    typed,
                    "is not a moment",
                    "write a day such as 2026-11-20, a day and an hour such as 2026-11-20T08:30, today or yesterday"));
        }
    }

    private static String joined(String text) {
        Matcher matcher = DAY_AND_HOUR.matcher(text);
        return matcher.matches() ? matcher.group(1) + "T" + matcher.group(2) : text;
    }

    private static Instant moment(String text, ZonedDateTime now) {
        if (text.endsWith("Z")) {
            return Instant.parse(text);
        }
        if (text.contains("T")) {
            return LocalDateTime.parse(text).atZone(now.getZone()).toInstant();
        }
        LocalDate day = LocalDate.parse(text);
        Instant noon = day.atTime(NOON, 0).atZone(now.getZone()).toInstant();
        return day.equals(now.toLocalDate()) && noon.isAfter(now.toInstant()) ? now.toInstant() : noon;
    }
}
