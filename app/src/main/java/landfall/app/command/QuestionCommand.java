// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import landfall.cards.answer.Document;
import landfall.cards.answer.JsonAnswer;
import landfall.cards.answer.TextAnswer;
import landfall.cards.ask.Asked;
import landfall.cards.ask.Given;
import landfall.cards.ask.Question;
import landfall.cards.form.Field;
import landfall.cards.form.Kinds;
import landfall.cards.words.Words;
import landfall.fault.Answer;
import landfall.fault.Finding;

/** A question on the command line: options from its form, words and files as it says, one answer or a batch of them. */
final class QuestionCommand implements Command {
    private final Question question;
    private final List<Given> places;

    QuestionCommand(Question question) {
        this.question = question;
        this.places = question.given().stream()
                .filter(given -> option(given).isEmpty())
                .toList();
    }

    @Override
    public String noun() {
        return question.noun();
    }

    @Override
    public String summary() {
        return Words.of("noun." + question.noun());
    }

    @Override
    public String help() {
        return new HelpPage(question).text();
    }

    @Override
    public Exit run(List<String> args, Terminal terminal) {
        boolean json = args.contains("--json");
        Answer<Options.Written> read = options().read(args);
        if (!(read instanceof Answer.Of<Options.Written> of)) {
            return Refusals.say(read.findings(), json, terminal);
        }
        Options.Written written = of.value();
        if (written.has("help")) {
            terminal.out().print(help());
            return Exit.DONE;
        }
        if (written.word(0).filter("-"::equals).isPresent()) {
            return new Batch(question, places.get(0), written.has("working"), names(written))
                    .run(asked(written, 1), json, terminal);
        }
        Asked asked = asked(written);
        Answer<Document> answer = asked.answer(question);
        if (!(answer instanceof Answer.Of<Document> document)) {
            return Refusals.say(OptionName.asTyped(answer.findings(), names(written)), json, terminal);
        }
        Answer<String> sheet = SheetOption.write(question, written, asked.typed());
        if (!(sheet instanceof Answer.Of<String> said)) {
            return Refusals.say(sheet.findings(), json, terminal);
        }
        Answer<String> body = BodyOption.write(question, written, asked.typed());
        if (!(body instanceof Answer.Of<String> drawn)) {
            return Refusals.say(body.findings(), json, terminal);
        }
        terminal.out().println(json ? JsonAnswer.write(document.value()) : text(document.value(), written));
        drawn.value().lines().forEach(terminal.err()::println);
        said.value().lines().forEach(terminal.err()::println);
        return Exit.DONE;
    }

    private static String text(Document document, Options.Written written) {
        return TextAnswer.write(document, written.has("working")).stripTrailing();
    }

    @Override
    public Map<String, Options> written() {
        return Map.of("", options());
    }

    private Options options() {
        Options options = fields(new Options(noun()).flag("working"));
        SheetOption.on(options, question);
        BodyOption.on(options, question);
        return options;
    }

    /** The options and words by which the question's fields are told. */
    Options fields(Options options) {
        for (Given given : question.given()) {
            if (option(given).isEmpty()) {
                options.word(given.name());
            } else {
                options.text(option(given));
            }
        }
        for (Field<?> field : question.form().fields()) {
            if (!isWord(field)) {
                String name = OptionName.of(field, question.form());
                if (field.kind() == Kinds.YES_NO) {
                    options.yes(name);
                } else if (field.kind().schema().get("enum") instanceof List<?> texts) {
                    options.choice(name, texts.stream().map(String::valueOf).toList());
                } else {
                    options.text(name);
                }
            }
        }
        return options;
    }

    private boolean isWord(Field<?> field) {
        return question.given().stream()
                .anyMatch(given -> given instanceof Given.Word word
                                && word.path().equals(field.path())
                        || given instanceof Given.TextFile file && file.path().equals(field.path()));
    }

    private static String option(Given given) {
        if (given instanceof Given.Card card) {
            return card.option();
        }
        return given instanceof Given.TextFile file ? file.option() : "";
    }

    /** What was written for the fields, when the whole of it is one asking. */
    Asked asked(Options.Written written) {
        return asked(written, 0);
    }

    /** Words and files first, then the options, which override what a card says. */
    private Asked asked(Options.Written written, int from) {
        Asked asked = new Asked();
        for (int place = from; place < places.size(); place++) {
            Given given = places.get(place);
            written.word(place).ifPresent(word -> put(given, word, asked));
        }
        for (Given given : question.given()) {
            if (!option(given).isEmpty()) {
                written.text(option(given)).ifPresent(name -> put(given, name, asked));
            }
        }
        for (Field<?> field : question.form().fields()) {
            if (!isWord(field)) {
                written.text(OptionName.of(field, question.form())).ifPresent(text -> asked.put(field.path(), text));
            }
        }
        if (from == 0) {
            missing(written, asked);
        }
        return asked;
    }

    private void missing(Options.Written written, Asked asked) {
        if (!places.isEmpty() && isNeeded(places.get(0)) && written.word(0).isEmpty()) {
            missing(places.get(0), asked);
        }
        asked.needCards(question);
    }

    /** What a field is called by the option that was written for it, where that is not its path. */
    private Map<String, String> names(Options.Written written) {
        Map<String, String> names = new HashMap<>();
        for (Field<?> field : question.form().fields()) {
            String name = OptionName.of(field, question.form());
            if (!isWord(field) && written.text(name).isPresent()) {
                names.put(field.path(), name);
            }
        }
        return names;
    }

    /** A word can be left out when its field can: {@code why} alone lists the symptoms. */
    private boolean isNeeded(Given given) {
        return !(given instanceof Given.Word word)
                || question.form().field(word.path()).map(Field::required).orElse(true);
    }

    private void missing(Given given, Asked asked) {
        String mend = "write landfall " + noun() + " " + given.name() + ", see landfall help " + noun();
        if (given instanceof Given.Card card) {
            asked.need(card, question.form(), mend);
        } else if (given instanceof Given.TextFile file) {
            asked.found(List.of(new Finding(file.path(), "", "is needed", mend)));
        } else if (given instanceof Given.Word word) {
            asked.found(List.of(new Finding(given.name(), "", "is needed", mend)));
            asked.lost(word.path());
        }
    }

    private static void put(Given given, String word, Asked asked) {
        if (given instanceof Given.Word said) {
            asked.put(said.path(), word);
        } else if (given instanceof Given.TextFile file) {
            Answer<String> text = InputFile.text(file.path(), word);
            text.map(content -> {
                asked.put(file.path(), content);
                return content;
            });
            asked.found(text.findings());
        } else if (given instanceof Given.Card card) {
            asked.card(card, word, InputFile.text(card.place(), word));
        }
    }
}
