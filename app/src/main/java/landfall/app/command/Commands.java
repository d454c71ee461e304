// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import landfall.app.build.Build;
import landfall.app.question.Questions;
import landfall.cards.form.Nearest;
import landfall.cards.words.Words;
import landfall.fault.Finding;
import landfall.fault.OutOfRange;

/** The command line: finds the noun, runs its command, and turns whatever happens into an exit code. */
public final class Commands {
    private final List<Command> all = new ArrayList<>();

    public Commands() {
        Questions.all().forEach(question -> all.add(new QuestionCommand(question)));
        all.add(new SpreadCommand());
        all.add(new CribCommand());
        all.add(new PeopleCommand());
        all.add(new JobCommand());
        all.add(new ServeCommand());
        all.add(new DemoCommand());
        all.add(new CheckCommand());
        all.add(new ApiCommand());
        all.add(new CompletionCommand(() -> all));
    }

    /** Runs one command; a fault of ours ends with a sentence and exit 1, never with a trace for bad input. */
    public Exit run(List<String> args, Terminal terminal) {
        boolean json = args.contains("--json");
        try {
            return dispatch(args, json, terminal);
        } catch (OutOfRange e) {
            return Refusals.say(List.of(e.finding()), json, terminal);
        } catch (RuntimeException | StackOverflowError e) {
            terminal.err().println(Words.of("command.fault", e));
            if (System.getenv("LANDFALL_TRACE") != null) {
                e.printStackTrace(terminal.err());
            }
            return Exit.FAULT;
        }
    }

    private Exit dispatch(List<String> args, boolean json, Terminal terminal) {
        int first = args.isEmpty() || !args.get(0).equals("--json") ? 0 : 1;
        if (first == args.size()) {
            return help(List.of(), json, terminal);
        }
        String noun = args.get(first);
        List<String> rest = new ArrayList<>(args.subList(first + 1, args.size()));
        rest.addAll(args.subList(0, first));
        switch (noun) {
            case "--version", "-V", "version" ->
                terminal.out()
                        .println(
                                json
                                        ? AboutJson.version(Build.running())
                                        : Build.running().words());
            case "--help", "-h", "help" -> {
                return help(rest, json, terminal);
            }
            default -> {
                if (json && (rest.contains("--help") || rest.contains("-h")) && of(noun).isPresent()) {
                    return help(List.of(noun), true, terminal);
                }
                Optional<Command> command = noun.equals("rehearse") ? Optional.of(new RehearseCommand()) : of(noun);
                return command.isPresent()
                        ? command.get().run(rest, terminal)
                        : Refusals.say(List.of(unknown(noun)), json, terminal);
            }
        }
        return Exit.DONE;
    }

    private Exit help(List<String> rest, boolean json, Terminal terminal) {
        List<String> nouns = rest.stream().filter(word -> !word.startsWith("-")).toList();
        if (nouns.isEmpty()) {
            terminal.out().print(json ? AboutJson.commands(all) + "\n" : overview());
            return Exit.DONE;
        }
        Optional<Command> command = of(nouns.get(0));
        if (command.isEmpty()) {
            return Refusals.say(List.of(unknown(nouns.get(0))), json, terminal);
        }
        terminal.out()
                .print(
                        json
                                ? AboutJson.help(command.get()) + "\n"
                                : command.get().help());
        return Exit.DONE;
    }

    private Optional<Command> of(String noun) {
        return all.stream().filter(command -> command.noun().equals(noun)).findFirst();
    }

    private Finding unknown(String noun) {
        List<String> nouns = new ArrayList<>(all.stream().map(Command::noun).toList());
        nouns.add("help");
        return new Finding(
                "command",
                noun,
                "is not a command of landfall",
                "did you mean " + Nearest.of(noun, nouns) + "? All of them: " + String.join(", ", nouns));
    }

    private String overview() {
        StringBuilder text = new StringBuilder(Words.of("command.overview")).append("\n\n");
        all.forEach(command -> HelpPage.row(text, command.noun(), command.summary()));
        HelpPage.row(text, "help NOUN", Words.of("command.help"));
        HelpPage.row(text, "--version", Words.of("command.version"));
        return text.append('\n')
                .append(Words.of("command.overviewEnd"))
                .append('\n')
                .toString();
    }
}
