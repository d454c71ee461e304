// SPDX-License-Identifier: Apache-2.0
package landfall.cards.job;

import java.util.Locale;
import landfall.choice.Ranked;
import landfall.quantity.Band;
import landfall.quantity.Length;
import landfall.quantity.UnitSystem;
import landfall.route.GaugePick;
import landfall.route.HoleLine;
import landfall.route.Planned;
import landfall.route.Totals;
import org.jspecify.annotations.Nullable;

/**
 * One line of a route in words, rounded for the eye: the same on text, page and paper. Lengths are in the system of the
 * line's call-out.
 *
 * @param mark of the tap on record; empty where none is
 */
public record LineWords(Planned planned, String mark) {
    public static LineWords of(Planned planned) {
        Ranked chosen = planned.tap().chosen();
        return new LineWords(planned, chosen == null ? "" : chosen.tap().mark());
    }

    private HoleLine line() {
        return planned.line();
    }

    private UnitSystem system() {
        return line().callOut().thread().family().system();
    }

    public String number() {
        String label = line().named().label();
        return line().line() + (label.isEmpty() ? "" : " " + label);
    }

    public String callOut() {
        return line().callOut().normal();
    }

    /** {@code 16.0 mm blind}. */
    public String depth() {
        return length(line().place().depth()) + " " + line().place().end().code();
    }

    public String drill() {
        return planned.hole().tools().drill().drill().called();
    }

    /** Depth of full diameter in a blind hole. */
    public String drillDepth() {
        return line().through() ? "through" : length(planned.depth().drill());
    }

    /** The mark, and whether to sharpen; else what to look for. */
    public String tap() {
        if (mark.isEmpty()) {
            return planned.tap().kind() + ", " + planned.tap().advice().limit().words();
        }
        return planned.tap().sharpenFirst() ? mark + ", sharpen first" : mark;
    }

    public String speed() {
        return String.format(
                Locale.ROOT, "%.0f rev/min", planned.work().tempo().spindle().revPerMin());
    }

    /** In metres a minute, or feet. */
    public String cuttingSpeed() {
        Band speed = planned.work().tempo().speed();
        return system() == UnitSystem.INCH
                ? String.format(Locale.ROOT, "%.0f to %.0f ft/min", speed.low() / 0.3048, speed.high() / 0.3048)
                : String.format(Locale.ROOT, "%.1f to %.1f m/min", speed.low(), speed.high());
    }

    public String gauge() {
        GaugePick gauge = planned.gauge();
        if (gauge.go() == null || gauge.notGo() == null) {
            return gauge.wanted() + " is lacking";
        }
        return gauge.go().equals(gauge.notGo())
                ? gauge.go().name()
                : gauge.go().name() + ", " + gauge.notGo().name();
    }

    private String length(Length length) {
        return system() == UnitSystem.INCH
                ? String.format(Locale.ROOT, "%.3f in", length.inch())
                : String.format(Locale.ROOT, "%.1f mm", length.mm());
    }

    /** {@code 38 min (20 to 84)}. */
    public static String minutes(Band minutes) {
        return String.format(Locale.ROOT, "%.0f min (%.0f to %.0f)", minutes.expected(), minutes.low(), minutes.high());
    }

    /** {@code 38.60 EUR (20.18 to 84.76)}; empty where it was not computed. */
    public static String money(Totals.@Nullable Cost cost) {
        if (cost == null) {
            return "";
        }
        Band amount = cost.amount();
        return String.format(
                        Locale.ROOT,
                        "%.2f %s (%.2f to %.2f)",
                        amount.expected(),
                        cost.currency(),
                        amount.low(),
                        amount.high())
                .replace("  ", " ");
    }
}
