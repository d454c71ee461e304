// SPDX-License-Identifier: Apache-2.0
package landfall.working;

import java.util.Set;

/**
 * One printed formula.
 *
 * <p>The formula is written with the symbols of the steps before it: {@code + - * / ^ ( )}, {@code pi}, and the
 * functions {@code sin cos tan asin acos atan sqrt exp ln min max floor abs} (angles in degrees), {@code if(c, a, b)}
 * with {@code < <= > >=}, and {@code round(x, step)} to the nearest multiple, halves upwards ({@code roundeven}: to the
 * even one). A step that is not computed here has the formula {@link #GIVEN}, {@link #TABLE}, {@link #FITTED},
 * {@link #LEARNED} or {@link #RUN}.
 *
 * @param symbol short name, unique in one answer
 * @param formula as printed
 * @param unit {@code mm}, {@code deg}, {@code 1}, {@code mm/rad}, {@code N·m}, {@code N/mm²}, {@code m/min}, ..
 * @param source where it comes from
 * @param trust how far it is to be trusted
 * @param means what the figure is, in a few words
 */
public record Rule(String symbol, String formula, String unit, Source source, Trust trust, String means) {
    /** Formula of a figure that the person gave. */
    public static final String GIVEN = "given";
    /** Formula of a figure that a table gave. */
    public static final String TABLE = "table";

    /** Formula of a figure fitted to many readings at once: its note says how. */
    public static final String FITTED = "least squares";

    /** Formula of a figure weighed out of many records and what practice holds: its note says how. */
    public static final String LEARNED = "from the records";

    /** Formula of a figure found by moving the parts step by step: its note says how. */
    public static final String RUN = "run numerically";

    private static final Set<String> NOT_COMPUTED = Set.of(GIVEN, TABLE, FITTED, LEARNED, RUN);

    static final Source THE_PERSON = Source.of("given", "");

    /** A figure that the person gave: recorded so that the formulas after it can be checked by hand. */
    public static Rule given(String symbol, String unit, String means) {
        return new Rule(symbol, GIVEN, unit, THE_PERSON, Trust.MEASURED, means);
    }

    /** A figure read from a table. */
    public static Rule table(String symbol, String unit, Source source, Trust trust, String means) {
        return new Rule(symbol, TABLE, unit, source, trust, means);
    }

    /** A figure fitted to readings: there is no line that a pocket calculator could follow. */
    public static Rule fitted(String symbol, String unit, Source source, String means) {
        return new Rule(symbol, FITTED, unit, source, Trust.MEASURED, means);
    }

    /** A figure learned from records: an estimate, and there is no line that a pocket calculator could follow. */
    public static Rule learned(String symbol, String unit, Source source, String means) {
        return new Rule(symbol, LEARNED, unit, source, Trust.ESTIMATE, means);
    }

    /** A figure found by moving the parts step by step: there is no line that a pocket calculator could follow. */
    public static Rule run(String symbol, String unit, Source source, String means) {
        return new Rule(symbol, RUN, unit, source, Trust.DERIVED, means);
    }

    /** Whether the formula can be evaluated from the steps before it. */
    public boolean isComputed() {
        return !NOT_COMPUTED.contains(formula);
    }
}
