// SPDX-License-Identifier: Apache-2.0
package landfall.cards.spread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import landfall.cards.Cards;
import landfall.cards.answer.JsonAnswer;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.spread.Run;
import landfall.spread.Summary;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("Many set-ups as they are told")
class SpreadSetupTest {
    private static final Map<String, String> CARDS = Cards.typed("tap-m8.json", "fixture-three-lobes.json");

    static Map<String, String> map(String... pairs) {
        Map<String, String> map = new LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            map.put(pairs[i], pairs[i + 1]);
        }
        return map;
    }

    private static SpreadWish grind(Map<String, String> vary, Map<String, String> watch, String samples) {
        return new SpreadWish("grind", CARDS, vary, watch, map("samples", samples, "seed", "7"));
    }

    private static Summary run(SpreadSetup setup) {
        return setup.run(2).go(Run.Watch.NONE);
    }

    private static final Map<String, String> SETTING =
            map("swivel", "normal 0.25 deg", "radial-rise", "normal 0.02 mm");
    private static final Map<String, String> WORKING = map("asSet.working", "4 deg to 7 deg");

    @Test
    void theClosedFormGivesWhatTheAskerGives() {
        SpreadSetup setup = SpreadSetup.of(grind(SETTING, WORKING, "600")).orThrow();
        assertThat(setup.model()).isInstanceOf(ClosedForm.class);
        Summary closed = run(setup);
        Summary asked = new Run(setup.plan(), setup.asked(), 2).go(Run.Watch.NONE);
        for (int k = 0; k < 512; k++) {
            assertThat(closed.first().results().get(0)[k])
                    .isCloseTo(asked.first().results().get(0)[k], within(1e-12));
        }
        assertThat(closed.results().get(0).moments().mean())
                .isCloseTo(asked.results().get(0).moments().mean(), within(1e-12));
    }

    /** 0.02 mm of 0.43456 mm at 6.4953 deg is 0.297 deg: the other errors hardly add to it. */
    @Test
    void theSpreadOfTheReliefIsWhatTheLawSaysToFirstOrder() {
        SpreadSetup setup = SpreadSetup.of(grind(SETTING, WORKING, "50000")).orThrow();
        Summary summary = run(setup);
        assertThat(summary.results().get(0).moments().deviation()).isCloseTo(0.298, within(0.005));
        List<SpreadCause> causes = SpreadCause.of(setup, summary);
        assertThat(causes.get(0).varied().path()).isEqualTo("radial-rise");
        assertThat(causes.get(0).found().total()).isGreaterThan(0.98);
    }

    @Test
    void whatIsSetStaysSetWhileTheTapVaries() {
        Map<String, String> vary = map("chamfer.pointDiameter", "uniform 0.2 mm");
        SpreadSetup held = SpreadSetup.of(grind(vary, WORKING, "200")).orThrow();
        assertThat(held.given()).containsKeys("swivel", "radial-rise", "axial-rise");
        Summary summary = run(held);
        // on a larger point the same fall is less relief: 0.2 mm is 0.05 of a radius of 3.6 mm
        assertThat(summary.results().get(0).moments().deviation()).isBetween(0.04, 0.06);
        SpreadSetup free =
                SpreadSetup.of(grind(vary, map("relief.working", ""), "200")).orThrow();
        assertThat(free.given()).doesNotContainKey("swivel");
        assertThat(run(free).results().get(0).moments().deviation()).isZero();
    }

    @ParameterizedTest
    @CsvSource({
        "normal 9 deg; 0.2 deg, 9",
        "normal 9deg 0.2deg, 9",
        "'normal 9 deg, 0.2 deg', 9",
        "uniform 8 deg; 10 deg, 9",
        "range 8 deg to 10 deg step 0.5 deg, 9",
        "list 8 deg; 9.25 deg; 10 deg, 9.25",
        "measured 9 deg; 8.9 deg; 9.3 deg, 9"
    })
    void lawsAreRead(String law, double middle) {
        SpreadSetup setup =
                SpreadSetup.of(grind(map("swivel", law), WORKING, "1")).orThrow();
        assertThat(setup.varied().get(0).law().middle()).isCloseTo(middle, within(1e-12));
        assertThat(setup.varied().get(0).text(9.25)).isIn("9.25 deg");
    }

    @Test
    void drillsAreAListAndEachIsToldByItsName() {
        SpreadWish wish = new SpreadWish(
                "hole",
                map("thread", "1/4-20 UNC-2B"),
                map("share", "range 60 % to 80 % step 5 %"),
                map("drill.share", "55 % to 85 %"),
                map("samples", "500"));
        SpreadSetup setup = SpreadSetup.of(wish).orThrow();
        List<AlongPoint> along = AlongPoint.of(setup, run(setup));
        assertThat(along).extracting(AlongPoint::text).containsExactly("60 %", "65 %", "70 %", "75 %", "80 %");
        assertThat(along).extracting(point -> point.moments().deviation()).containsOnly(0.0);
    }

    @Test
    void wordsVaryToo() {
        SpreadWish wish = new SpreadWish(
                "grind",
                CARDS,
                map("wear", "list fresh; due; spent"),
                map("stock.square", "0.1 mm or more"),
                map("samples", "300"));
        SpreadSetup setup = SpreadSetup.of(wish).orThrow();
        List<AlongPoint> along = AlongPoint.of(setup, run(setup));
        assertThat(along).extracting(AlongPoint::text).containsExactly("fresh", "due", "spent");
        assertThat(along.get(0).moments().mean())
                .isLessThan(along.get(2).moments().mean());
    }

    @Test
    void everythingThatIsWrongIsFoundAtOnce() {
        Answer<SpreadSetup> answer = SpreadSetup.of(new SpreadWish(
                "grind",
                CARDS,
                map("swivl", "normal 1 deg; 2 deg", "radial-rise", "nromal 1 mm", "wear", "uniform 1 deg; 2 deg"),
                map(),
                map("samples", "0", "seeds", "3")));
        assertThat(answer.findings())
                .extracting(Finding::field)
                .containsExactlyInAnyOrder("samples", "seeds", "watch", "vary.swivl", "vary.radial-rise", "vary.wear");
    }

    @Test
    void aResultThatIsNotThereIsRefusedWithTheNearest() {
        Answer<SpreadSetup> answer = SpreadSetup.of(grind(SETTING, map("asSet.workng", "4 to 7"), "10"));
        assertThat(answer.findings()).singleElement().satisfies(found -> {
            assertThat(found.field()).isEqualTo("watch.asSet.workng");
            assertThat(found.mend()).contains("asSet.working");
        });
    }

    @ParameterizedTest
    @ValueSource(strings = {"7 deg to 4 deg", "4 mm to 7 mm", "about 5", "deg"})
    void limitsThatAreNoneAreRefused(String limits) {
        Answer<SpreadSetup> answer = SpreadSetup.of(grind(SETTING, map("asSet.working", limits), "10"));
        assertThat(answer.findings()).extracting(Finding::field).containsExactly("watch.asSet.working");
    }

    @Test
    void setUpsThatCannotBeMadeAreCountedWithTheirReason() {
        SpreadSetup setup = SpreadSetup.of(
                        grind(map("working-relief", "uniform 2 deg; 30 deg"), map("relief.static", ""), "400"))
                .orThrow();
        Summary summary = run(setup);
        assertThat(summary.refusals()).isBetween(100L, 300L);
        assertThat(SpreadDocument.of(setup, summary).cautions().get(0).code()).isEqualTo("setupsRefused");
        assertThat(SpreadText.write(setup, summary)).contains("Set-ups that cannot be made");
    }

    @Test
    void aFileGivesTheSameRun() {
        SpreadWish wish = grind(SETTING, WORKING, "1500");
        Answer<SpreadWish> read = SpreadFile.read(SpreadFile.write(wish));
        assertThat(read.orThrow()).isEqualTo(wish);
        assertThat(answer(read.orThrow())).isEqualTo(answer(wish));
    }

    private static String answer(SpreadWish wish) {
        SpreadSetup setup = SpreadSetup.of(wish).orThrow();
        return JsonAnswer.write(SpreadDocument.of(setup, run(setup)));
    }

    @Test
    void aStoppedRunGoesOnToTheSameDigits() {
        SpreadSetup setup = SpreadSetup.of(grind(SETTING, WORKING, "20000")).orThrow();
        AtomicInteger blocks = new AtomicInteger();
        Summary part = setup.run(2).go(Run.Watch.of(() -> blocks.get() == 5, summary -> blocks.incrementAndGet()));
        assertThat(part.samples()).isEqualTo(5 * 512);
        SpreadState state = SpreadState.of(new SpreadState(setup, part).bytes(), "spread.state")
                .orThrow();
        Summary whole = state.setup().run(7).goOn(state.summary(), Run.Watch.NONE);
        assertThat(JsonAnswer.write(SpreadDocument.of(state.setup(), whole)))
                .isEqualTo(JsonAnswer.write(SpreadDocument.of(setup, run(setup))));
    }

    @Test
    void whatIsNoStateIsRefused() {
        assertThat(SpreadState.of(new byte[] {1, 2, 3}, "x").findings())
                .extracting(Finding::field)
                .containsExactly("state");
    }

    @Test
    void noFigureIsShownWithMorePlacesThanItsSamplingErrorLeaves() {
        SpreadSetup setup = SpreadSetup.of(grind(SETTING, WORKING, "300")).orThrow();
        String text = SpreadText.write(setup, run(setup));
        // 0.3 deg over the root of 300 is 0.017 deg: two places, and no third
        assertThat(text).containsPattern("mean \\d\\.\\d\\d, ").doesNotContainPattern("mean \\d\\.\\d\\d\\d");
        List<String> long80 =
                new ArrayList<>(text.lines().filter(line -> line.length() > 80).toList());
        assertThat(long80).isEmpty();
    }
}
