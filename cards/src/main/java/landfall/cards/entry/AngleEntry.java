// SPDX-License-Identifier: Apache-2.0
package landfall.cards.entry;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import landfall.fault.Answer;
import landfall.quantity.Angle;
import landfall.quantity.UnitSystem;

/**
 * Angles as people type them: {@code 2.5}, {@code 2.5deg}, {@code 2°30'}, {@code 2°30'15"}, {@code 0.5 rad}. Bare is
 * degrees.
 */
public final class AngleEntry {
    private static final String EXAMPLE = "2.5 deg or 2°30'";
    static final Reader<Angle> READER = new Reader<>(
            "an angle", EXAMPLE, "deg, ° ' \" or rad", units(), (shape, system) -> Optional.of(Angle::ofDeg));

    private static final Pattern SEXAGESIMAL = Pattern.compile("([+-]?)(\\d{1,4})\\s*(?:°|deg|d)\\s*"
            + "(\\d{1,3}(?:[.,]\\d+)?)\\s*(?:'|min|m)?(?:(?<=['nm])\\s*(\\d{1,3}(?:[.,]\\d+)?)\\s*(?:\"|sec|s)?)?");

    private AngleEntry() {}

    public static Answer<Angle> read(String text) {
        Matcher parts = SEXAGESIMAL.matcher(Written.plain(text));
        if (text.length() > Written.LONGEST || !parts.matches()) {
            return READER.read(text, UnitSystem.METRIC);
        }
        double minutes = number(parts.group(3));
        double seconds = parts.group(4) == null ? 0 : number(parts.group(4));
        if (minutes >= 60 || seconds >= 60) {
            return Written.refused(text, "has 60 or more minutes or seconds", "carry them over: 2°30', not 1°90'");
        }
        if (seconds > 0 && minutes != Math.rint(minutes)) {
            return Written.refused(
                    text, "has a part of a minute and seconds as well", "write one of the two: " + EXAMPLE);
        }
        double deg = number(parts.group(2)) + minutes / 60 + seconds / 3600;
        return Answer.of(Angle.ofDeg(parts.group(1).equals("-") ? -deg : deg));
    }

    private static double number(String digits) {
        return Double.parseDouble(digits.replace(',', '.'));
    }

    private static Map<String, DoubleFunction<Angle>> units() {
        Map<String, DoubleFunction<Angle>> units = new HashMap<>();
        Names.put(units, Angle::ofDeg, "deg", "degs", "degree", "degrees", "°", "d");
        Names.put(units, min -> Angle.ofDeg(min / 60), "'", "min", "minute", "minutes", "arcmin");
        Names.put(units, sec -> Angle.ofDeg(sec / 3600), "\"", "sec", "second", "seconds", "arcsec");
        Names.put(units, Angle::ofRad, "rad", "radian", "radians");
        Names.put(units, mrad -> Angle.ofRad(mrad / 1000), "mrad");
        return units;
    }
}
