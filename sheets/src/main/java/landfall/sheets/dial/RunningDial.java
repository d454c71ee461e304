// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.dial;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import landfall.envelope.OneTurn.Moment;
import landfall.quantity.Length;
import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Ink;
import landfall.sheets.figure.Figures;
import org.jspecify.annotations.Nullable;

/**
 * A dial that runs through one turn of the tap: its face, and for every moment where its needle stands.
 *
 * @param readings one a moment; null where the stylus stands over a flute
 */
public record RunningDial(Drawing face, DialKind kind, List<Shown> readings) {
    public RunningDial {
        readings = List.copyOf(readings);
    }

    /**
     * What one moment shows.
     *
     * @param reading null over a flute
     */
    public record Shown(@Nullable Length reading) {}

    /** The dial at a place. */
    public static RunningDial of(
            String where, DialKind kind, List<Moment> moments, Function<Moment, @Nullable Length> reads) {
        String id = "running-" + where.replaceAll("[^a-z]+", "-");
        Drawing face = new DialFace(kind).running(where, id, Ink.SCREEN);
        return new RunningDial(
                face,
                kind,
                moments.stream().map(moment -> new Shown(reads.apply(moment))).toList());
    }

    /**
     * Clockwise angles of the needle in degrees, moment by moment, more than 360 for more than a turn; x over a flute.
     */
    public String needleDegrees() {
        return readings.stream()
                .map(Shown::reading)
                .map(reading -> reading == null ? "x" : Figures.plain(kind.needleDeg(reading), 1))
                .collect(Collectors.joining(" "))
                .replace('\u2212', '-');
    }

    /** Readings in words, moment by moment, divided by bars; a dash over a flute. */
    public String words() {
        Figures figures = new Figures(kind.units());
        return readings.stream()
                .map(Shown::reading)
                .map(reading -> reading == null ? "\u2013" : figures.signed(reading) + " " + figures.unit())
                .collect(Collectors.joining("|"));
    }
}
