// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import java.util.List;
import java.util.stream.Collectors;
import landfall.cards.ask.Given;
import landfall.cards.ask.Question;
import landfall.cards.card.FixtureCard;
import landfall.cards.card.TapCard;
import landfall.cards.form.Field;
import landfall.cards.words.Words;

/** The help of a question, in 80 columns: how it is written, what it takes, examples. */
final class HelpPage {
    private static final int COLUMNS = 80;
    private static final int MARGIN = 28;

    private final Question question;

    HelpPage(Question question) {
        this.question = question;
    }

    String text() {
        StringBuilder text = new StringBuilder();
        text.append("landfall ").append(question.noun()).append(" - ");
        text.append(Words.of("noun." + question.noun())).append("\n\n");
        text.append("  landfall ").append(question.noun()).append(usage()).append(" [options]\n\n");
        text.append(Words.of("command.options")).append('\n');
        row(text, "--json", Words.of("command.json"));
        row(text, "--working", Words.of("command.working"));
        SheetOption.help(text, question);
        BodyOption.help(text, question);
        options(text, false);
        if (question.form().fields().stream().anyMatch(this::isOfCard)) {
            text.append('\n').append(Words.of("command.cardFields")).append('\n');
            options(text, true);
        }
        examples(text, question.noun());
        return text.toString();
    }

    private String usage() {
        return question.given().stream().map(this::usage).collect(Collectors.joining());
    }

    private String usage(Given given) {
        String option = given instanceof Given.Card card
                ? card.option()
                : given instanceof Given.TextFile file ? file.option() : "";
        if (option.isEmpty()) {
            return " " + given.name();
        }
        String written = "--" + option + " " + given.name();
        return isNeeded(given) ? " " + written : " [" + written + "]";
    }

    private boolean isNeeded(Given given) {
        return question.form().fields().stream()
                .filter(Field::required)
                .anyMatch(field -> given instanceof Given.Card card
                                && card.form().field(field.path()).isPresent()
                        || given instanceof Given.TextFile file && file.path().equals(field.path()));
    }

    private void options(StringBuilder text, boolean ofCards) {
        for (Field<?> field : question.form().fields()) {
            if (isOfCard(field) == ofCards && !isWord(field)) {
                row(text, "--" + OptionName.of(field, question.form()), field.means() + "; such as " + field.example());
            }
        }
    }

    /** Fields that a card file holds; the work material is asked for by every question and stands with the options. */
    private boolean isOfCard(Field<?> field) {
        boolean takesCards = question.given().stream().anyMatch(Given.Card.class::isInstance);
        boolean held = TapCard.FORM.field(field.path()).isPresent()
                || FixtureCard.FORM.field(field.path()).isPresent();
        return takesCards && held && !OptionName.of(field, question.form()).equals("material");
    }

    private boolean isWord(Field<?> field) {
        return question.given().stream()
                .anyMatch(given -> given instanceof Given.Word word
                                && word.path().equals(field.path())
                        || given instanceof Given.TextFile file && file.path().equals(field.path()));
    }

    /** How a command is used, as it is typed. */
    static void examples(StringBuilder text, String noun) {
        text.append('\n').append(Words.of("command.examples")).append('\n');
        Words.of("command.examples." + noun)
                .lines()
                .forEach(line -> text.append("  ").append(line).append('\n'));
    }

    static void row(StringBuilder text, String name, String means) {
        String head = "  " + name;
        List<String> lines = Fold.to(COLUMNS - MARGIN, means);
        if (head.length() >= MARGIN) {
            text.append(head).append('\n');
            head = "";
        }
        for (String line : lines) {
            text.append(head)
                    .append(" ".repeat(MARGIN - head.length()))
                    .append(line)
                    .append('\n');
            head = "";
        }
    }
}
