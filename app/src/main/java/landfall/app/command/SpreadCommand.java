// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import landfall.app.question.Questions;
import landfall.cards.answer.Document;
import landfall.cards.ask.Asked;
import landfall.cards.ask.Question;
import landfall.cards.form.Nearest;
import landfall.cards.spread.SpreadFields;
import landfall.cards.spread.SpreadFile;
import landfall.cards.spread.SpreadSetup;
import landfall.cards.spread.SpreadWish;
import landfall.cards.spread.WatchPaths;
import landfall.cards.words.Words;
import landfall.fault.Answer;
import landfall.fault.Finding;

/** {@code landfall spread QUESTION ..}, {@code spread run FILE}, {@code spread resume STATE}: many set-ups at once. */
final class SpreadCommand implements Command {
    private static final String VARY = "vary";
    private static final String WATCH = "watch";
    private static final String RESULTS = "results";
    private static final List<String> MORE = List.of("run", "resume");

    @Override
    public String noun() {
        return "spread";
    }

    @Override
    public String summary() {
        return Words.of("noun.spread");
    }

    @Override
    public String help() {
        StringBuilder text = new StringBuilder("landfall spread - " + summary() + "\n\n");
        HelpPage.row(
                text, "spread QUESTION ..", Words.of("spread.help.question", String.join(", ", SpreadFields.nouns())));
        HelpPage.row(text, "spread run FILE", Words.of("spread.help.run"));
        HelpPage.row(text, "spread resume STATE", Words.of("spread.help.resume"));
        text.append('\n').append(Words.of("command.options")).append('\n');
        HelpPage.row(text, "--vary FIELD=LAW", Words.of("spread.help.vary"));
        HelpPage.row(text, "--watch RESULT=LIMITS", Words.of("spread.help.watch"));
        HelpPage.row(text, "--results", Words.of("spread.help.results"));
        SpreadFields.FORM
                .fields()
                .forEach(field ->
                        HelpPage.row(text, "--" + field.path(), field.means() + "; such as " + field.example()));
        SpreadGo.help(text);
        HelpPage.examples(text, noun());
        return text.toString();
    }

    @Override
    public Map<String, Options> written() {
        Map<String, Options> written = new LinkedHashMap<>();
        SpreadFields.QUESTIONS.forEach(question -> written.put(question.noun(), options(question)));
        written.put("run", file());
        written.put("resume", state());
        return written;
    }

    private static Options options(Question question) {
        Options options = new QuestionCommand(question)
                .fields(SpreadGo.on(new Options("spread " + question.noun())))
                .texts(VARY)
                .texts(WATCH)
                .flag(RESULTS);
        SpreadFields.FORM.paths().forEach(options::text);
        return options;
    }

    private static Options file() {
        return SpreadGo.on(new Options("spread run")).word("FILE");
    }

    private static Options state() {
        return SpreadGo.on(new Options("spread resume")).word("STATE");
    }

    @Override
    public Exit run(List<String> args, Terminal terminal) {
        boolean json = args.contains("--json");
        Optional<String> word =
                args.stream().filter(arg -> !arg.startsWith("-")).findFirst();
        if (word.isEmpty()) {
            terminal.out().print(help());
            return args.contains("--help") || args.contains("-h") ? Exit.DONE : Exit.REFUSED;
        }
        List<String> rest = new ArrayList<>(args);
        rest.remove(word.get());
        switch (word.get()) {
            case "run" -> {
                return ofFile(rest, json, terminal);
            }
            case "resume" -> {
                return resumed(rest, json, terminal);
            }
            default -> {
                Optional<Question> question = Questions.of(word.get())
                        .filter(found -> SpreadFields.question(found.noun()).isPresent());
                return question.isPresent()
                        ? ofQuestion(question.get(), rest, json, terminal)
                        : Refusals.say(List.of(unknown(word.get())), json, terminal);
            }
        }
    }

    private static Finding unknown(String word) {
        List<String> known = new ArrayList<>(SpreadFields.nouns());
        known.addAll(MORE);
        return new Finding(
                "spread",
                word,
                "is not a question that can be asked of many set-ups",
                "did you mean " + Nearest.of(word, known) + "? All of them: " + String.join(", ", known));
    }

    private Exit ofQuestion(Question question, List<String> args, boolean json, Terminal terminal) {
        Answer<Options.Written> read = options(question).read(args);
        if (!(read instanceof Answer.Of<Options.Written> of)) {
            return Refusals.say(read.findings(), json, terminal);
        }
        Options.Written written = of.value();
        if (written.has("help")) {
            terminal.out().print(help());
            return Exit.DONE;
        }
        Asked asked = new QuestionCommand(question).asked(written);
        if (written.has(RESULTS)) {
            Answer<Document> answer = asked.answer(question);
            if (!(answer instanceof Answer.Of<Document> document)) {
                return Refusals.say(answer.findings(), json, terminal);
            }
            WatchPaths.of(document.value()).forEach(terminal.out()::println);
            return Exit.DONE;
        }
        List<Finding> findings = new ArrayList<>(asked.findings());
        SpreadWish wish = new SpreadWish(
                question.noun(),
                asked.typed(),
                pairs(VARY, written.texts(VARY), findings),
                pairs(WATCH, written.texts(WATCH), findings),
                numbers(written));
        if (!findings.isEmpty()) {
            return Refusals.say(findings, json, terminal);
        }
        return go(SpreadSetup.of(wish), written, json, terminal);
    }

    private static Map<String, String> numbers(Options.Written written) {
        Map<String, String> numbers = new LinkedHashMap<>();
        SpreadFields.FORM.paths().forEach(path -> written.text(path).ifPresent(text -> numbers.put(path, text)));
        return numbers;
    }

    private static Map<String, String> pairs(String option, List<String> texts, List<Finding> findings) {
        Map<String, String> pairs = new LinkedHashMap<>();
        for (String text : texts) {
            int at = text.indexOf('=');
            String name = (at < 0 ? text : text.substring(0, at)).strip();
            if (at < 0 && option.equals(VARY)) {
                findings.add(new Finding(
                        "--vary", text, "does not say how it varies", "write --vary \"" + text + "=normal 0.2 deg\""));
            }
            if (pairs.put(name, at < 0 ? "" : text.substring(at + 1)) != null) {
                findings.add(new Finding("--" + option, name, "stands twice", "leave one of them out"));
            }
        }
        return pairs;
    }

    private Exit ofFile(List<String> args, boolean json, Terminal terminal) {
        Answer<Options.Written> read = file().read(args);
        if (!(read instanceof Answer.Of<Options.Written> of)) {
            return Refusals.say(read.findings(), json, terminal);
        }
        Answer<SpreadSetup> setup = InputFile.text("file", of.value().word(0).orElse(""))
                .then(SpreadFile::read)
                .then(SpreadSetup::of);
        return go(setup, of.value(), json, terminal);
    }

    private Exit resumed(List<String> args, boolean json, Terminal terminal) {
        Answer<Options.Written> read = state().read(args);
        if (!(read instanceof Answer.Of<Options.Written> of)) {
            return Refusals.say(read.findings(), json, terminal);
        }
        return new SpreadGo(of.value(), json, terminal)
                .resume(of.value().word(0).orElse(""));
    }

    private static Exit go(Answer<SpreadSetup> setup, Options.Written written, boolean json, Terminal terminal) {
        return setup instanceof Answer.Of<SpreadSetup> of
                ? new SpreadGo(written, json, terminal).run(of.value())
                : Refusals.say(setup.findings(), json, terminal);
    }
}
