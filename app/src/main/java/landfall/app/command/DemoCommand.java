package landfall.app.command;

import java.util.List;
import landfall.cards.words.Words;

/** {@code landfall demo}: an invented shop's worn tap, from its card to a set-up sheet. */
final class DemoCommand implements Command {
    @Override
    public String noun() {
        return "demo";
    }

    @Override
    public String summary() {
        return Words.of("noun.demo");
    }

    @Override
    public String help() {
        return "landfall demo - " + summary() + "\n";
    }

    @Override
    public Exit run(List<String> args, Terminal terminal) {
        return Exit.DONE;
    }
}
