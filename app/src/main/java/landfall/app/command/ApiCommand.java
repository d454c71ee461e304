// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import java.util.List;
import java.util.Map;
import landfall.app.api.OpenApi;
import landfall.cards.words.Words;
import landfall.fault.Answer;

/** {@code landfall api}: what the server's HTTP interface takes and answers, as an OpenAPI document. */
final class ApiCommand implements Command {
    @Override
    public String noun() {
        return "api";
    }

    @Override
    public String summary() {
        return Words.of("noun.api");
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
        Answer<Options.Written> read = new Options(noun()).read(args);
        if (!(read instanceof Answer.Of<Options.Written> of)) {
            return Refusals.say(read.findings(), args.contains("--json"), terminal);
        }
        terminal.out().print(of.value().has("help") ? help() : OpenApi.document());
        return Exit.DONE;
    }
}
