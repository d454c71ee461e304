// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import landfall.cards.words.Words;
import landfall.fault.Answer;
import landfall.fault.Finding;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;

/** {@code landfall completion}: a script by which bash and zsh complete what is typed after {@code landfall}. */
final class CompletionCommand implements Command {
    private final Supplier<List<Command>> all;

    CompletionCommand(Supplier<List<Command>> all) {
        this.all = all;
    }

    @Override
    public String noun() {
        return "completion";
    }

    @Override
    public String summary() {
        return Words.of("noun.completion");
    }

    @Override
    public String help() {
        StringBuilder text = new StringBuilder("landfall " + noun() + " - " + summary() + "\n");
        HelpPage.examples(text, noun());
        return text.toString();
    }

    @Override
    public Map<String, Options> written() {
        return Map.of("", new Options(noun()));
    }

    @Override
    public Exit run(List<String> args, Terminal terminal) {
        boolean json = args.contains("--json");
        Answer<Options.Written> read = new Options(noun()).read(args);
        if (!(read instanceof Answer.Of<Options.Written> of)) {
            return Refusals.say(read.findings(), json, terminal);
        }
        if (json) {
            return Refusals.say(
                    List.of(new Finding("--json", "", "does not go with a script for a shell", "leave it out")),
                    true,
                    terminal);
        }
        terminal.out().print(of.value().has("help") ? help() : script());
        return Exit.DONE;
    }

    private String script() {
        CommandSpec root = CommandSpec.create().name("landfall");
        for (Command command : all.get()) {
            Map<String, Options> written = command.written();
            Options alone = written.get("");
            CommandSpec noun = alone == null ? CommandSpec.create() : alone.spec();
            written.forEach((word, options) -> {
                if (!word.isEmpty()) {
                    noun.addSubcommand(word, options.spec());
                }
            });
            root.addSubcommand(command.noun(), noun);
        }
        CommandSpec help = CommandSpec.create();
        all.get().forEach(command -> help.addSubcommand(command.noun(), CommandSpec.create()));
        root.addSubcommand("help", help);
        return AutoComplete.bash("landfall", new CommandLine(root));
    }
}
