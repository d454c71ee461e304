// SPDX-License-Identifier: Apache-2.0
package landfall.cards.answer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import landfall.fault.Caution;
import landfall.fault.Finding;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.quantity.UnitSystem;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Step;
import landfall.working.Trust;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Answers as JSON")
class JsonAnswerTest {
    static final Rule D = Rule.given("d", "mm", "major diameter");
    static final Rule E = new Rule("E", "d - 1", "mm", Source.of("derived", "example"), Trust.DERIVED, "one less");
    static final Rule A = Rule.given("a", "deg", "an angle");

    static Document document(UnitSystem units) {
        return new Document(
                "example",
                "5/8",
                units,
                List.of(
                        new Item.Text("name", "é \"quoted\""),
                        Item.Figure.of("major", Length.ofInch(0.625), D),
                        Item.Figure.of("tilt", Angle.ofDeg(0.1 + 0.2), A),
                        new Item.Range("pitch", null, Item.Point.of(Length.ofMm(14.875), E), Unit.LENGTH),
                        Item.Group.of("inside", new Item.Flag("clear", true), new Item.Count("flutes", 4)),
                        new Item.Rows("rows", List.of(Item.Group.of("row", new Item.Count("land", 1)))),
                        new Item.Lines("steps", List.of("one", "two")),
                        new Item.BandFigure(
                                "torque",
                                new Item.Point(1, D),
                                new Item.Point(2, D),
                                new Item.Point(3, D),
                                Unit.TORQUE)),
                List.of(new Step(D, 15.875), new Step(E, 14.875)),
                List.of(new Caution("thin", "margin is thin", "E")));
    }

    @Test
    void aFigureHasItsValueItsUnitAndItsStep() {
        assertThat(JsonAnswer.line(document(UnitSystem.INCH), false))
                .isEqualTo("{\"name\":\"é \\\"quoted\\\"\",\"major\":{\"value\":0.625,\"unit\":\"in\",\"step\":\"d\"},"
                        + "\"tilt\":{\"value\":0.3,\"unit\":\"deg\",\"step\":\"a\"},"
                        + "\"pitch\":{\"min\":null,\"max\":0.585629921260,\"unit\":\"in\",\"steps\":{\"max\":\"E\"}},"
                                .replace("921260", "92126")
                        + "\"inside\":{\"clear\":true,\"flutes\":4},\"rows\":[{\"land\":1}],"
                        + "\"steps\":[\"one\",\"two\"],"
                        + "\"torque\":{\"low\":1,\"expected\":2,\"high\":3,\"unit\":\"N·m\","
                        + "\"steps\":{\"low\":\"d\",\"expected\":\"d\",\"high\":\"d\"}},"
                        + "\"cautions\":[{\"code\":\"thin\",\"text\":\"margin is thin\",\"raisedBy\":\"E\"}]}");
    }

    @Test
    void stepsKeepTheUnitOfTheirFormula() {
        assertThat(JsonAnswer.line(document(UnitSystem.INCH), true))
                .contains("{\"symbol\":\"E\",\"formula\":\"d - 1\",\"value\":14.875,\"unit\":\"mm\","
                        + "\"source\":\"derived, example\",\"trust\":\"derived\",\"means\":\"one less\"}");
    }

    @Test
    void aRefusalNamesEveryField() {
        assertThat(JsonAnswer.refusalLine(List.of(new Finding("a", "x", "is not y", "do z"))))
                .isEqualTo("{\"refused\":[{\"field\":\"a\",\"given\":\"x\",\"why\":\"is not y\",\"mend\":\"do z\"}]}");
    }

    @Test
    void numbersHaveTwelveDigitsAndNoBinaryNoise() {
        assertThat(JsonAnswer.digits(0.1 + 0.2)).isEqualTo("0.3");
        assertThat(JsonAnswer.digits(-0.0)).isEqualTo("0");
        assertThat(JsonAnswer.digits(1200)).isEqualTo("1200");
        assertThat(JsonAnswer.digits(1.0 / 3)).isEqualTo("0.333333333333");
        assertThat(JsonAnswer.digits(2.5e-9)).isEqualTo("2.5E-9");
    }

    @Test
    void everyNumberReadsBackToTwelveDigits() {
        Random random = new Random(20261125);
        for (int i = 0; i < 20_000; i++) {
            double value = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(-12, 14));
            double back = Double.parseDouble(JsonAnswer.digits(value));
            assertThat(Math.abs(back - value)).isLessThanOrEqualTo(Math.abs(value) * 1e-11);
        }
    }

    @Test
    void everyFigureIsListedWithItsPath() {
        assertThat(document(UnitSystem.METRIC).figures())
                .extracting(Document.Shown::path)
                .containsExactly(
                        "example.major",
                        "example.tilt",
                        "example.pitch.max",
                        "example.torque.low",
                        "example.torque.expected",
                        "example.torque.high");
    }
}
