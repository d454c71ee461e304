// SPDX-License-Identifier: Apache-2.0
package landfall.regrind;

import java.util.List;
import java.util.Locale;
import landfall.quantity.UnitSystem;
import landfall.tap.Tap;
import org.jspecify.annotations.Nullable;

/**
 * What was looked at and tried; what was not is null.
 *
 * @param edges sharp at 10 x, no burr, no nick
 * @param faces without a tint of burn
 * @param heel clear: no blue rubbed off it
 * @param trial hole
 */
public record Looked(
        @Nullable Boolean edges,
        @Nullable Boolean faces,
        @Nullable Boolean heel,
        Trial trial) {
    public static final Looked NOTHING = new Looked(null, null, null, new Trial(null, null));

    /** NOT GO may enter an inch thread by three turns, a metric one by two. */
    private static final double MOST_INCH = 3;

    private static final double MOST_METRIC = 2;

    /**
     * A hole tapped in scrap of the job's material.
     *
     * @param go whether GO went through
     * @param notGoTurns how many turns NOT GO entered
     */
    public record Trial(@Nullable Boolean go, @Nullable Double notGoTurns) {}

    List<Check> checks(Tap tap) {
        return List.of(
                byEye("edges", "edges at 10 x", "sharp, no burr left, no nick", edges),
                byEye("burn", "ground faces by eye, under light", "no straw or blue tint", faces),
                byEye("heel", "heel blued, one turn by hand in a trial nut", "no blue rubbed off", heel),
                trial(tap));
    }

    private static Check byEye(String code, String with, String rule, @Nullable Boolean good) {
        if (good == null) {
            return new Check(code, with, rule, "", null);
        }
        return new Check(code, with, rule, good ? "as it should be" : "not so", good ? Verdict.GOOD : Verdict.BAD);
    }

    private Check trial(Tap tap) {
        boolean inch = tap.thread().family().system() == UnitSystem.INCH;
        double most = inch ? MOST_INCH : MOST_METRIC;
        String rule = inch
                ? "GO passes freely, NOT GO binds on or before the third turn (from memory)"
                : "GO passes freely, NOT GO enters two turns at most (from memory)";
        String with = "trial hole in scrap of the job's material, plug gauges";
        Boolean go = trial.go();
        Double turns = trial.notGoTurns();
        if (go == null && turns == null) {
            return new Check("trialHole", with, rule, "", null);
        }
        boolean bad = Boolean.FALSE.equals(go) || turns != null && turns > most;
        Verdict verdict = bad ? Verdict.BAD : go == null || turns == null ? Verdict.UNSURE : Verdict.GOOD;
        String found = "GO %s, NOT GO %s"
                .formatted(
                        go == null ? "not tried" : go ? "passes" : "does not pass",
                        turns == null ? "not tried" : String.format(Locale.ROOT, "enters %.1f turns", turns));
        return new Check("trialHole", with, rule, found, verdict);
    }
}
