// SPDX-License-Identifier: Apache-2.0
package landfall.grind;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A wheel's marking read by the order of ISO 525: abrasive, grain, grade, structure, bond.
 *
 * @param parts in the order of the marking
 */
public record WheelMarking(Abrasive abrasive, int grain, char grade, String bond, List<Part> parts) {
    public WheelMarking {
        parts = List.copyOf(parts);
    }

    /** One part of the marking: what it is, its mark, and what the mark means. */
    public record Part(String name, String mark, String meaning) {}

    public enum Abrasive {
        ALUMINIUM_OXIDE("aluminium oxide, for steel"),
        SILICON_CARBIDE("silicon carbide, not for high-speed steel"),
        BORON_NITRIDE("cubic boron nitride, for hard steel"),
        DIAMOND("diamond, for carbide only");

        private final String meaning;

        Abrasive(String meaning) {
            this.meaning = meaning;
        }
    }

    private static final Pattern ORDER = Pattern.compile(
            "(\\d{0,3})\\s*(CBN|WA|PA|SA|RA|MA|GC|A|C|B|D)\\s*-?(\\d{1,4})\\s*-?([A-Z])\\s*-?(\\d{0,2})\\s*-?"
                    + "(BF|RF|MG|PL|V|B|R|E|S|O)(.*)");
    private static final Map<String, String> BONDS = Map.of(
            "V", "vitrified",
            "B", "resin",
            "BF", "resin, fibre reinforced",
            "R", "rubber",
            "RF", "rubber, reinforced",
            "E", "shellac",
            "S", "silicate",
            "O", "magnesia",
            "MG", "magnesia",
            "PL", "plastic");

    /** Reads a marking; empty when it does not follow the standard's order. */
    public static Optional<WheelMarking> read(String text) {
        Matcher m = ORDER.matcher(text.trim().toUpperCase(Locale.ROOT));
        if (!m.matches()) {
            return Optional.empty();
        }
        Abrasive abrasive = abrasive(m.group(2));
        int grain = Integer.parseInt(m.group(3));
        char grade = m.group(4).charAt(0);
        List<Part> parts = new ArrayList<>();
        if (!m.group(1).isEmpty()) {
            parts.add(new Part("maker's prefix", m.group(1), "kind of abrasive by the maker's own list"));
        }
        parts.add(new Part("abrasive", m.group(2), abrasive.meaning));
        parts.add(new Part("grain", m.group(3), grainWords(grain)));
        parts.add(new Part("grade", m.group(4), gradeWords(grade)));
        if (!m.group(5).isEmpty()) {
            parts.add(
                    new Part("structure", m.group(5), Integer.parseInt(m.group(5)) <= 6 ? "dense to medium" : "open"));
        }
        parts.add(new Part("bond", m.group(6), BONDS.getOrDefault(m.group(6), m.group(6))));
        if (!m.group(7).isBlank()) {
            parts.add(new Part("maker's mark", m.group(7).trim(), "by the maker's own list"));
        }
        return Optional.of(new WheelMarking(abrasive, grain, grade, m.group(6), parts));
    }

    private static Abrasive abrasive(String mark) {
        return switch (mark) {
            case "C", "GC" -> Abrasive.SILICON_CARBIDE;
            case "B", "CBN" -> Abrasive.BORON_NITRIDE;
            case "D" -> Abrasive.DIAMOND;
            default -> Abrasive.ALUMINIUM_OXIDE;
        };
    }

    private static String grainWords(int grain) {
        if (grain < 30) {
            return "coarse";
        }
        if (grain <= 60) {
            return "medium";
        }
        return grain <= 180 ? "fine" : "very fine";
    }

    private static String gradeWords(char grade) {
        if (grade < 'H') {
            return "very soft";
        }
        if (grade <= 'K') {
            return "soft";
        }
        return grade <= 'O' ? "medium" : "hard";
    }
}
