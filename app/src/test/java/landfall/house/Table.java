// SPDX-License-Identifier: Apache-2.0
package landfall.house;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A table of {@code docs/architecture.md}: its cells, row by row, without the heading. */
final class Table {
    private static final Pattern CODE = Pattern.compile("`([^`]+)`");

    private Table() {}

    /** The first table under a heading. */
    static List<List<String>> under(String heading) {
        String page = House.text(House.root().resolve("docs/architecture.md"));
        int from = page.indexOf("\n## " + heading + "\n");
        if (from < 0) {
            throw new AssertionError("docs/architecture.md has no heading '" + heading + "'");
        }
        List<List<String>> rows = new ArrayList<>();
        for (String line : page.substring(from + 1).lines().skip(1).toList()) {
            if (line.startsWith("|")) {
                rows.add(cells(line));
            } else if (!rows.isEmpty() || line.startsWith("## ")) {
                break;
            }
        }
        return rows.subList(2, rows.size());
    }

    private static List<String> cells(String line) {
        return Pattern.compile("\\|")
                .splitAsStream(line.substring(1))
                .map(String::strip)
                .toList();
    }

    /** The names between backticks in a cell. */
    static Set<String> names(String cell) {
        Set<String> names = new LinkedHashSet<>();
        Matcher code = CODE.matcher(cell);
        while (code.find()) {
            names.add(code.group(1));
        }
        return names;
    }
}
