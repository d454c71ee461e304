// SPDX-License-Identifier: Apache-2.0
package landfall.cards.answer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import landfall.fault.Caution;
import landfall.fault.Finding;
import landfall.quantity.Length;
import landfall.quantity.UnitSystem;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Step;
import landfall.working.Trust;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Answers as text of 80 columns")
class TextAnswerTest {
    static final Rule P = Rule.given("P", "mm", "pitch");
    static final Rule D2 =
            new Rule("D2", "D - 0.64952 * P", "mm", Source.of("iso-724", ""), Trust.STANDARD, "pitch diameter");

    static Item.Point mm(double mm) {
        return new Item.Point(mm, D2);
    }

    static Document document(UnitSystem units) {
        Item.Group plane = Item.Group.of(
                "plane",
                new Item.Text("name", "hand-tight"),
                Item.Figure.of("at", Length.ofMm(5.786), P),
                Item.Figure.of("major", Length.ofMm(20.95), P));
        return new Document(
                "thread",
                "M8x1.25-6H",
                units,
                List.of(
                        new Item.Text("callout", "M8x1.25-6H"),
                        new Item.Count("starts", 1),
                        Item.Figure.of("pitch", Length.ofMm(1.25), P),
                        Item.Figure.of("lead", Length.ofMm(1.25), P),
                        Item.Group.of(
                                "internal",
                                new Item.Text("class", "6H"),
                                new Item.Range("major", mm(8), null, Unit.LENGTH),
                                new Item.Range("pitch", mm(7.188), mm(7.348), Unit.LENGTH),
                                new Item.Range("minor", null, mm(6.912), Unit.LENGTH)),
                        Item.Group.of("taper", new Item.Rows("planes", List.of(plane, plane)))),
                List.of(new Step(P, 1.25), new Step(D2, 7.18809)),
                List.of(new Caution(
                        "notTabulated",
                        "this pitch is not in the tables of the standard for this diameter; its limits are computed "
                                + "by formula and preferred number",
                        "P")));
    }

    @Test
    void figuresStandUnderEachOther() {
        assertThat(TextAnswer.write(document(UnitSystem.METRIC))).isEqualTo("""
                        Limits of size: M8x1.25-6H
                        ==========================
                        Call-out                          M8x1.25-6H
                        Starts                            1
                        Pitch                                 1.250 mm     (0.0492 in)
                        Lead                                  1.250 mm     (0.0492 in)

                        Internal thread
                          Class                           6H
                          Major diameter                      8.000 mm or more
                          Pitch diameter                      7.188 to 7.348 mm
                          Minor diameter                      6.912 mm or less

                        Taper thread
                          Planes
                            plane       from small end   major
                                                    mm      mm
                            hand-tight           5.786  20.950
                            hand-tight           5.786  20.950

                        Cautions
                          ! this pitch is not in the tables of the standard for this diameter; its
                            limits are computed by formula and preferred number (P)
                        """);
    }

    @Test
    void anInchReaderGetsInchesAndTheWorkingKeepsItsUnits() {
        String text = TextAnswer.write(document(UnitSystem.INCH), true);
        assertThat(text)
                .contains("Pitch                                 0.0492 in    (1.250 mm)\n")
                .contains("  Pitch diameter                      0.2830 to 0.2893 in\n")
                .endsWith("""
                        Working
                          P         pitch
                                    = given = 1.25 mm
                                    [given; measured]
                          D2        pitch diameter
                                    = D - 0.64952 * P = 7.18809 mm
                                    [iso-724; standard]
                        """);
    }

    @Test
    void noLineIsLongerThanEightyColumns() {
        for (UnitSystem units : UnitSystem.values()) {
            assertThat(TextAnswer.write(document(units), true).lines())
                    .allSatisfy(line -> assertThat(Lay.columns(line)).isLessThanOrEqualTo(80));
        }
    }

    @Test
    void aRefusalSaysWhatGivenWhyAndMend() {
        assertThat(TextAnswer.refusal(List.of(
                        new Finding("chamfer.angle", "95 deg", "must be from 1 to 45 deg", "measure one side"),
                        new Finding("thread", "", "is needed", "give a call-out"))))
                .isEqualTo("""
                        Refused
                          chamfer.angle
                            given   95 deg
                            why     must be from 1 to 45 deg
                            mend    measure one side
                          thread
                            given   (nothing)
                            why     is needed
                            mend    give a call-out
                        """);
    }

    @Test
    void aSmallFigureIsNotShownAsNothing() {
        assertThat(Lay.figure(0.00012, 3)).isEqualTo("0.0001");
        assertThat(Lay.figure(-0.0004, 3)).isEqualTo("-0.0004");
        assertThat(Lay.figure(-1e-15, 3)).isEqualTo("0.000");
        assertThat(Lay.figure(0, 3)).isEqualTo("0.000");
        assertThat(Lay.figure(12.5, 0)).isEqualTo("13");
    }
}
