// SPDX-License-Identifier: Apache-2.0
package landfall.drill;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import landfall.quantity.Length;
import landfall.working.Source;

/**
 * The drill series: numbers 80 to 1, letters A to Z, fractions of 1/64 in up to 1 3/4 in, millimetres up to 60.
 *
 * <p>Two drills may share a diameter (E and 1/4); both stay, since a shop reaches for the one that its drawer has.
 * Number drills below 80 and wire gauges are not held.
 */
public final class DrillSeries {
    public static final Source SOURCE = Source.of("drill-size-table", "number and letter drills");

    private static final Pattern NUMBER = Pattern.compile("(?:#|no\\.?|nr\\.?|number)\\s*(\\d{1,3})(?:\\s*drill)?");
    private static final Pattern LETTER = Pattern.compile("(?:letter\\s+)?([a-z])(?:\\s+drill)?");

    private static final List<Drill> ALL = read();

    private DrillSeries() {}

    /** Every drill, thinnest first. */
    public static List<Drill> all() {
        return ALL;
    }

    /** The drills of one drawer, thinnest first. */
    public static List<Drill> of(Drawer drawer) {
        return ALL.stream().filter(drill -> drill.drawer() == drawer).toList();
    }

    /** Whether a text is written as a number or letter drill is, whether there is such a drill or not. */
    public static boolean isWrittenAsDrill(String text) {
        String asked = plain(text);
        return NUMBER.matcher(asked).matches() || LETTER.matcher(asked).matches();
    }

    /**
     * The number or letter drill of a text such as {@code #7}, {@code No. 7}, {@code F} or {@code letter F}. Fractions
     * are plain lengths and are not looked up here; a bare number is not a number drill.
     */
    public static Optional<Drill> named(String text) {
        String asked = plain(text);
        Matcher number = NUMBER.matcher(asked);
        if (number.matches()) {
            return find(Drawer.NUMBER, Integer.toString(Integer.parseInt(number.group(1))));
        }
        Matcher letter = LETTER.matcher(asked);
        return letter.matches() ? find(Drawer.LETTER, letter.group(1).toUpperCase(Locale.ROOT)) : Optional.empty();
    }

    private static Optional<Drill> find(Drawer drawer, String name) {
        return ALL.stream()
                .filter(drill -> drill.drawer() == drawer && drill.name().equals(name))
                .findFirst();
    }

    private static String plain(String text) {
        return text.strip().toLowerCase(Locale.ROOT);
    }

    private static List<Drill> read() {
        List<Drill> drills = new ArrayList<>(read("drills.csv", Length::ofInch));
        drills.addAll(read("metric-drills.csv", Length::ofMm));
        drills.sort(Comparator.comparing(Drill::diameter));
        return List.copyOf(drills);
    }

    private static List<Drill> read(String resource, DoubleFunction<Length> unit) {
        List<Drill> drills = new ArrayList<>();
        try (InputStream in = DrillSeries.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException(resource + " is missing from the program");
            }
            BufferedReader lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                if (!line.startsWith("#")) {
                    String[] cells = line.split(",", -1);
                    Drawer drawer = Drawer.valueOf(cells[0].toUpperCase(Locale.ROOT));
                    drills.add(new Drill(drawer, cells[1], unit.apply(Double.parseDouble(cells[2]))));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return drills;
    }
}
