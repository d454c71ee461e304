// SPDX-License-Identifier: Apache-2.0
package landfall.route;

import java.util.List;
import landfall.choice.Ranked;
import landfall.choice.TapAdvice;
import landfall.quantity.Band;
import landfall.tap.FluteKind;
import landfall.wear.Job;
import landfall.wear.Survival;
import org.jspecify.annotations.Nullable;

/**
 * The tap for a line.
 *
 * @param advice which kind and limit to look for
 * @param ranked every tap on record, the best first
 * @param chosen null where none on record can do it, sharpened or not
 * @param sharpenFirst whether it must be sharpened before the job
 * @param ahead what may become of the chosen tap, or of a sharp one where none is chosen
 */
public record TapPick(
        TapAdvice advice, List<Ranked> ranked, @Nullable Ranked chosen, boolean sharpenFirst, Ahead ahead) {
    /**
     * What the tap has before it.
     *
     * @param job all holes of this thread and material
     * @param life holes of the job's depth from sharp to due
     */
    public record Ahead(Job job, Survival survival, Band life) {}

    public TapPick {
        ranked = List.copyOf(ranked);
    }

    /** Right-handed: of the chosen tap, else of the kind that is advised. */
    public FluteKind flutes() {
        return chosen != null
                ? chosen.tap().build().flutes()
                : advice.choices().get(0).flutes();
    }

    @Nullable
    Double chamferThreads() {
        return chosen == null ? null : chosen.tap().build().chamferThreads();
    }

    /** Taps of the thread that cannot do it, and those of other threads by their number. */
    public List<Ranked> ofTheThread() {
        return ranked.stream().filter(Ranked::isOfTheThread).toList();
    }

    /** By which lines are one operation. */
    public String key() {
        return chosen != null
                ? chosen.tap().mark()
                : "a new tap " + advice.wish().callOut().withoutClass().normal() + ", " + kind() + ", "
                        + advice.limit().words();
    }

    /** The kind that is advised, in words that hold for either hand. */
    public String kind() {
        return switch (advice.choices().get(0).flutes()) {
            case STRAIGHT -> "straight flutes";
            case SPIRAL_RIGHT -> "spiral flutes of the thread's own hand";
            case SPIRAL_LEFT -> "spiral flutes of the other hand";
            case SPIRAL_POINT -> "spiral point";
            case FORMING -> "forming";
        };
    }
}
