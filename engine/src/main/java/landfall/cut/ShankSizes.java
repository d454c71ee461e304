// SPDX-License-Identifier: Apache-2.0
package landfall.cut;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import landfall.cut.CutWish.Grip;
import landfall.cut.Driven.Drive;
import landfall.quantity.Length;
import landfall.quantity.UnitSystem;
import landfall.tap.Tap;
import landfall.tap.blank.TapBlank;
import landfall.thread.Family;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;
import org.jspecify.annotations.Nullable;

/**
 * Sizes of the driven end: as measured, else those of a listed blank of this thread, the square else by its usual share
 * of the shank.
 *
 * @param neck null when not measured
 * @param shank null when neither measured nor listed
 * @param square null when the tap is not driven by it, or when there is no shank
 * @param list of blanks that the shank was taken from; empty when it was measured
 */
record ShankSizes(
        @Nullable Length neck,
        @Nullable Length shank,
        @Nullable Length square,
        String list) {
    private static final Source SOLVER = Source.of("derived", "docs/methods/torsion.md");
    static final Rule NECK = Rule.given("d_n", "mm", "neck diameter");
    static final Rule SHANK = Rule.given("d_s", "mm", "shank diameter");
    static final Rule SQUARE = Rule.given("a_q", "mm", "square across its flats");
    static final Rule SQUARE_SHARE = Rule.table(
            "q_q",
            "1",
            Source.of("common-practice", "square of tap shanks: 0.75 of the shank inch, 0.8 metric"),
            Trust.PRACTICE,
            "square over shank");
    static final Rule SQUARE_FROM =
            new Rule("a_q", "q_q*d_s", "mm", SOLVER, Trust.PRACTICE, "square across its flats, taken");

    /** Blanks are listed for these; a pipe, power or insert tap of the same diameter has another shank. */
    private static final Set<Family> LISTED = Set.of(Family.UNIFIED, Family.UNJ, Family.METRIC, Family.MJ);

    private static final double SAME_SHANK_MM = 0.1;

    static ShankSizes of(Tap tap, CutWish wish, Pen pen) {
        Length neck = tap.body().neck();
        if (neck != null) {
            pen.write(NECK, neck.mm());
        }
        Length measured = tap.body().shank();
        Optional<TapBlank> blank = blank(tap, wish);
        Length shank = measured != null ? measured : blank.map(TapBlank::shank).orElse(null);
        if (shank == null) {
            return new ShankSizes(neck, null, null, "");
        }
        pen.write(measured != null ? SHANK : listed("d_s", "shank diameter, of the list", blank), shank.mm());
        boolean square = wish.how().holding().grip() == Grip.SQUARE;
        return new ShankSizes(
                neck,
                shank,
                square ? Length.ofMm(square(tap, wish, shank, blank, pen)) : null,
                measured != null ? "" : blank.map(TapBlank::list).orElse(""));
    }

    private static double square(Tap tap, CutWish wish, Length shank, Optional<TapBlank> blank, Pen pen) {
        Length given = wish.how().holding().square();
        if (given != null) {
            return pen.write(SQUARE, given.mm());
        }
        if (blank.isPresent()) {
            return pen.write(
                    listed("a_q", "square across its flats, of the list", blank),
                    blank.get().square().mm());
        }
        double share = pen.write(SQUARE_SHARE, tap.thread().family().system() == UnitSystem.INCH ? 0.75 : 0.8);
        return pen.write(SQUARE_FROM, share * shank.mm());
    }

    /** The listed blank with the measured shank; none measured: for a machine the long metric one where it is held. */
    private static Optional<TapBlank> blank(Tap tap, CutWish wish) {
        if (!LISTED.contains(tap.thread().family())) {
            return Optional.empty();
        }
        boolean inch = tap.thread().family().system() == UnitSystem.INCH;
        List<TapBlank> fitting = TapBlank.of(tap.thread().major()).stream()
                .filter(blank -> blank.list().startsWith("USCTI") == inch)
                .toList();
        Length shank = tap.body().shank();
        if (shank != null) {
            return fitting.stream()
                    .filter(blank -> Math.abs(blank.shank().mm() - shank.mm()) <= SAME_SHANK_MM)
                    .findFirst();
        }
        Drive by = wish.how().driven().by();
        boolean machine = by != null && by != Drive.HAND;
        return fitting.stream()
                .filter(blank -> blank.list().startsWith("DIN") == machine)
                .findFirst()
                .or(() -> fitting.stream().findFirst());
    }

    private static Rule listed(String symbol, String means, Optional<TapBlank> blank) {
        boolean read = blank.map(TapBlank::read).orElse(false);
        String list = blank.map(TapBlank::list).orElse("");
        Source source = !read
                ? Source.of("memory", list)
                : list.startsWith("USCTI") ? Source.of("uscti-302", "") : Source.of("din-371", list);
        return Rule.table(symbol, "mm", source, read ? Trust.HANDBOOK : Trust.ESTIMATE, means);
    }
}
