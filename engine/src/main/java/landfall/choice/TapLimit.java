// SPDX-License-Identifier: Apache-2.0
package landfall.choice;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import landfall.fault.Answer;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.tap.LimitMark;
import landfall.thread.CallOut;
import landfall.thread.Family;
import landfall.thread.Side;
import landfall.thread.SideLimits;
import landfall.thread.callout.CallOuts;
import landfall.working.Pen;
import org.jspecify.annotations.Nullable;

/**
 * The limit of pitch diameter to look for on the tap.
 *
 * <p>Inch: the number a catalogue recommends for the class; where it has none, the highest H whose greatest pitch
 * diameter is not over the middle of the hole's tolerance (common practice: 40 to 60 per cent). Metric: class 1 for 4H
 * and 5H, 2 for 6H, 4G and 5G, 3 for 6G, 7H and 8H. Other families: as marked for the thread.
 *
 * @param words as looked for on the shank
 * @param why in a sentence
 * @param pitch the tap's own pitch diameter limits; null where no mark is held
 */
public record TapLimit(String words, String why, @Nullable Limits pitch) {
    private static final String RESOURCE = "/choice/recommended-limits.csv";
    private static final double STEP_INCH = 0.0005;

    private static final class Held {
        static final Map<String, Integer> RECOMMENDED = read();
    }

    static TapLimit of(CallOut callOut, Pen pen) {
        SideLimits hole = callOut.limits(Side.INTERNAL, Pen.NONE).orElseThrow();
        Family family = callOut.thread().family();
        if (family == Family.UNIFIED || family == Family.UNJ) {
            return inch(callOut, hole, pen);
        }
        if (family == Family.METRIC || family == Family.MJ) {
            return metric(callOut, hole, pen);
        }
        return new TapLimit(
                "as marked for " + callOut.normal(),
                "No system of limit marks is held for this family of threads.",
                null);
    }

    private static TapLimit inch(CallOut callOut, SideLimits hole, Pen pen) {
        Integer listed = Held.RECOMMENDED.get(size(callOut) + "," + hole.className());
        int number = listed != null ? listed : byRule(hole);
        Limits pitch = new LimitMark(LimitMark.Kind.H, number).on(callOut.thread(), null, pen);
        String why = listed != null
                ? "A catalogue recommends H" + number + " for class " + hole.className() + "."
                : "The highest H whose greatest pitch diameter is not over the middle of the hole's tolerance (common"
                        + " practice).";
        return new TapLimit("H" + number, why, pitch);
    }

    /** At least H1, which every class holds. */
    static int byRule(SideLimits hole) {
        Length least = Objects.requireNonNull(hole.pitch().min());
        Length greatest = Objects.requireNonNull(hole.pitch().max());
        return Math.max(1, (int) Math.floor(greatest.minus(least).inch() / 2 / STEP_INCH + 1e-6));
    }

    private static TapLimit metric(CallOut callOut, SideLimits hole, Pen pen) {
        int grade = hole.className().charAt(0) - '0';
        boolean wide = hole.className().charAt(1) == 'G';
        int number = classFor(grade, wide);
        if (number > 3) {
            return new TapLimit(
                    "7G",
                    "Beyond class 3 makers mark their own 7G position; take the pitch limits from the tap.",
                    null);
        }
        Optional<Length> t = gradeFive(callOut);
        Limits pitch = t.map(found -> new LimitMark(LimitMark.Kind.CLASS, number).on(callOut.thread(), found, pen))
                .orElse(null);
        return new TapLimit(
                "class " + number + " (ISO " + number + ")",
                "Class " + number + " is meant for " + hole.className() + " holes.",
                pitch);
    }

    private static int classFor(int grade, boolean wide) {
        if (!wide) {
            return grade <= 5 ? 1 : grade == 6 ? 2 : 3;
        }
        return grade <= 5 ? 2 : grade == 6 ? 3 : 4;
    }

    private static Optional<Length> gradeFive(CallOut callOut) {
        String size = callOut.normal().replaceFirst("-.*", "");
        return CallOuts.read(size + "-5H") instanceof Answer.Of<CallOut> nut
                ? nut.value()
                        .limits(Side.INTERNAL, Pen.NONE)
                        .map(SideLimits::pitch)
                        .filter(pitch -> pitch.min() != null && pitch.max() != null)
                        .map(pitch -> Objects.requireNonNull(pitch.max()).minus(Objects.requireNonNull(pitch.min())))
                : Optional.empty();
    }

    /** {@code 1/4-20 UNC}: the call-out without class and hand. */
    private static String size(CallOut callOut) {
        return callOut.withoutClass()
                .normal()
                .replace("-LH", "")
                .replace("UNR", "UN")
                .replace("UNJ", "UN");
    }

    private static Map<String, Integer> read() {
        Map<String, Integer> rows = new HashMap<>();
        try (InputStream in = TapLimit.class.getResourceAsStream(RESOURCE)) {
            if (in == null) {
                throw new IllegalStateException("missing resource " + RESOURCE);
            }
            new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))
                    .lines()
                    .filter(line -> !line.startsWith("#") && !line.isBlank())
                    .map(line -> line.split(",", -1))
                    .forEach(cells -> rows.put(cells[0] + "," + cells[1], Integer.valueOf(cells[2])));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return Map.copyOf(rows);
    }
}
