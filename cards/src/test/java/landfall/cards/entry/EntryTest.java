// SPDX-License-Identifier: Apache-2.0
package landfall.cards.entry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.quantity.UnitSystem;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("Quantities as people type them")
class EntryTest {
    static final double ULP = 1e-12;

    @ParameterizedTest(name = "{0} is {1} in on metric work too")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "5/8|0.625", "1 1/8|1.125", "1-1/8|1.125", "1 - 1/8|1.125", ".4375|0.4375", ",4375|0.4375",
                        "27/64in|0.421875",
                "27/64\"|0.421875", "27/64 ''|0.421875", "27/64”|0.421875", "27⁄64|0.421875", "1½|1.5", "1 ½ in|1.5",
                        "½|0.5",
                "6 thou|0.006", "6thou|0.006", "2 tenths|0.0002", "1 tenth|0.0001", "0.5 in.|0.5", "+.5|0.5",
                        "-.002|-0.002",
                "1.5 INCH|1.5", "20 µin|0.00002", "9/8|1.125"
            })
    void theseAreInches(String text, double inch) {
        assertThat(LengthEntry.read(text, UnitSystem.METRIC).orThrow().inch()).isCloseTo(inch, within(ULP));
        assertThat(LengthEntry.read(text, UnitSystem.INCH).orThrow().inch()).isCloseTo(inch, within(ULP));
    }

    @ParameterizedTest(name = "{0} is {1} mm on inch work too")
    @CsvSource(
            delimiter = '|',
            value = {
                "11.5 mm|11.5",
                "11.5mm|11.5",
                "11,5 mm|11.5",
                "0,250 mm|0.25",
                "11.5 MM|11.5",
                "40um|0.04",
                "40 µm|0.04",
                "40 μm|0.04",
                "40 microns|0.04",
                "2.5 cm|25",
                "1/2 mm|0.5",
                ".5 mm|0.5",
                "7. mm|7",
                "−3 mm|-3",
                "11.5\u00a0mm|11.5"
            })
    void theseAreMillimetres(String text, double mm) {
        assertThat(LengthEntry.read(text, UnitSystem.INCH).orThrow().mm()).isCloseTo(mm, within(ULP));
        assertThat(LengthEntry.read(text, UnitSystem.METRIC).orThrow().mm()).isCloseTo(mm, within(ULP));
    }

    @Test
    void aBareDecimalTakesTheUnitOfTheWork() {
        assertThat(LengthEntry.read("0.4375", UnitSystem.INCH).orThrow().inch()).isEqualTo(0.4375);
        assertThat(LengthEntry.read("11,5", UnitSystem.METRIC).orThrow().mm()).isEqualTo(11.5);
        assertThat(LengthEntry.read("8", UnitSystem.METRIC).orThrow().mm()).isEqualTo(8);
    }

    @ParameterizedTest(name = "{0} is {1} in")
    @CsvSource({"#7,0.201", "No. 7,0.201", "no 7,0.201", "F,0.257", "letter f,0.257", "27/64,0.421875", "#80,0.0135"})
    void aDiameterCanBeADrill(String text, double inch) {
        assertThat(LengthEntry.readDiameter(text, UnitSystem.METRIC).orThrow().inch())
                .isCloseTo(inch, within(ULP));
    }

    @Test
    void aDrillNameIsNoLengthElsewhere() {
        assertRefused(
                LengthEntry.read("#7", UnitSystem.INCH),
                "#7",
                "is not a length",
                "write 11.5 mm, 27/64, .4375 or 6 thou");
        assertRefused(
                LengthEntry.readDiameter("F mm", UnitSystem.INCH),
                "F mm",
                "is not a length",
                "write 11.5 mm, 27/64, .4375 or 6 thou");
        assertRefused(
                LengthEntry.readDiameter("#81", UnitSystem.INCH),
                "#81",
                "is no drill in the number drawer, which runs from #1 to #80",
                "write the diameter");
    }

    @ParameterizedTest(name = "{0} is {1} degrees")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "2.5deg|2.5",
                "2.5°|2.5",
                "2.5|2.5",
                ".5|0.5",
                "2,5 deg|2.5",
                "2°30'|2.5",
                "2° 30'|2.5",
                "2°30'15\"|2.504166666666667",
                "2°30′15″|2.504166666666667",
                "2 deg 30 min|2.5",
                "-1°15'|-1.25",
                "30'|0.5",
                "0.5 rad|28.64788975654116",
                "1 mrad|0.0572957795130823",
                "2 1/2 deg|2.5",
                "2º|2",
                "90 degrees|90",
                "2°30|2.5",
                "0°0'36\"|0.01"
            })
    void theseAreAngles(String text, double deg) {
        assertThat(AngleEntry.read(text).orThrow().deg()).isCloseTo(deg, within(ULP));
    }

    @ParameterizedTest
    @CsvSource({"30 m/s,1800", "12 m/min,12", "100 ft/min,30.48", "100 sfm,30.48", "100 fpm,30.48", "30M/S,1800"})
    void theseAreSpeeds(String text, double mPerMin) {
        assertThat(SpeedEntry.read(text).orThrow().mPerMin()).isCloseTo(mPerMin, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({
        "3200 rev/min,3200",
        "3200rpm,3200",
        "3200,3200",
        "3200 min-1,3200",
        "50 rev/s,3000",
        "'3200,5 RPM',3200.5"
    })
    void theseAreSpeedsOfRotation(String text, double revPerMin) {
        assertThat(TurningEntry.read(text).orThrow().revPerMin()).isCloseTo(revPerMin, within(1e-9));
    }

    /** 1 in·lb = 0.45359237 x 9.80665 x 0.0254 N·m by the definitions of pound, gravity and inch. */
    @ParameterizedTest
    @CsvSource({
        "12 N·m,12",
        "12Nm,12",
        "12 N m,12",
        "12 N.m,12",
        "12 n-m,12",
        "12,12",
        "1 in·lb,0.1129848290276167",
        "1 in-lb,0.1129848290276167",
        "1 lbf·in,0.1129848290276167",
        "1 ft-lb,1.3558179483314004",
        "250 N·cm,2.5"
    })
    void theseAreTorques(String text, double nm) {
        assertThat(TorqueEntry.read(text, UnitSystem.METRIC).orThrow().nm()).isCloseTo(nm, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"650 N/mm2,650", "650 N/mm²,650", "650MPa,650", "0.65 GPa,650", "650,650", "100 ksi,689.4757293168361"})
    void theseAreStresses(String text, double nPerMm2) {
        assertThat(StressEntry.read(text, UnitSystem.METRIC).orThrow().nPerMm2())
                .isCloseTo(nPerMm2, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"70%,0.7", "70 %,0.7", "70,0.7", "'67,5 %',0.675", "70 percent,0.7", "0.5 %,0.005"})
    void theseAreShares(String text, double share) {
        assertThat(ShareEntry.read(text).orThrow()).isCloseTo(share, within(ULP));
    }

    @ParameterizedTest
    @CsvSource({"0.001,0.001", "1:1000,0.001", "0.0007 in/in,0.0007", "1 µm/mm,0.001", "1/1000,0.001", ".001,0.001"})
    void theseAreNumbers(String text, double value) {
        assertThat(NumberEntry.read(text).orThrow()).isCloseTo(value, within(ULP));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "1,250 mm|has a comma that can be a decimal sign or a thousands sign|write 1.250 or 1250",
                "1,234.5|has more than one decimal sign|write one decimal point and no thousands sign: 11.5 mm, "
                        + "27/64, .4375 or 6 thou",
                "5, mm|has a comma with no digit after it|write 11.5 mm, 27/64, .4375 or 6 thou",
                "3 furlongs|has a unit that is not one of a length, \"furlongs\"|write it in mm, µm, in, thou or "
                        + "tenths, such as 11.5 mm, 27/64, .4375 or 6 thou",
                "1/0|divides by 0|write a fraction such as 27/64",
                "1 9/8|has a fraction of 1 or more after the whole number|write it like 1 1/8",
                "12 mil|says mil, which is .001 in to some and 1 mm to others|write thou or mm",
                "11 5 mm|is two numbers|write one number and its unit: 11.5 mm, 27/64, .4375 or 6 thou",
                "thick|is not a length|write 11.5 mm, 27/64, .4375 or 6 thou"
            })
    void theseLengthsAreRefusedWithTheMend(String text, String why, String mend) {
        assertRefused(LengthEntry.read(text, UnitSystem.INCH), text, why, mend);
    }

    @Test
    void whatCanMeanTwoThingsIsRefused() {
        assertRefused(SpeedEntry.read("30"), "30", "has no unit", "put one of m/min, m/s or ft/min after it");
        assertRefused(
                TorqueEntry.read("30", UnitSystem.INCH),
                "30",
                "has no unit",
                "put one of N·m, N·cm, in·lb or ft·lb after it");
        assertRefused(
                StressEntry.read("30", UnitSystem.INCH),
                "30",
                "has no unit",
                "put one of N/mm2, MPa, psi or ksi after it");
        assertRefused(ShareEntry.read(".7"), ".7", "can be a share of 1 or of 100", "write the % sign: 70 %");
        assertRefused(
                AngleEntry.read("2°75'"),
                "2°75'",
                "has 60 or more minutes or seconds",
                "carry them over: 2°30', not 1°90'");
        assertRefused(NumberEntry.read("1:0"), "1:0", "divides by 0", "write a ratio such as 1:1000");
    }

    private static void assertRefused(Answer<?> answer, String given, String why, String mend) {
        assertThat(answer.findings()).containsExactly(new Finding("", given, why, mend));
    }
}
