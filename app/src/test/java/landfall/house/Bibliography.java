// SPDX-License-Identifier: Apache-2.0
package landfall.house;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** {@code sources.bib}: every publication, one key each. */
final class Bibliography {
    /** One entry; fields are lower case. */
    record Entry(String key, Map<String, String> fields) {
        /** Whether it is recorded who published it. */
        boolean namesItsPublisher() {
            return fields.containsKey("publisher")
                    || fields.containsKey("institution")
                    || fields.containsKey("organization")
                    || fields.containsKey("journal");
        }
    }

    private static final Pattern HEAD = Pattern.compile("(?m)^@\\w+\\{([^,\\s]+),");
    private static final Pattern FIELD = Pattern.compile("(\\w+)\\s*=\\s*\\{");

    private final List<Entry> entries = new ArrayList<>();

    private Bibliography() {}

    static Bibliography ofTheProject() {
        Bibliography bibliography = new Bibliography();
        String text = House.text(House.root().resolve("sources.bib"));
        Matcher head = HEAD.matcher(text);
        while (head.find()) {
            int end = closing(text, text.indexOf('{', head.start()));
            bibliography.entries.add(new Entry(head.group(1), fields(text.substring(head.end(), end))));
        }
        return bibliography;
    }

    private static Map<String, String> fields(String body) {
        Map<String, String> fields = new LinkedHashMap<>();
        Matcher field = FIELD.matcher(body);
        int at = 0;
        while (field.find(at)) {
            at = closing(body, field.end() - 1);
            fields.put(
                    field.group(1).toLowerCase(Locale.ROOT),
                    body.substring(field.end(), at).strip());
        }
        return fields;
    }

    /** The place of the brace that closes the one at a place. */
    private static int closing(String text, int opening) {
        int depth = 0;
        for (int at = opening; at < text.length(); at++) {
            if (text.charAt(at) == '{') {
                depth++;
            } else if (text.charAt(at) == '}' && --depth == 0) {
                return at;
            }
        }
        throw new AssertionError(
                "sources.bib: nothing closes " + text.substring(opening).lines().findFirst());
    }

    List<Entry> entries() {
        return entries;
    }

    List<String> keys() {
        return entries.stream().map(Entry::key).toList();
    }

    /** The entry of a key; one that names nothing when there is none, which {@link SourcesTest} reports. */
    Entry entry(String key) {
        return entries.stream()
                .filter(entry -> entry.key().equals(key))
                .findFirst()
                .orElse(new Entry(key, Map.of()));
    }
}
