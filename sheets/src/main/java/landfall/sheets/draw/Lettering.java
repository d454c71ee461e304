// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.draw;

/**
 * How a text is written.
 *
 * @param size font size in mm on paper, 3 or more
 * @param face regular or bold
 * @param anchor which end of the text stands at its spot
 * @param turnDeg turned about its spot, anticlockwise as seen
 */
public record Lettering(double size, Typeface face, Anchor anchor, double turnDeg) {
    /** Which part of a text stands at its spot; the spot is always on the base line. */
    public enum Anchor {
        START("start", 0),
        MIDDLE("middle", 0.5),
        END("end", 1);

        final String word;
        final double share;

        Anchor(String word, double share) {
            this.word = word;
            this.share = share;
        }
    }

    /** Least size on paper, readable at arm's length. */
    public static final double LEAST_MM = 3;

    public static final Lettering NOTE = new Lettering(3.2, Typeface.REGULAR, Anchor.START, 0);
    public static final Lettering FIGURE = new Lettering(3.5, Typeface.BOLD, Anchor.MIDDLE, 0);

    public Lettering {
        if (size < LEAST_MM) {
            throw new IllegalArgumentException("text of " + size + " mm cannot be read at arm's length");
        }
    }

    public Lettering anchored(Anchor other) {
        return new Lettering(size, face, other, turnDeg);
    }

    public Lettering middle() {
        return anchored(Anchor.MIDDLE);
    }

    public Lettering end() {
        return anchored(Anchor.END);
    }

    public Lettering turned(double deg) {
        return new Lettering(size, face, anchor, deg);
    }

    public Lettering bold() {
        return new Lettering(size, Typeface.BOLD, anchor, turnDeg);
    }

    public Lettering sized(double mm) {
        return new Lettering(mm, face, anchor, turnDeg);
    }

    public double width(String text) {
        return face.width(text, size);
    }

    public double capHeight() {
        return size * Typeface.CAP_HEIGHT;
    }
}
