// SPDX-License-Identifier: Apache-2.0
package landfall.cards.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import landfall.cards.Cards;
import landfall.cards.answer.Document;
import landfall.cards.ask.Samples;
import landfall.cards.card.ShopCard;
import landfall.cards.crib.EventForms;
import landfall.cards.crib.ItemForms;
import landfall.cards.crib.ProspectForm;
import landfall.cards.crib.StockForm;
import landfall.cards.form.Form;
import landfall.cards.job.JobForms;
import landfall.cards.spread.SpreadFields;
import landfall.history.EventKind;
import landfall.history.ItemKind;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The file of words")
class WordsTest {
    /** Keys that are made of a fixed beginning and a path or name: each has its own rule below. */
    private static final List<String> MADE = List.of("field.", "label.", "noun.", "title.", "card.");

    private static final Pattern LITERAL = Pattern.compile("\"([a-z][A-Za-z0-9]*(?:\\.[A-Za-z0-9-]+)*\\.?)\"");

    private static final Set<String> LITERALS = literals();

    /** Forms of the questions, of the cards, and of the crib's things and events. */
    private static List<Form> forms() {
        List<Form> forms = new ArrayList<>(List.of(ShopCard.FORM));
        Samples.questions().forEach(question -> forms.add(question.form()));
        List.of(EventKind.values()).forEach(kind -> forms.add(EventForms.of(kind)));
        List.of(ItemKind.values()).forEach(kind -> forms.add(ItemForms.of(kind)));
        forms.add(ItemForms.FIRST);
        forms.add(EventForms.FIRST);
        forms.add(ProspectForm.FORM);
        forms.add(StockForm.FORM);
        forms.add(JobForms.JOB);
        forms.add(JobForms.HOLE);
        forms.add(SpreadFields.FORM);
        return forms;
    }

    private static Set<String> literals() {
        Set<String> found = new TreeSet<>();
        for (String module : List.of("cards", "sheets", "app")) {
            Path main = Cards.house().resolve(module).resolve("src/main");
            try (Stream<Path> files = Files.isDirectory(main) ? Files.walk(main) : Stream.empty()) {
                for (Path file : (Iterable<Path>) files::iterator) {
                    if (file.toString().matches(".*\\.(java|jte)")) {
                        Matcher literal = LITERAL.matcher(Files.readString(file));
                        while (literal.find()) {
                            found.add(literal.group(1));
                        }
                    }
                }
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return found;
    }

    @Test
    void everyFieldNounAndTitleHasItsWords() {
        for (Form form : forms()) {
            form.fields().forEach(field -> assertThat(field.means()).isNotBlank());
        }
        Samples.questions().forEach(question -> {
            assertThat(Words.of("noun." + question.noun())).isNotBlank();
            assertThat(Words.of("title." + question.noun())).isNotBlank();
        });
    }

    @Test
    void noneIsUnused() {
        Set<String> used = new TreeSet<>(LITERALS);
        for (Form form : forms()) {
            form.fields().forEach(field -> used.add("label." + field.words()));
            form.fields().forEach(field -> used.add("field." + field.words()));
        }
        Samples.questions()
                .forEach(question -> used.addAll(List.of("noun." + question.noun(), "title." + question.noun())));
        List.of("tap-card", "fixture-card", "shop-card").forEach(card -> used.add("card." + card));
        for (Document document : Samples.documents()) {
            document.walk((path, item) -> used.add(path));
            used.add("title." + document.noun());
        }
        List<String> beginnings = LITERALS.stream()
                .filter(literal -> literal.endsWith(".") && !MADE.contains(literal))
                .toList();
        assertThat(Words.keys())
                .filteredOn(key -> !used.contains(key) && beginnings.stream().noneMatch(key::startsWith))
                .isEmpty();
    }

    @Test
    void noneStandsTwice() throws IOException {
        Path file = Cards.house().resolve("cards/src/main/resources/landfall/cards/words/words.properties");
        List<String> keys = Files.readAllLines(file).stream()
                .filter(line -> line.matches("[A-Za-z].*=.*"))
                .map(line -> line.replaceFirst("[ =].*", ""))
                .toList();
        assertThat(keys).hasSizeGreaterThan(100).doesNotHaveDuplicates();
    }

    @Test
    void noneIsEmptyAndNoneHasAnEndThatDoesNotShow() {
        for (String key : Words.keys()) {
            assertThat(Words.of(key)).as(key).isEqualTo(Words.of(key).strip()).isNotBlank();
        }
    }

    @Test
    void aKeyWithoutWordsIsAFaultOfOurs() {
        assertThatThrownBy(() -> Words.of("no.such.key"))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("no words for no.such.key in words.properties");
    }
}
