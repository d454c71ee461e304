// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.tap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import landfall.choice.Reach;
import landfall.choice.TapAdvice;
import landfall.choice.TapWish;
import landfall.fault.Answer;
import landfall.identity.Candidate;
import landfall.identity.Identification;
import landfall.identity.Sighting;
import landfall.quantity.Length;
import landfall.quantity.UnitSystem;
import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Ink;
import landfall.sheets.draw.Spot;
import landfall.sheets.draw.Svg;
import landfall.sheets.draw.Texts;
import landfall.sheets.figure.Figures;
import landfall.thread.CallOut;
import landfall.thread.callout.CallOuts;
import landfall.thread.callout.StandardThreads;
import landfall.working.Worked;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("Drawings of a tap")
class TapSketchesTest {
    private static final Figures MM = new Figures(UnitSystem.METRIC);
    private static final Figures INCH = new Figures(UnitSystem.INCH);
    /** Coordinates are written to 0.01. */
    private static final double WRITTEN = 0.0151;

    private static List<Reach> reaches(CallOut callOut) {
        List<Reach> reaches = new ArrayList<>();
        for (boolean byHand : new boolean[] {true, false}) {
            TapWish.Drive drive = new TapWish.Drive(byHand, null);
            TapWish wish = new TapWish(callOut, null, TapWish.Place.UNKNOWN, drive);
            if (TapAdvice.of(wish) instanceof Answer.Of<Worked<TapAdvice>> advice) {
                advice.value().value().reach().ifPresent(reaches::add);
            }
        }
        return reaches;
    }

    @Test
    void everyBlankOfEveryStandardThreadDraws() {
        List<String> wrong = new ArrayList<>();
        int drawn = 0;
        for (CallOut callOut : StandardThreads.all()) {
            for (Reach reach : reaches(callOut)) {
                for (Figures figures : List.of(MM, INCH)) {
                    try {
                        Texts.fitAndKeepApart(new BlankView(callOut.thread(), reach, figures).draw("b", Ink.PAPER));
                        drawn++;
                    } catch (AssertionError | RuntimeException e) {
                        wrong.add(callOut.normal() + ": " + e);
                    }
                }
            }
        }
        assertThat(wrong).isEmpty();
        assertThat(drawn).isGreaterThan(300);
    }

    /** Overall, thread and shank as drawn, over the scale, are the blank's own. */
    @ParameterizedTest
    @CsvSource({"M8x1.25", "1/4-20 UNC", "1/2-13 UNC", "M24x3", "M3x0.5"})
    void theBlankIsToScale(String text) {
        CallOut callOut = CallOuts.read(text).orThrow();
        for (Reach reach : reaches(callOut)) {
            BlankView view = new BlankView(callOut.thread(), reach, MM);
            List<Spot> body =
                    Svg.places(Svg.paths(view.draw("b", Ink.PAPER), "outline").get(0));
            double ratio = view.scale().ratio();
            double overall = reach.blank().lengths().overall().mm();
            assertThat((body.get(6).x() - body.get(0).x()) / ratio).isCloseTo(overall, within(2 * WRITTEN / ratio));
            double thread = reach.blank().lengths().thread().mm();
            assertThat((body.get(2).x() - body.get(0).x()) / ratio).isCloseTo(thread, within(2 * WRITTEN / ratio));
            double shank = body.get(10).y() - body.get(3).y();
            assertThat(shank / ratio).isCloseTo(reach.blank().shank().mm(), within(2 * WRITTEN / ratio));
            double square = body.get(7).y() - body.get(6).y();
            assertThat(square / ratio).isCloseTo(reach.blank().square().mm(), within(2 * WRITTEN / ratio));
        }
    }

    @Test
    void wordsSayWhetherTheShankFollows() {
        CallOut half = CallOuts.read("1/2-13 UNC").orThrow();
        CallOut quarter = CallOuts.read("1/4-20 UNC").orThrow();
        String follows = new BlankView(half.thread(), reaches(half).get(0), INCH)
                .draw("b", Ink.SCREEN)
                .svg();
        String stops = new BlankView(quarter.thread(), reaches(quarter).get(0), INCH)
                .draw("b", Ink.SCREEN)
                .svg();
        assertThat(follows).contains("The shank follows into the hole").contains("Centre holes in both ends");
        assertThat(stops).contains("The shank stops at the hole").contains("Male centre at the point");
    }

    @Test
    void candidatesOfAnySightingDraw() {
        Random random = new Random(5);
        int some = 0;
        for (int i = 0; i < 150; i++) {
            CallOut callOut = StandardThreads.all()
                    .get(random.nextInt(StandardThreads.all().size()));
            Length seen = callOut.thread().major().times(1 + random.nextGaussian() * 0.01);
            Length uncertainty = Length.ofMm(0.005 + random.nextDouble() * 0.3);
            Sighting sighting = new Sighting(seen, callOut.thread().pitch(), uncertainty, Sighting.Seen.NOTHING);
            Identification found = Identification.of(sighting).value();
            if (!found.candidates().isEmpty()) {
                for (Figures figures : List.of(MM, INCH)) {
                    Texts.fitAndKeepApart(new CandidatesView(found, seen, uncertainty, figures).draw("c", Ink.PAPER));
                }
                some++;
            }
        }
        assertThat(some).isGreaterThan(100);
    }

    /** From the tick to the line of the measured diameter is how far the crest stands over nominal. */
    @Test
    void ticksStandAtNominal() {
        Sighting sighting =
                new Sighting(Length.ofInch(0.2545), Length.ofInch(0.05), Length.ofMm(0.02), Sighting.Seen.NOTHING);
        Identification found = Identification.of(sighting).value();
        CandidatesView view = new CandidatesView(found, sighting.major(), sighting.uncertainty(), INCH);
        List<String> lines = Svg.paths(view.draw("c", Ink.PAPER), "outline");
        Candidate first = found.candidates().get(0);
        double measured = Svg.places(lines.get(0)).get(0).x();
        double tick = Svg.places(lines.get(1)).get(0).x();
        double ratio = view.scale().ratio();
        assertThat((measured - tick) / ratio).isCloseTo(first.overNominal().mm(), within(2 * WRITTEN / ratio));
    }

    @Test
    void everyPartOfAMarkingIsNumberedAndExplained() {
        List<MarkingView.Part> parts = List.of(
                new MarkingView.Part("1/4-20 UNC", "thread: 1/4 in, 20 threads an inch, Unified coarse"),
                new MarkingView.Part("GH3", "limit of pitch diameter, .0010 to .0015 in over basic; ground thread"),
                new MarkingView.Part("HSS", "high-speed steel"),
                new MarkingView.Part("LH", "left hand"),
                new MarkingView.Part("3 FLUTES", "three flutes"));
        Drawing drawing = new MarkingView(parts).draw("m", Ink.SCREEN);
        Texts.fitAndKeepApart(drawing);
        assertThat(Svg.paths(drawing, "wanted")).hasSize(parts.size());
        String words = drawing.texts().stream().map(text -> text.text()).reduce("", (a, b) -> a + " " + b);
        parts.forEach(part -> assertThat(words).contains(part.text()));
        assertThat(words).contains("high-speed steel").contains("left hand");
    }
}
