// SPDX-License-Identifier: Apache-2.0
package landfall.house;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
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

    private static final Pattern ENTRY = Pattern.compile("(?ms)^@(\\w+)\\{([^,\\s]+),(.*?)^\\}");
    private static final Pattern FIELD = Pattern.compile("(?ms)^\\s*(\\w+)\\s*=\\s*\\{(.*?)\\},?\\s*$");

    private final List<Entry> entries = new ArrayList<>();

    private Bibliography() {}

    static Bibliography ofTheProject() {
        Bibliography bibliography = new Bibliography();
        Matcher entry = ENTRY.matcher(House.text(House.root().resolve("sources.bib")));
        while (entry.find()) {
            Map<String, String> fields = new LinkedHashMap<>();
            Matcher field = FIELD.matcher(entry.group(3));
            while (field.find()) {
                fields.put(
                        field.group(1).toLowerCase(java.util.Locale.ROOT),
                        field.group(2).strip());
            }
            bibliography.entries.add(new Entry(entry.group(2), fields));
        }
        return bibliography;
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
