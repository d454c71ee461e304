// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.dial;

import java.util.List;
import java.util.Objects;
import landfall.quantity.Length;
import landfall.sheets.draw.Dimensions;
import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Fill;
import landfall.sheets.draw.Ink;
import landfall.sheets.draw.Lettering;
import landfall.sheets.draw.Line;
import landfall.sheets.draw.Outline;
import landfall.sheets.draw.Spot;
import landfall.sheets.figure.Figures;

/**
 * Draws one dial: black needle where it should stand, hollow needle where it was read, a thin arc from one to the
 * other.
 */
public final class DialFace {
    /** Paper that one face takes: four stand beside each other on A4 and Letter. */
    public static final Spot SIZE = Spot.at(45, 53);

    private static final Spot CENTRE = Spot.at(22.5, 24.4);
    private static final double BEZEL = 19.5;
    private static final double SCALE = 18.2;
    private static final Lettering NUMERAL = Lettering.NOTE.sized(3).middle();

    private final DialKind kind;
    private final Figures figures;

    /** The face speaks the unit that its dial is graduated in, whatever the sheet around it speaks. */
    public DialFace(DialKind kind) {
        this.kind = kind;
        this.figures = new Figures(kind.units());
    }

    /** Paper of a face that shows what was read: one line more under it. */
    public static final Spot SIZE_READ = Spot.at(45, 57);

    /** The face for one target; the id must be unique in its page. */
    public Drawing draw(Needle target, String id, Ink ink) {
        Length read = target.read();
        Length wanted = target.wanted();
        Drawing drawing = new Drawing(id, title(target), description(target), read == null ? SIZE : SIZE_READ, ink);
        String angle = Figures.plain(target.land().deg(), 1) + "\u00b0";
        drawing.text(
                Spot.at(CENTRE.x(), 3.3),
                target.where() + ", " + angle,
                Lettering.NOTE.bold().middle());
        face(drawing);
        counter(drawing, shown(target));
        if (read != null) {
            if (wanted != null) {
                arc(drawing, kind.needleDeg(read), kind.needleDeg(wanted));
            }
            needle(drawing, kind.needleDeg(read), false);
        }
        if (wanted != null) {
            needle(drawing, kind.needleDeg(wanted), true);
        }
        below(drawing, target);
        return drawing;
    }

    /** Paper of a face whose needles a script turns: nothing is written under it. */
    public static final Spot SIZE_RUNNING = Spot.at(45, 45);

    /** The face with both hands at nought, each a part of its own: {@code needle} and {@code turns}. */
    public Drawing running(String where, String id, Ink ink) {
        String words = "The needle runs forward clockwise; one turn is %s.".formatted(figures.length(kind.perTurn()));
        Drawing drawing = new Drawing(id, "Dial at the " + where, words, SIZE_RUNNING, ink);
        drawing.text(Spot.at(CENTRE.x(), 3.3), where, Lettering.NOTE.bold().middle());
        face(drawing);
        Spot hub = CENTRE.plus(0, 7);
        counterFace(drawing, hub);
        drawing.beginPart("turns", hub);
        counterHand(drawing, hub, 0);
        drawing.endPart().beginPart("needle", CENTRE);
        needle(drawing, 0, true);
        return drawing.endPart();
    }

    private static Length shown(Needle target) {
        Length wanted = target.wanted();
        return wanted != null ? wanted : Objects.requireNonNull(target.read());
    }

    private void below(Drawing drawing, Needle target) {
        Length shown = shown(target);
        drawing.text(Spot.at(CENTRE.x(), 47.8), signed(shown), Lettering.FIGURE.sized(4));
        Lettering note = Lettering.NOTE.sized(3.1).middle();
        Length read = target.read();
        if (read != null && target.wanted() != null) {
            drawing.text(Spot.at(CENTRE.x(), 52), "read " + figures.signed(read), note);
        } else if (read != null) {
            drawing.text(Spot.at(CENTRE.x(), 52), "read", note);
        }
        String last = target.mend().isEmpty() ? kind.turnsAndDivisions(shown) : target.mend();
        drawing.text(Spot.at(CENTRE.x(), read == null ? 52 : 56.2), last, note);
    }

    private String signed(Length length) {
        return figures.signed(length) + " " + figures.unit();
    }

    private static String title(Needle target) {
        return "Dial at the " + target.where();
    }

    private String description(Needle target) {
        StringBuilder words = new StringBuilder();
        Length wanted = target.wanted();
        if (wanted != null) {
            words.append("Needle should stand at %s: %s; forward is clockwise."
                    .formatted(signed(wanted), kind.turnsAndDivisions(wanted)));
        }
        Length read = target.read();
        if (read != null) {
            words.append(words.length() == 0 ? "It was read at " : " It was read at ")
                    .append(signed(read))
                    .append('.');
        }
        return target.mend().isEmpty() ? words.toString() : words + " " + target.mend() + ".";
    }

    private void face(Drawing drawing) {
        drawing.disc(CENTRE, BEZEL, Fill.SHEET).circle(CENTRE, BEZEL, Line.OUTLINE);
        int every = kind.divisions() / 10;
        for (int i = 0; i < kind.divisions(); i++) {
            double direction = 90 - 360.0 * i / kind.divisions();
            boolean tenth = i % every == 0;
            double depth = tenth ? 2.8 : i % 5 == 0 ? 2.1 : 1.3;
            Line line = tenth ? Line.OUTLINE : Line.FINE;
            drawing.line(CENTRE.polar(direction, SCALE), CENTRE.polar(direction, SCALE - depth), line);
            if (tenth) {
                Spot on = CENTRE.polar(direction, 13);
                drawing.text(on.plus(0, NUMERAL.capHeight() / 2), kind.numeral(i), NUMERAL);
            }
        }
        Spot middle = CENTRE.plus(0, -5.2);
        drawing.text(middle.plus(-1.2, 0), kind.divisionWords(), NUMERAL.end());
        drawing.text(middle.plus(1.2, 0), figures.unit(), NUMERAL.anchored(Lettering.Anchor.START));
    }

    /** The small hand that counts turns, ten to its circle, in the same sense as the needle. */
    private void counter(Drawing drawing, Length wanted) {
        Spot hub = CENTRE.plus(0, 7);
        counterFace(drawing, hub);
        counterHand(drawing, hub, wanted.over(kind.perTurn()));
    }

    private static void counterFace(Drawing drawing, Spot hub) {
        drawing.circle(hub, 2.9, Line.THIN);
        for (int i = 0; i < 10; i++) {
            drawing.line(hub.polar(90 - 36.0 * i, 2.9), hub.polar(90 - 36.0 * i, 2.2), Line.FINE);
        }
    }

    private static void counterHand(Drawing drawing, Spot hub, double turns) {
        drawing.line(hub.polar(270 - 36 * turns, 0.8), hub.polar(90 - 36 * turns, 2.1), Line.OUTLINE);
    }

    private static void needle(Drawing drawing, double clockwiseDeg, boolean black) {
        double direction = 90 - clockwiseDeg;
        double half = black ? 0.55 : 0.95;
        double reach = black ? SCALE - 0.6 : SCALE - 1.6;
        Outline shape = Outline.through(List.of(
                        CENTRE.polar(direction, reach),
                        CENTRE.polar(direction, reach - 4).polar(direction + 90, half),
                        CENTRE.polar(direction + 90, half),
                        CENTRE.polar(direction + 180, 4).polar(direction + 90, half),
                        CENTRE.polar(direction + 180, 4).polar(direction - 90, half),
                        CENTRE.polar(direction - 90, half),
                        CENTRE.polar(direction, reach - 4).polar(direction - 90, half)))
                .close();
        drawing.fill(shape, black ? Fill.SOLID : Fill.SHEET);
        if (!black) {
            drawing.path(shape, Line.THIN);
        }
        drawing.disc(CENTRE, 1.3, black ? Fill.SOLID : Fill.SHEET).circle(CENTRE, 1.3, Line.THIN);
    }

    /**
     * From what was read to what is wanted, inside the numerals; an arc under two degrees would be a blot and is left
     * out.
     */
    private static void arc(Drawing drawing, double readDeg, double wantedDeg) {
        double turn = wantedDeg - readDeg;
        if (Math.abs(turn) < 2) {
            return;
        }
        double shown = Math.abs(turn) > 350 ? Math.signum(turn) * 350 : turn;
        double radius = 9.6;
        double from = 90 - wantedDeg + shown;
        drawing.path(Outline.from(CENTRE.polar(from, radius)).arc(CENTRE, -shown), Line.THIN);
        double half = Math.toDegrees(1.2 / radius);
        double heading = 90 - wantedDeg - Math.signum(shown) * (90 - half);
        new Dimensions(drawing).arrowhead(CENTRE.polar(90 - wantedDeg, radius), heading);
    }
}
