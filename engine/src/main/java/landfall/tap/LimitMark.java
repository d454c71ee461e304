// SPDX-License-Identifier: Apache-2.0
package landfall.tap;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import landfall.fault.OutOfRange;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.quantity.Rounding;
import landfall.quantity.UnitSystem;
import landfall.thread.ScrewThread;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;
import org.jspecify.annotations.Nullable;

/**
 * The limit of pitch diameter that is marked on a tap: {@code H3}, {@code L2}, {@code D5}, {@code class 2}.
 *
 * <p>H and L count .0005 in steps from the basic pitch diameter (four places) up or down. D counts 0.013 mm steps up;
 * only its upper end is fixed by the number, the lower end by the maker's tolerance, which is held for the pitches that
 * were read and left open for others. Classes 1, 2, 3 are fifths of t, the nut's pitch tolerance of grade 5: 0.1 to
 * 0.3, 0.3 to 0.5, 0.5 to 0.7 t.
 */
public record LimitMark(Kind kind, int number) {
    /** The systems of marks. */
    public enum Kind {
        H,
        L,
        D,
        CLASS
    }

    static final Source HANDBOOK = Source.of("machinerys-handbook-31", "p. 972, tap marking with H or L limits");
    static final Source D_LIST = Source.of("tap-maker-limits-list", "D limits M5 to M10");
    static final Source CLASSES = Source.of("tap-maker-nut-chart", "classes 1, 2, 3 as parts of t");

    static final Rule BASIC_INCH = Rule.given("E_b", "in", "basic pitch diameter to four places");
    static final Rule BASIC_METRIC = Rule.given("E_b", "mm", "basic pitch diameter");
    static final Rule NUMBER = Rule.given("n_mark", "1", "number of the mark");
    static final Rule H_MIN = marked("E_t.min", "E_b + 0.0005*(n_mark - 1)", "in", HANDBOOK, "least pitch diameter");
    static final Rule H_MAX = marked("E_t.max", "E_b + 0.0005*n_mark", "in", HANDBOOK, "greatest pitch diameter");
    static final Rule L_MIN = marked("E_t.min", "E_b - 0.0005*n_mark", "in", HANDBOOK, "least pitch diameter");
    static final Rule L_MAX = marked("E_t.max", "E_b - 0.0005*(n_mark - 1)", "in", HANDBOOK, "greatest pitch diameter");
    static final Rule D_MAX = marked("E_t.max", "E_b + 0.013*n_mark", "mm", D_LIST, "greatest pitch diameter");
    static final Rule D_TOLERANCE =
            Rule.table("T_tap", "mm", D_LIST, Trust.HANDBOOK, "pitch tolerance of a ground tap of this pitch");
    static final Rule D_MIN = marked("E_t.min", "E_t.max - T_tap", "mm", D_LIST, "least pitch diameter");
    static final Rule GRADE_5 = Rule.table(
            "t_5", "mm", Source.of("iso-965-1", "pitch tolerance inside, grade 5"), Trust.HANDBOOK, "t of the class");
    static final Rule CLASS_MIN =
            marked("E_t.min", "E_b + (0.2*n_mark - 0.1)*t_5", "mm", CLASSES, "least pitch diameter");
    static final Rule CLASS_MAX =
            marked("E_t.max", "E_b + (0.2*n_mark + 0.1)*t_5", "mm", CLASSES, "greatest pitch diameter");

    private static final Pattern MARK =
            Pattern.compile("(?:g\\s*)?([hld])\\s*(\\d{1,2})|(?:class|iso)\\s*([123])", Pattern.CASE_INSENSITIVE);

    private static Rule marked(String symbol, String formula, String unit, Source source, String means) {
        return new Rule(symbol, formula, unit, source, Trust.HANDBOOK, means + " of the tap as marked");
    }

    public LimitMark {
        if (number < 1 || number > (kind == Kind.CLASS ? 3 : 20)) {
            throw new OutOfRange(
                    "limit",
                    kind + " " + number,
                    kind == Kind.CLASS ? "class 1, 2 or 3" : "from 1 to 20",
                    "read the mark on the shank again");
        }
    }

    /** The mark as it is stamped or spoken; empty when it is none of those known. */
    public static Optional<LimitMark> read(String text) {
        Matcher mark = MARK.matcher(text.strip());
        if (!mark.matches()) {
            return Optional.empty();
        }
        return mark.group(3) == null
                ? Optional.of(new LimitMark(
                        Kind.valueOf(mark.group(1).toUpperCase(Locale.ROOT)), Integer.parseInt(mark.group(2))))
                : Optional.of(new LimitMark(Kind.CLASS, Integer.parseInt(mark.group(3))));
    }

    /** Whether limits need the nut's pitch tolerance of grade 5. */
    public boolean needsGradeFive() {
        return kind == Kind.CLASS;
    }

    /** The system of threads that the mark belongs to. */
    public UnitSystem system() {
        return kind == Kind.H || kind == Kind.L ? UnitSystem.INCH : UnitSystem.METRIC;
    }

    /** The tap's own pitch diameter limits. */
    public Limits on(ScrewThread thread, @Nullable Length gradeFive, Pen pen) {
        if (thread.family().system() != system()) {
            throw new OutOfRange(
                    "limit",
                    kind + " " + number,
                    system() == UnitSystem.INCH ? "D or class on a metric thread" : "H or L on an inch thread",
                    "read the mark again, or give limit.pitchMin and limit.pitchMax");
        }
        return switch (kind) {
            case H -> inch(H_MIN, H_MAX, 0.0005 * (number - 1), thread, pen);
            case L -> inch(L_MIN, L_MAX, -0.0005 * number, thread, pen);
            case D -> byNumber(thread, pen);
            case CLASS -> byClass(thread, gradeFive, pen);
        };
    }

    private Limits inch(Rule min, Rule max, double from, ScrewThread thread, Pen pen) {
        double basic =
                pen.write(BASIC_INCH, Rounding.halfUp(thread.pitchDiameter().inch(), 4));
        pen.write(NUMBER, number);
        double least = pen.write(min, Rounding.halfUp(basic + from, 4));
        double most = pen.write(max, Rounding.halfUp(basic + from + 0.0005, 4));
        return new Limits(Length.ofInch(least), Length.ofInch(most));
    }

    private Limits byNumber(ScrewThread thread, Pen pen) {
        double basic = pen.write(BASIC_METRIC, thread.pitchDiameter().mm());
        pen.write(NUMBER, number);
        double most = pen.write(D_MAX, basic + 0.013 * number);
        double tolerance = tolerance(thread.pitch().mm());
        if (Double.isNaN(tolerance)) {
            return Limits.upTo(Length.ofMm(most));
        }
        pen.write(D_TOLERANCE, tolerance);
        return Limits.ofMm(pen.write(D_MIN, most - tolerance), most);
    }

    /** Tolerance seen on a maker's list, for the pitches that stand on it; not a number for others. */
    private static double tolerance(double pitch) {
        if (pitch == 0.8) {
            return 0.020;
        }
        if (pitch == 1) {
            return 0.025;
        }
        return pitch == 1.25 || pitch == 1.5 ? 0.031 : Double.NaN;
    }

    private Limits byClass(ScrewThread thread, @Nullable Length gradeFive, Pen pen) {
        if (gradeFive == null) {
            throw new OutOfRange(
                    "limit",
                    "class " + number,
                    "given as diameters on this thread, whose grade 5 tolerance is not held",
                    "give limit.pitchMin and limit.pitchMax");
        }
        double basic = pen.write(BASIC_METRIC, thread.pitchDiameter().mm());
        pen.write(NUMBER, number);
        double t = pen.write(GRADE_5, gradeFive.mm());
        double least = pen.write(CLASS_MIN, basic + (0.2 * number - 0.1) * t);
        return Limits.ofMm(least, pen.write(CLASS_MAX, basic + (0.2 * number + 0.1) * t));
    }
}
