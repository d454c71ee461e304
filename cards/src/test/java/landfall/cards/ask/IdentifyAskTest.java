// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import landfall.cards.answer.JsonAnswer;
import landfall.fault.Finding;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("identify: what is this tap?")
class IdentifyAskTest {
    private static String json(Map<String, String> typed) {
        var document = new IdentifyAsk().answer(typed).orThrow();
        Walk.through(document);
        return JsonAnswer.line(document, false);
    }

    @Test
    void aBareDecimalIsInchWhenThreadsPerInchAreGiven() {
        assertThat(json(Map.of("major", ".2545", "tpi", "20")))
                .startsWith("{\"candidates\":[{\"callout\":\"1/4-20 UNC\",\"score\":")
                .contains("\"tellApart\":\"1/4-20 UNC or 1/4-20 BSW: hold a thread gauge to the flanks: 60.0 or"
                        + " 55.0 deg.\"")
                .contains("\"code\":\"uncertaintyAssumed\"");
    }

    @Test
    void metricIsRead() {
        assertThat(json(Map.of("major", "8.05", "pitch", "1.25", "uncertainty", "0.02", "hand", "left")))
                .startsWith("{\"candidates\":[{\"callout\":\"M8x1.25-LH\"");
    }

    @Test
    void pitchIsToldOnce() {
        assertThat(new IdentifyAsk().answer(Map.of("major", "8")).findings())
                .extracting(Finding::sentence)
                .containsExactly(
                        "pitch: \"neither pitch nor tpi\" must be told once. To mend: give pitch, the distance from"
                                + " crest to crest, or tpi, the threads in an inch.");
    }
}
