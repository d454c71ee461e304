// SPDX-License-Identifier: Apache-2.0
package landfall.regrind;

import java.util.List;
import landfall.grind.Holding;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.quantity.Measured;
import landfall.tap.Tap;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;
import org.jspecify.annotations.Nullable;

/** Relief, run-out, pitch diameter, and what is looked at. */
final class InspectionChecks {
    private static final Source GEOMETRY = Source.of("derived", "docs/methods/regrind.md");
    static final Rule BACK_TAPER = Rule.given("t_b", "1", "back taper, pitch diameter lost per length");
    static final Rule GROUND_BACK = Rule.given("s_g", "mm", "length by which the chamfer was ground back");
    static final Rule PITCH_MIN = Rule.given("E_lo", "mm", "least pitch diameter of the new tap");
    static final Rule PITCH_MAX = Rule.given("E_hi", "mm", "greatest pitch diameter of the new tap");
    static final Rule FIRST_MIN = new Rule(
            "E_lo1", "E_lo - t_b*s_g", "mm", GEOMETRY, Trust.DERIVED, "least pitch diameter at the first full thread");
    static final Rule FIRST_MAX = new Rule(
            "E_hi1",
            "E_hi - t_b*s_g",
            "mm",
            GEOMETRY,
            Trust.DERIVED,
            "greatest pitch diameter at the first full thread");
    static final Rule RUN_OUT = Rule.table(
            "t_max",
            "mm",
            Source.of("is-6171", "total run-out of the chamfer, as a tap maker's page quotes it"),
            Trust.HANDBOOK,
            "total run-out of the chamfer of a new tap, at most");
    /** Falls of the lands alike within a tenth: common practice. */
    private static final double FALL_SHARE = 0.10;

    private InspectionChecks() {}

    static Check falls(List<Length> falls, Length each) {
        String with = "fall from edge to heel on each land, dial square to the chamfer";
        String rule = "alike within 10 % of their mean (common practice)";
        if (falls.isEmpty()) {
            return new Check("relief", with, rule, "", null);
        }
        double least = falls.stream().mapToDouble(Length::mm).min().orElseThrow();
        double greatest = falls.stream().mapToDouble(Length::mm).max().orElseThrow();
        double mean = falls.stream().mapToDouble(Length::mm).average().orElseThrow();
        boolean bare = least <= 0;
        String found = bare
                ? "a land without fall: its heel drags"
                : "%.0f %% of the mean".formatted(100 * (greatest - least) / mean);
        // two lands are compared, each with its own error
        double uncertainty = Math.sqrt(2) * each.mm() / mean;
        Verdict alike = bare ? Verdict.BAD : Verdict.atMost((greatest - least) / mean, uncertainty, FALL_SHARE);
        return new Check("relief", with, rule, found, alike);
    }

    static Check runOut(Tap tap, @Nullable Length total, Pen pen) {
        Length limit =
                Length.ofMm(pen.write(RUN_OUT, runOutLimit(tap.thread().major()).mm()));
        String rule = "at most %s in all (what IS 6171 allows a new tap, second hand)".formatted(limit.words());
        String with =
                "edges of the chamfer %s, against the crests of the full thread, not in the chucking it was ground in"
                        .formatted(Holding.of(tap).checkedOn());
        if (total == null) {
            return new Check("runOut", with, rule, "", null);
        }
        return new Check("runOut", with, rule, total.words(), Verdict.atMost(total.mm(), 0, limit.mm()));
    }

    /** Total run-out of the chamfer of a new tap by size; IS 6171 as a maker's page quotes it. */
    static Length runOutLimit(Length major) {
        double d = major.mm();
        if (d <= 18) {
            return Length.ofMm(0.030);
        }
        return Length.ofMm(d <= 30 ? 0.035 : 0.040);
    }

    static Check pitchDiameter(Tap tap, Length groundBack, @Nullable Measured found, Pen pen) {
        String with = "pitch diameter at the first full thread: thread micrometer or wires; odd flutes in a V-anvil";
        Limits limit = tap.pitch().limit();
        Double taper = tap.body().backTaper();
        if (limit == null || limit.min() == null || limit.max() == null || taper == null) {
            return new Check("pitchDiameter", with, "limits or back taper of this tap not told", "", null);
        }
        double drop = pen.write(BACK_TAPER, taper) * pen.write(GROUND_BACK, groundBack.mm());
        double low = pen.write(PITCH_MIN, limit.min().mm());
        double high = pen.write(PITCH_MAX, limit.max().mm());
        double least = pen.write(FIRST_MIN, low - drop);
        double greatest = pen.write(FIRST_MAX, high - drop);
        String rule = "from %s to %s: the tap's own limits less back taper"
                .formatted(Length.ofMm(least).words(), Length.ofMm(greatest).words());
        if (found == null) {
            return new Check("pitchDiameter", with, rule, "", null);
        }
        Verdict both = Verdict.within(found, least, greatest);
        return new Check("pitchDiameter", with, rule, found.value().words(), both);
    }
}
