// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import landfall.cards.answer.Document;
import landfall.cards.card.CardFile;
import landfall.cards.form.Field;
import landfall.cards.form.Form;
import landfall.fault.Answer;
import landfall.fault.Finding;

/**
 * What a person gives to one question, gathered from words, files and options, with what is found wrong on the way.
 * What comes later overrides what came before.
 */
public final class Asked {
    private final Map<String, String> typed = new LinkedHashMap<>();
    private final List<Finding> findings = new ArrayList<>();
    private final Set<String> lost = new HashSet<>();
    private final Set<Given.Card> given = new HashSet<>();

    public void put(String path, String text) {
        typed.put(path, text);
    }

    public void putAll(Map<String, String> more) {
        typed.putAll(more);
    }

    public void found(List<Finding> more) {
        findings.addAll(more);
        more.forEach(finding -> lost.add(finding.field()));
    }

    /** A field that cannot be judged, since what holds it is missing or broken. */
    public void lost(String path) {
        lost.add(path);
    }

    /** A card's file, judged by the fields of that card. */
    public void card(Given.Card card, String name, Answer<String> file) {
        given.add(card);
        if (!(file instanceof Answer.Of<String> text)) {
            found(file.findings());
            lost.addAll(card.form().paths());
            return;
        }
        CardFile read = CardFile.read(card.form(), card.place(), name, text.value());
        typed.putAll(read.fields());
        found(read.findings());
        if (read.isLost()) {
            lost.addAll(card.form().paths());
        }
    }

    /** A card that is needed, was not given, and of which no needed field was typed by itself. */
    public void need(Given.Card card, Form form, String mend) {
        List<String> needed = form.fields().stream()
                .filter(Field::required)
                .map(Field::path)
                .filter(path -> card.form().field(path).isPresent())
                .toList();
        if (!given.contains(card) && !needed.isEmpty() && needed.stream().noneMatch(typed::containsKey)) {
            String kind = card.form().name().replace('-', ' ');
            found(List.of(new Finding(card.place(), "", "is needed: the " + kind, mend)));
            lost.addAll(needed);
        }
    }

    /** Every card that stands after an option, where it is needed. */
    public void needCards(Question question) {
        for (Given given : question.given()) {
            if (given instanceof Given.Card card && !card.option().isEmpty()) {
                need(
                        card,
                        question.form(),
                        "write --%s %s, see landfall help %s".formatted(card.option(), card.name(), question.noun()));
            }
        }
    }

    public List<Finding> findings() {
        return List.copyOf(findings);
    }

    public Map<String, String> typed() {
        return Map.copyOf(typed);
    }

    /** The answer; when something is already found wrong, that and what the form finds besides. */
    public Answer<Document> answer(Question question) {
        if (findings.isEmpty()) {
            return question.answer(typed);
        }
        List<Finding> all = new ArrayList<>(findings);
        question.form().judge(typed, GrindAsk.bare(typed)).findings().stream()
                .filter(finding -> !lost.contains(finding.field()))
                .forEach(all::add);
        return Answer.refused(all);
    }
}
