// SPDX-License-Identifier: Apache-2.0
package landfall.hole;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import landfall.quantity.Length;
import landfall.quantity.UnitSystem;
import landfall.thread.ScrewThread;

/**
 * A drill that a published list names for a thread. Lists do not say what hole they expect, and several break the
 * limits of the thread.
 *
 * @param list what the list is called here
 * @param name of the drill in the list, empty when it gives a diameter only
 */
public record PublishedDrill(String list, String source, UnitSystem system, Size size, String name) {
    private static final String RESOURCE = "/hole/published-drills.csv";
    private static final double SAME_MM = 2e-4;

    private static final class Held {
        static final List<PublishedDrill> ALL = read();
    }

    /** The thread that a row is for, and the drill's diameter. */
    public record Size(Length major, Length pitch, Length drill) {}

    /** What the lists held say of a thread. */
    public static List<PublishedDrill> of(ScrewThread thread) {
        if (thread.lead().starts() > 1) {
            return List.of();
        }
        return Held.ALL.stream()
                .filter(row -> row.system == thread.family().system())
                .filter(row -> Math.abs(row.size.major.mm() - thread.major().mm()) < SAME_MM)
                .filter(row -> Math.abs(row.size.pitch.mm() - thread.pitch().mm()) < SAME_MM)
                .toList();
    }

    /** The drill as a sentence names it. */
    public String called() {
        if (system == UnitSystem.METRIC) {
            return name + " mm";
        }
        return name.matches("\\d+") ? "#" + name : name.isEmpty() ? size.drill.words() : name;
    }

    private static List<PublishedDrill> read() {
        try (InputStream in = PublishedDrill.class.getResourceAsStream(RESOURCE)) {
            if (in == null) {
                throw new IllegalStateException("missing resource " + RESOURCE);
            }
            return new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))
                    .lines()
                    .filter(line -> !line.startsWith("#") && !line.isBlank())
                    .map(line -> row(line.split(",", -1)))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static PublishedDrill row(String[] cells) {
        boolean inch = cells[2].equals("inch");
        double major = Double.parseDouble(cells[3]);
        double pitch = Double.parseDouble(cells[4]);
        double drill = Double.parseDouble(cells[5]);
        Size size = inch
                ? new Size(Length.ofInch(major), Length.ofInch(1 / pitch), Length.ofInch(drill))
                : new Size(Length.ofMm(major), Length.ofMm(pitch), Length.ofMm(drill));
        return new PublishedDrill(cells[0], cells[1], inch ? UnitSystem.INCH : UnitSystem.METRIC, size, cells[6]);
    }
}
