// SPDX-License-Identifier: Apache-2.0
package landfall.wear;

import java.util.ArrayList;
import java.util.List;
import landfall.fault.Caution;

/** What to hold against a law. */
final class WearCautions {
    /** Below this a law is practice bent by a few records. */
    static final int FEW = 10;
    /** Standard deviations of the prior's own spread. */
    private static final double FAR = 2;

    private WearCautions() {}

    static List<Caution> of(Records records, boolean depthTold, double fromPractice) {
        List<Caution> cautions = new ArrayList<>();
        counts(records, cautions);
        if (records.about() > 0) {
            cautions.add(new Caution(
                    "aboutCounts",
                    "Guesses are among the counts of " + records.about() + " of " + records.runs()
                            + " runs: the bands are wider for it.",
                    "n_r"));
        }
        if (records.unknownStart() > 0) {
            cautions.add(new Caution(
                    "startUnknown",
                    "Runs that began before the records did: " + records.unknownStart()
                            + ". They count as lasting at least so long. Log that a tap was bought when it is new.",
                    "n_r"));
        }
        if (records.untold() > 0) {
            cautions.add(new Caution(
                    "materialUntold", "Runs without a material on record: " + records.untold() + ".", "n_r"));
        }
        if (!depthTold) {
            cautions.add(new Caution(
                    "depthAssumed",
                    "No depth is on record: a hole counts as 1.5 diameters of thread (common practice).",
                    "L_u"));
        }
        if (Math.abs(fromPractice) > FAR) {
            cautions.add(new Caution(
                    "farFromPractice",
                    "Taps last much " + (fromPractice > 0 ? "longer" : "shorter")
                            + " here than practice has it. Look whether holes, material and wear limit are as logged.",
                    "M"));
        }
        return cautions;
    }

    private static void counts(Records records, List<Caution> cautions) {
        if (records.runs() == 0) {
            cautions.add(new Caution(
                    "priorOnly",
                    "No run is on record: these figures are common practice without a source, and no more.",
                    "n_r"));
        } else if (records.known() < FEW) {
            cautions.add(new Caution(
                    "fewRecords",
                    "Runs with a known life on record: " + records.known() + " of " + records.runs()
                            + ". Common practice still weighs with them.",
                    "n_k"));
        }
    }
}
