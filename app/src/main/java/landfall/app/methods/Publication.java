// SPDX-License-Identifier: Apache-2.0
package landfall.app.methods;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One entry of the bibliography. Read from the part of BibTeX that the file uses: {@code @kind{key, name = {text},
 * ..}}, one field a line.
 *
 * @param key as figures name it
 */
public record Publication(String key, Map<String, String> fields) {
    private static final Pattern ENTRY = Pattern.compile("@\\w+\\{([^,\\s]+),(.*?)\\n\\}", Pattern.DOTALL);
    private static final Pattern FIELD =
            Pattern.compile("(\\w+)\\s*=\\s*\\{(.*?)\\}\\s*,?\\s*(?=\\n|$)", Pattern.DOTALL);

    static List<Publication> read(String bibliography) {
        List<Publication> all = new ArrayList<>();
        Matcher entry = ENTRY.matcher(bibliography);
        while (entry.find()) {
            Map<String, String> fields = new LinkedHashMap<>();
            Matcher field = FIELD.matcher(entry.group(2));
            while (field.find()) {
                fields.put(field.group(1).toLowerCase(Locale.ROOT), plain(field.group(2)));
            }
            all.add(new Publication(entry.group(1), fields));
        }
        all.sort(Comparator.comparing(Publication::key));
        return all;
    }

    private static String plain(String text) {
        return text.replaceAll("\\\\([&_%#$])", "$1")
                .replace("--", "–")
                .replaceAll("[{}]", "")
                .replaceAll("\\s+", " ")
                .strip();
    }

    private String field(String name) {
        return fields.getOrDefault(name, "");
    }

    public String title() {
        return field("title");
    }

    /** Who published it and when, as far as it is recorded. */
    public String from() {
        List<String> parts = new ArrayList<>();
        for (String name : List.of(
                "author",
                "editor",
                "organization",
                "institution",
                "publisher",
                "journal",
                "number",
                "edition",
                "year")) {
            if (!field(name).isEmpty()) {
                parts.add(field(name));
            }
        }
        return String.join(", ", parts);
    }

    public String note() {
        return field("note");
    }
}
