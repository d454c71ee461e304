// SPDX-License-Identifier: Apache-2.0
package landfall.material;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import landfall.fault.Answer;
import landfall.fault.Finding;

/** The list of work materials. */
public final class Materials {
    private static final Pattern BETWEEN = Pattern.compile("[\\s.\\-_/]");

    private Materials() {}

    private static final class Held {
        static final List<WorkMaterial> ALL = MaterialList.read();
        static final Map<String, WorkMaterial> BY_NAME = byName();

        /** A name of two materials means the one that stands first. */
        private static Map<String, WorkMaterial> byName() {
            Map<String, WorkMaterial> names = new HashMap<>();
            for (WorkMaterial material : ALL) {
                names.putIfAbsent(bare(material.id()), material);
                material.names().forEach(name -> names.putIfAbsent(bare(name), material));
            }
            return names;
        }
    }

    public static List<WorkMaterial> all() {
        return Held.ALL;
    }

    /** The material of an id or name, in any case and with or without blanks; else the three nearest as the mend. */
    public static Answer<WorkMaterial> find(String field, String text) {
        String wanted = bare(text);
        WorkMaterial found = Held.BY_NAME.get(wanted);
        if (found != null) {
            return Answer.of(found);
        }
        String nearest = all().stream()
                .sorted(Comparator.comparingInt(material -> distance(material, wanted)))
                .limit(3)
                .map(material -> material.id() + " (" + String.join(", ", material.names()) + ")")
                .collect(Collectors.joining("; "));
        return Answer.refused(
                new Finding(field, text, "is not in the list of materials", "the nearest are " + nearest));
    }

    private static int distance(WorkMaterial material, String wanted) {
        int best = apart(bare(material.id()), wanted);
        for (String name : material.names()) {
            best = Math.min(best, apart(bare(name), wanted));
        }
        return best - alike(material, wanted);
    }

    /** A name that holds what was typed, or a word of it, comes before one that is only spelt alike. */
    private static int alike(WorkMaterial material, String wanted) {
        String all = bare(material.id() + String.join(" ", material.names()));
        if (wanted.length() >= 2 && all.contains(wanted)) {
            return 100;
        }
        for (int from = 0; from + 4 <= wanted.length(); from++) {
            if (all.contains(wanted.substring(from, from + 4))) {
                return 50;
            }
        }
        return 0;
    }

    private static String bare(String text) {
        return BETWEEN.matcher(text.toLowerCase(Locale.ROOT)).replaceAll("");
    }

    /** Letters to change, add or drop to make one word of the other. */
    private static int apart(String a, String b) {
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int corner = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int change = corner + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                corner = row[j];
                row[j] = Math.min(change, Math.min(row[j], row[j - 1]) + 1);
            }
        }
        return row[b.length()];
    }
}
