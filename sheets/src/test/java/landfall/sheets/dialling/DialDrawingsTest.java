// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.dialling;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import landfall.dialling.FitCourse;
import landfall.dialling.RunOut;
import landfall.quantity.Length;
import landfall.quantity.UnitSystem;
import landfall.sheets.dial.Needle;
import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Ink;
import landfall.sheets.draw.Spot;
import landfall.sheets.draw.Svg;
import landfall.sheets.draw.TextBox;
import landfall.sheets.draw.Texts;
import landfall.sheets.figure.Figures;
import landfall.thread.Hand;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DialDrawingsTest {
    private static final Figures MM = new Figures(UnitSystem.METRIC);
    private static final Figures INCH = new Figures(UnitSystem.INCH);
    private static final Dialled AIMED = Dialled.of(new Dialled.Wanted(3, 0.002, 0, true));
    private static final Dialled SLIPPED = Dialled.of(new Dialled.Wanted(3, 0.001, 0.09, true));

    static Stream<Dialled> dialled() {
        return Stream.of(
                AIMED,
                SLIPPED,
                Dialled.of(new Dialled.Wanted(2, 0.002, 0, true)),
                Dialled.of(new Dialled.Wanted(4, 0.002, 0, false)),
                Dialled.of(new Dialled.Wanted(6, 0.004, 0, true)),
                Dialled.of(new Dialled.Wanted(8, 0.002, 0.09, false)));
    }

    private static Drawing edges(Dialled dialled, Hand hand, Figures figures) {
        EdgesView.Round round = new EdgesView.Round(
                dialled.ask().tap().flutes(), dialled.ask().tap().land(), hand);
        return new EdgesView(dialled.found(), round, figures).draw("edges", Ink.PAPER);
    }

    @ParameterizedTest
    @MethodSource("dialled")
    void everyTextFitsItsDrawingAndNoTwoTextsOverlap(Dialled dialled) {
        for (Figures figures : List.of(MM, INCH)) {
            Texts.fitAndKeepApart(new LandPlot(dialled.found(), figures).draw("plot", Ink.PAPER));
            Texts.fitAndKeepApart(edges(dialled, Hand.LEFT, figures));
        }
        ReadFaces faces = new ReadFaces(dialled.ask(), dialled.found());
        for (ReadFaces.Row row : faces.rows()) {
            faces.draw(row, "dial", Ink.PAPER)
                    .forEach(face -> assertThat(face.texts())
                            .allSatisfy(text -> assertThat(text.right()).isLessThanOrEqualTo(45.05)));
        }
    }

    @Test
    void eachLandHasItsFacesFromEdgeToHeelWithBothNeedles() {
        ReadFaces faces = new ReadFaces(AIMED.ask(), AIMED.found());
        assertThat(faces.rows())
                .hasSize(3)
                .allSatisfy(row -> assertThat(row.needles())
                        .extracting(Needle::where)
                        .containsExactly(
                                "land %d edge".formatted(row.land()),
                                "land %d mid-land".formatted(row.land()),
                                "land %d heel".formatted(row.land())));
        for (Needle needle : faces.rows().get(0).needles()) {
            FitCourse.At at = AIMED.found().course().readings().stream()
                    .filter(one ->
                            one.reading().land() == 1 && one.reading().angle().equals(needle.land()))
                    .findFirst()
                    .orElseThrow();
            assertThat(needle.read()).isEqualTo(at.reading().value());
            assertThat(needle.wanted()).isEqualTo(at.wanted());
        }
    }

    /** From where it was read, so many divisions bring it where it should stand. */
    @Test
    void theWordsUnderAFaceSayHowFarToBringTheNeedle() {
        ReadFaces faces = new ReadFaces(AIMED.ask(), AIMED.found());
        Needle heel = faces.rows().get(0).needles().get(2);
        double off =
                requireNonNull(heel.wanted()).minus(requireNonNull(heel.read())).mm();
        String divisions = Figures.plain(Math.abs(off) / 0.01, 1);
        assertThat(heel.mend()).isEqualTo("bring it " + divisions + " div " + (off < 0 ? "back" : "forward"));
    }

    @Test
    void withNothingWantedThereIsOnlyWhatWasRead() {
        Dialled bare = Dialled.of(new Dialled.Wanted(4, 0.002, 0, false));
        ReadFaces faces = new ReadFaces(bare.ask(), bare.found());
        assertThat(faces.rows())
                .allSatisfy(row -> assertThat(row.needles())
                        .allSatisfy(needle -> assertThat(needle.wanted()).isNull()));
        Drawing face = faces.draw(faces.rows().get(0), "dial", Ink.PAPER).get(0);
        assertThat(Svg.paths(face, "solid")).isEmpty();
        assertThat(face.svg()).contains("It was read at").doesNotContain("should stand");
    }

    /** Scale law: how far a curve drops on paper over how far the fit is off at edge and heel. */
    @Test
    void theCurvesAreToScale() {
        LandPlot plot = new LandPlot(AIMED.found(), MM);
        Drawing drawing = plot.draw("plot", Ink.PAPER);
        FitCourse.OfLand land = AIMED.found().course().lands().get(0);
        double off = off(land.points().get(land.points().size() - 1))
                - off(land.points().get(0));
        List<Spot> curve = Svg.places(Svg.paths(drawing, "fine").get(0));
        double ratio = Double.parseDouble(drawing.svg().replaceAll("(?s).*, ([0-9.]+) : 1<.*", "$1"));
        assertThat(curve.get(0).y() - curve.get(curve.size() - 1).y()).isCloseTo(off * ratio, within(0.03));
    }

    private static double off(FitCourse.Point point) {
        return point.fitted().mm() - requireNonNull(point.wanted()).mm();
    }

    @Test
    void anOutlierIsFramedAndNamed() {
        Drawing drawing = new LandPlot(SLIPPED.found(), MM).draw("plot", Ink.PAPER);
        assertThat(Svg.paths(drawing, "alarm")).hasSize(1);
        assertThat(drawing.texts()).extracting(TextBox::text).contains("outlier");
        assertThat(drawing.svg()).contains("Outliers: land 2 at 20\u00b0.");
        assertThat(ReadRows.of(SLIPPED.found(), MM).stream().filter(ReadRows.Row::outlier))
                .singleElement()
                .satisfies(row -> assertThat(row.land()).isEqualTo(2));
    }

    /** The arrow stands where the fit says; on a left-hand tap it is the mirror image. */
    @Test
    void theHighSideIsDrawnWhereItLiesAndMirroredForTheLeftHand() {
        RunOut runOut = requireNonNull(AIMED.found().runOut());
        double deg = requireNonNull(runOut.direction()).value().deg();
        assertThat(Math.IEEEremainder(deg - (360 - 28.8), 360)).isCloseTo(0, within(12.0));
        assertThat(Math.IEEEremainder(way(Hand.RIGHT) - (90 - deg), 360)).isCloseTo(0, within(0.2));
        assertThat(Math.IEEEremainder(way(Hand.LEFT) - (90 + deg), 360)).isCloseTo(0, within(0.2));
    }

    private static double way(Hand hand) {
        Spot axis = Spot.at(46, 42);
        Spot tip = Svg.places(Svg.paths(edges(AIMED, hand, MM), "solid").stream()
                        .filter(path -> axis.distance(Svg.places(path).get(0)) > 15.4
                                && axis.distance(Svg.places(path).get(0)) < 15.6)
                        .findFirst()
                        .orElseThrow())
                .get(0);
        return axis.direction(tip);
    }

    @Test
    void theTableHoldsWhatWasReadAndWhatItIsHeldAgainst() {
        ReadRows.Row first = ReadRows.of(AIMED.found(), MM).get(0);
        FitCourse.At at = AIMED.found().course().readings().get(0);
        assertThat(first.read()).isEqualTo(MM.signed(at.reading().value()));
        assertThat(first.against().should()).isEqualTo(MM.signed(requireNonNull(at.wanted())));
        assertThat(first.against().left()).isEqualTo(MM.signed(at.left()));
    }

    @Test
    void theTurnsAreTheCorrectionsInTheirOrderWithDivisions() {
        List<Turns.Turn> turns = Turns.of(AIMED.found(), Length.ofMm(0.01), MM);
        assertThat(turns).hasSameSizeAs(AIMED.found().corrections());
        for (int i = 0; i < turns.size(); i++) {
            var correction = AIMED.found().corrections().get(i);
            assertThat(turns.get(i).act()).isEqualTo(correction.act());
            if (correction.length() != null) {
                assertThat(turns.get(i).by()).isEqualTo(MM.length(correction.length()));
                assertThat(turns.get(i).beside())
                        .endsWith(Figures.number(correction.length().mm() / 0.01, 1) + " div");
            }
        }
    }
}
