// SPDX-License-Identifier: Apache-2.0
package landfall.cards.answer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
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

@DisplayName("Answers as text of 80 columns")
class TextAnswerTest {
    static final Rule P = Rule.given("P", "mm", "pitch");
    static final Rule D2 =
            new Rule("D2", "D - 0.64952 * P", "mm", Source.of("iso-724", ""), Trust.STANDARD, "pitch diameter");

    static Item.Point mm(double mm) {
        return new Item.Point(mm, D2);
    }

    static Document document(UnitSystem units) {
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
                                new Item.Range("minor", null, mm(6.912), Unit.LENGTH))),
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

                        Cautions
                          ! this pitch is not in the tables of the standard for this diameter; its
                            limits are computed by formula and preferred number (P)
                        """);
    }

    private static Item.Group pass(String kind, int count, Item.Figure... infeed) {
        List<Item> items = new ArrayList<>(List.of(new Item.Text("kind", kind), new Item.Count("count", count)));
        items.addAll(List.of(infeed));
        return new Item.Group("pass", items);
    }

    private static Item.Group target(String place, double deg, double mm) {
        return Item.Group.of(
                "target",
                new Item.Text("place", place),
                Item.Figure.of("land", Angle.ofDeg(deg), P),
                Item.Figure.of("reading", Length.ofMm(mm), P));
    }

    @Test
    void aTableHasALineARowOrIsReadAcrossAndDown() {
        Item passes = new Item.Rows(
                "passes",
                List.of(pass("rough", 3, Item.Figure.of("infeed", Length.ofMm(0.0174), P)), pass("spark out", 2)));
        Item dial = new Item.Rows(
                "dial",
                List.of(target("end", 0, 0), target("flank", 0, 0), target("end", 5, 0.2), target("flank", 5, -0.0174)),
                new Item.Cross("place", "land", "reading"));
        Document document = new Document("grind", "M8", UnitSystem.METRIC, List.of(passes, dial), List.of(), List.of());
        assertThat(TextAnswer.write(document)).isEqualTo("""
                        Regrind set-up: M8
                        ==================

                        Passes, all lands at each setting
                          pass       times  infeed, square
                                                        mm
                          rough          3           0.017
                          spark out      2

                        Dial targets: zero at the edge, turned in the cutting sense
                           land    end   flank
                            deg     mm      mm
                          0.000  0.000   0.000
                          5.000  0.200  -0.017
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
                                    given: 1.25 mm
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
