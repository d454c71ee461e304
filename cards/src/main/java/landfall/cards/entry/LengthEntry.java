// SPDX-License-Identifier: Apache-2.0
package landfall.cards.entry;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.regex.Pattern;
import landfall.drill.Drill;
import landfall.drill.DrillSeries;
import landfall.fault.Answer;
import landfall.quantity.Length;
import landfall.quantity.UnitSystem;

/**
 * Lengths as people type them: {@code 5/8}, {@code 1 1/8}, {@code .4375}, {@code 27/64"}, {@code 11.5mm}, {@code 6
 * thou}, {@code 2 tenths}, {@code 40um}.
 *
 * <p>A fraction or a leading point without a unit is inch, as it is spoken in a shop; a bare decimal takes the unit of
 * the call-out or card. A tenth is .0001 in. "Mil" is refused, since half the trade means a millimetre by it.
 */
public final class LengthEntry {
    static final Reader<Length> READER = new Reader<>(
            "a length",
            "11.5 mm, 27/64, .4375 or 6 thou",
            "mm, µm, in, thou or tenths",
            units(),
            (shape, system) -> Optional.of(
                    shape == Written.Shape.DECIMAL && system == UnitSystem.METRIC ? Length::ofMm : Length::ofInch));

    private static final Pattern MIL = Pattern.compile("[^a-z]*[0-9][ -]*mils?");

    private LengthEntry() {}

    public static Answer<Length> read(String text, UnitSystem bare) {
        if (MIL.matcher(Written.plain(text)).matches()) {
            return Written.refused(text, "says mil, which is .001 in to some and 1 mm to others", "write thou or mm");
        }
        return READER.read(text, bare);
    }

    /**
     * A length that is a diameter: number and letter drills too, when no unit follows: {@code #7}, {@code No. 7},
     * {@code F}.
     */
    public static Answer<Length> readDiameter(String text, UnitSystem bare) {
        if (!DrillSeries.isWrittenAsDrill(text)) {
            return read(text, bare);
        }
        return DrillSeries.named(text)
                .map(Drill::diameter)
                .map(Answer::of)
                .orElseGet(() -> Written.refused(
                        text, "is no drill in the number drawer, which runs from #1 to #80", "write the diameter"));
    }

    private static Map<String, DoubleFunction<Length>> units() {
        Map<String, DoubleFunction<Length>> units = new HashMap<>();
        Names.put(units, Length::ofMm, "mm", "millimetre", "millimetres", "millimeter", "millimeters");
        Names.put(units, cm -> Length.ofMm(cm * 10), "cm", "centimetre", "centimetres", "centimeter", "centimeters");
        Names.put(units, m -> Length.ofMm(m * 1000), "m", "metre", "metres", "meter", "meters");
        Names.put(units, um -> Length.ofMm(um / 1000), "um", "u", "micron", "microns", "micrometre", "micrometres");
        Names.put(units, Length::ofInch, "in", "inch", "inches", "\"");
        Names.put(units, thou -> Length.ofInch(thou / 1000), "thou", "thous", "thousandth", "thousandths");
        Names.put(units, tenth -> Length.ofInch(tenth / 10_000), "tenth", "tenths");
        Names.put(units, uin -> Length.ofInch(uin / 1_000_000), "uin", "microinch", "microinches");
        return units;
    }
}
