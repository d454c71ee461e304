// SPDX-License-Identifier: Apache-2.0
package landfall.cards.spread;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Optional;
import landfall.cards.Cards;
import landfall.cards.answer.JsonAnswer;
import landfall.spread.Run;
import landfall.spread.Summary;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A run that goes on by itself")
class SpreadRunningTest {
    private static SpreadSetup setup(String samples) {
        return SpreadSetup.of(new SpreadWish(
                        "grind",
                        Cards.typed("tap-m8.json", "fixture-three-lobes.json"),
                        Map.of("swivel", "normal 0.25 deg"),
                        Map.of("asSet.working", "4 deg to 7 deg"),
                        Map.of("samples", samples)))
                .orThrow();
    }

    private static String answer(SpreadSetup setup, Summary summary) {
        return JsonAnswer.write(SpreadDocument.of(setup, summary));
    }

    @Test
    void endsWithTheWholeAnswer() throws InterruptedException {
        SpreadSetup setup = setup("5000");
        SpreadRunning running = SpreadRunning.start(setup, null, 2);
        assertThat(running.await(60)).isTrue();
        assertThat(running.reached()).isEqualTo(new SpreadRunning.Reached(5000, 5000, true, Optional.empty()));
        assertThat(answer(setup, running.latest().orElseThrow()))
                .isEqualTo(answer(setup, setup.run(1).go(Run.Watch.NONE)));
    }

    /** Far more set-ups than can be made before the stop; what there was goes on to the same digits as another run. */
    @Test
    void stopsWhenToldAndItsStateGoesOn() throws InterruptedException {
        SpreadSetup setup = setup("900000000");
        SpreadRunning running = SpreadRunning.start(setup, null, 2);
        running.stop();
        assertThat(running.await(60)).isTrue();
        Summary part = running.latest().orElseThrow();
        assertThat(part.samples()).isBetween(512L, 899_999_999L);
        assertThat(running.reached().isEnded()).isTrue();
        SpreadState state =
                SpreadState.of(new SpreadState(setup, part).bytes(), "state").orThrow();
        assertThat(answer(state.setup(), state.summary())).isEqualTo(answer(setup, part));
        assertThat(SpreadText.write(setup, part)).contains("Stopped after");
    }

    @Test
    void whatWasLookedAtMeanwhileIsNotChangedAfterwards() throws InterruptedException {
        SpreadSetup setup = setup("2000000");
        SpreadRunning running = SpreadRunning.start(setup, null, 2);
        Summary seen = null;
        while (seen == null) {
            seen = running.latest().orElse(null);
            Thread.onSpinWait();
        }
        String before = answer(setup, seen);
        assertThat(running.await(120)).isTrue();
        assertThat(seen == running.latest().orElseThrow() || answer(setup, seen).equals(before))
                .isTrue();
    }
}
