// SPDX-License-Identifier: Apache-2.0
package landfall.app.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import landfall.app.example.Examples;
import landfall.app.question.Questions;
import landfall.cards.answer.Document;
import landfall.cards.ask.Question;
import org.junit.jupiter.api.Test;

/** Any answer can be laid out, and every figure of it opens into its working. */
class AnyAnswerTest {
    private static Map<String, Map<String, String>> asked() {
        Map<String, Map<String, String>> asked = new LinkedHashMap<>();
        asked.put("thread", Map.of("thread", "1/4-20 UNC-2A"));
        asked.put("hole", Map.of("thread", "M8x1.25-6H", "depth", "16 mm", "blind", "yes"));
        asked.put("grind", Examples.all().get(0).typed());
        Map<String, String> dial = new LinkedHashMap<>(Examples.all().get(2).typed());
        dial.put("readings", readings());
        asked.put("dial", dial);
        asked.put("life", Examples.all().get(1).typed());
        asked.put("gauge", Map.of("thread", "1/4-20 UNC-2A", "wire", ".0289", "over", ".2625"));
        asked.put("identify", Map.of("major", ".2545", "tpi", "20"));
        return asked;
    }

    private static String readings() {
        try {
            return Files.readString(Path.of("../examples/readings-m10.csv"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Document answer(Question question, Map<String, String> typed) {
        Map<String, String> own = new LinkedHashMap<>(typed);
        own.keySet().retainAll(question.form().paths());
        return question.answer(own).orThrow();
    }

    @Test
    void everyAnswerIsLaidOutInSections() {
        asked().forEach((noun, typed) -> {
            Question question = Questions.of(noun).orElseThrow();
            AnswerView view = new AnswerView(answer(question, typed));
            assertThat(view.sections()).as(noun).isNotEmpty();
        });
    }

    @Test
    void everyFigureOpensIntoItsWorking() {
        asked().forEach((noun, typed) -> {
            Question question = Questions.of(noun).orElseThrow();
            AnswerView view = new AnswerView(answer(question, typed));
            List<FigureView> figures = view.sections().stream()
                    .flatMap(section -> section.figures().stream())
                    .toList();
            assertThat(figures).as(noun).allMatch(figure -> !figure.working().isEmpty());
        });
    }
}
