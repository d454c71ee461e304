// SPDX-License-Identifier: Apache-2.0
package landfall.chip;

import java.util.List;
import landfall.fault.OutOfRange;
import landfall.quantity.Length;

/**
 * How far the edges of the chamfer stand apart: as a run-out of the whole chamfer, or land by land.
 *
 * @param runOut total run-out of the chamfer against the thread, the whole swing of the dial; zero when not told
 * @param heights how far each land stands proud, in cutting order (backwards from land 1); empty when not told
 */
public record Evenness(Length runOut, List<Length> heights) {
    public static final Evenness ALIKE = new Evenness(Length.ZERO, List.of());

    public Evenness {
        heights = List.copyOf(heights);
        if (runOut.mm() < 0) {
            throw new OutOfRange("run-out", runOut.words(), "0 or more", "give the whole swing of the dial");
        }
        if (runOut.mm() > 0 && !heights.isEmpty()) {
            throw new OutOfRange(
                    "heights", "beside a run-out", "given without one", "leave the run-out or the heights out");
        }
    }

    public static Evenness of(Length runOut) {
        return new Evenness(runOut, List.of());
    }

    /** Whether anything was told of it. */
    public boolean isTold() {
        return runOut.mm() > 0 || !heights.isEmpty();
    }
}
