// SPDX-License-Identifier: Apache-2.0
package landfall.chip;

import java.util.stream.Collectors;
import landfall.tap.Tap;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;

/**
 * Turns forward and back for tapping by hand with straight flutes. Two answers side by side: what the flutes bound, and
 * the habit of the trade.
 *
 * @param forward turns after which the largest chip, bulked, fills its place in the flute
 * @param back turns until the heel of the land ahead comes to the chip's root and shears it
 * @param habitForward by habit
 * @param habitBack by habit
 */
public record ChipBreak(double forward, double back, double habitForward, double habitBack) {
    private static final Source GEOMETRY = Source.of("derived", "docs/methods/chip-room.md");
    private static final Source PRACTICE = Source.of("common-practice", "hand tapping with straight flutes");
    static final Rule LAND = Rule.given("θ_L", "deg", "land angle, edge to heel");
    public static final Rule BACK = new Rule(
            "n_back",
            "(360/N - θ_L)/360",
            "1",
            GEOMETRY,
            Trust.DERIVED,
            "turns back until the heel ahead shears the chip, at least");
    public static final Rule FORWARD = new Rule(
            "n_fwd",
            "A_f/N*P/(A_max*2*pi*r_c*β_c)",
            "1",
            GEOMETRY,
            Trust.ESTIMATE,
            "turns forward until the largest chip fills its place in the flute");
    public static final Rule HABIT_FORWARD =
            Rule.table("n_hf", "1", PRACTICE, Trust.PRACTICE, "turns forward by habit");
    public static final Rule HABIT_BACK = Rule.table("n_hb", "1", PRACTICE, Trust.PRACTICE, "turns back by habit");

    /** By habit, about three quarters forward and half back. */
    public static ChipBreak of(ChipLoad load, Tap tap, ChipRoom room, Pen pen) {
        double land = pen.write(LAND, tap.landAngle().deg());
        double back = pen.write(BACK, (360.0 / tap.flutes().count() - land) / 360);
        double largest = pen.write(
                largest(load),
                load.slices().stream().mapToDouble(s -> s.area().mm2()).max().orElseThrow());
        double chip = largest
                * 2
                * Math.PI
                * load.groove().radius().mm()
                * room.bulk().expected();
        double forward = pen.write(
                FORWARD,
                room.flutes().mm2()
                        / tap.flutes().count()
                        * tap.thread().pitch().mm()
                        / chip);
        return new ChipBreak(forward, back, pen.write(HABIT_FORWARD, 0.75), pen.write(HABIT_BACK, 0.5));
    }

    private static Rule largest(ChipLoad load) {
        String all = load.slices().stream().map(s -> "A_s" + s.tooth()).collect(Collectors.joining(", "));
        return new Rule("A_max", "max(" + all + ")", "mm²", GEOMETRY, Trust.DERIVED, "largest slice");
    }
}
