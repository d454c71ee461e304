// SPDX-License-Identifier: Apache-2.0
package landfall.thread.insert;

import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;

/** The printed formulas of the insert hole; D, P and the tolerances are those of the nominal thread. */
record InsertRules(Rule major, Rule pitchMin, Rule pitchMax, Rule minorMin, Rule minorMax) {
    static final InsertRules INCH = of("in", "0.0001", Source.of("memory", "ASME B18.29.1"));
    static final InsertRules METRIC = of("mm", "0.001", Source.of("memory", "ASME B18.29.2M"));

    private static InsertRules of(String unit, String step, Source rule) {
        Source shape = Source.of("derived", "docs/methods/insert-holes.md");
        return new InsertRules(
                new Rule(
                        "Dmin",
                        "round(D + 1.29903811 * P, " + step + ")",
                        unit,
                        shape,
                        Trust.DERIVED,
                        "least major diameter of the hole"),
                new Rule(
                        "D2min",
                        "round(D + 0.64951905 * P, " + step + ")",
                        unit,
                        shape,
                        Trust.DERIVED,
                        "least pitch diameter of the hole"),
                new Rule("D2max", "D2min + TD2", unit, rule, Trust.HANDBOOK, "greatest pitch diameter of the hole"),
                new Rule(
                        "D1min",
                        "round(D + 0.21650635 * P, " + step + ")",
                        unit,
                        shape,
                        Trust.DERIVED,
                        "least minor diameter of the hole"),
                new Rule("D1max", "D1min + TD1", unit, rule, Trust.HANDBOOK, "greatest minor diameter of the hole"));
    }
}
