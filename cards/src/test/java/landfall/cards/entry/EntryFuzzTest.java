// SPDX-License-Identifier: Apache-2.0
package landfall.cards.entry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import java.util.function.Function;
import java.util.stream.Stream;
import landfall.fault.Answer;
import landfall.quantity.Length;
import landfall.quantity.UnitSystem;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("No text breaks a reader, and each refusal has its mend")
class EntryFuzzTest {
    private static final String[] PIECES = {
        "1", "27", "64", "/", " ", "-", ".", ",", "mm", "in", "\"", "'", "°", "deg", "thou", "#", "No.", "F", "½", "µm",
        "rad", "%", "N·m", "0", "999999", "+", "rev/min", ":", "ksi", "\t", "′", "²", "e5", "NaN", "é", "\u0000", "𝄞",
        "sfm", "mil", "("
    };

    static Stream<Arguments> readers() {
        return Stream.of(
                reader("length in", text -> LengthEntry.read(text, UnitSystem.INCH)),
                reader("length mm", text -> LengthEntry.read(text, UnitSystem.METRIC)),
                reader("diameter", text -> LengthEntry.readDiameter(text, UnitSystem.INCH)),
                reader("angle", AngleEntry::read),
                reader("speed", SpeedEntry::read),
                reader("turning", TurningEntry::read),
                reader("torque", text -> TorqueEntry.read(text, UnitSystem.METRIC)),
                reader("stress", text -> StressEntry.read(text, UnitSystem.METRIC)),
                reader("share", ShareEntry::read),
                reader("number", NumberEntry::read));
    }

    private static Arguments reader(String name, Function<String, Answer<?>> reader) {
        return Arguments.of(name, reader);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("readers")
    void everyTextIsReadOrRefusedWithTheMend(String name, Function<String, Answer<?>> reader) {
        Random random = new Random(name.hashCode());
        int read = 0;
        for (int i = 0; i < 40_000; i++) {
            Answer<?> answer = reader.apply(text(random));
            read += answer instanceof Answer.Of ? 1 : 0;
            answer.findings().forEach(finding -> {
                assertThat(finding.why()).isNotBlank();
                assertThat(finding.mend()).isNotBlank();
            });
        }
        assertThat(read).as("texts that were read").isPositive();
        assertThat(reader.apply("9".repeat(100_000)).findings()).hasSize(1);
    }

    @Test
    void aLengthPrintedInEitherUnitReadsBack() {
        Random random = new Random(11);
        for (int i = 0; i < 10_000; i++) {
            long tenthMicrons = random.nextInt(1, 2_000_000);
            String mm = java.math.BigDecimal.valueOf(tenthMicrons, 4).toPlainString();
            assertThat(LengthEntry.read(mm + " mm", UnitSystem.INCH).orThrow())
                    .isEqualTo(Length.ofMm(Double.parseDouble(mm)));
            assertThat(LengthEntry.read(mm.replace('.', ',') + "mm", UnitSystem.INCH)
                            .orThrow())
                    .isEqualTo(Length.ofMm(Double.parseDouble(mm)));
            assertThat(LengthEntry.read(mm + "\"", UnitSystem.METRIC).orThrow())
                    .isEqualTo(Length.ofInch(Double.parseDouble(mm)));
        }
    }

    @Test
    void aFractionIsTheSameAsItsDecimal() {
        for (int over : new int[] {2, 4, 8, 16, 32, 64}) {
            for (int part = 1; part < over; part++) {
                assertThat(LengthEntry.read("1 " + part + "/" + over, UnitSystem.METRIC)
                                .orThrow())
                        .isEqualTo(Length.ofInch(1 + (double) part / over));
            }
        }
    }

    private static String text(Random random) {
        StringBuilder text = new StringBuilder();
        for (int piece = random.nextInt(1, 6); piece > 0; piece--) {
            text.append(PIECES[random.nextInt(PIECES.length)]);
        }
        return text.toString();
    }
}
