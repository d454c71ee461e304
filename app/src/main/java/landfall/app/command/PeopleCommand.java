// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import java.time.Clock;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import landfall.cards.form.Nearest;
import landfall.cards.words.Words;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.store.Store;
import landfall.store.StoreFault;
import landfall.store.people.People;

/** {@code landfall people ...}: who is let into the crib over the network. */
final class PeopleCommand implements Command {
    /** One thing that is done: how it is written, and who does it. */
    private record Part(String usage, Function<PeopleDesk, Exit> run) {}

    private static final Map<String, Part> PARTS = parts();

    private static Map<String, Part> parts() {
        Map<String, Part> parts = new LinkedHashMap<>();
        parts.put("add", new Part("add NAME --role look|use|keep", PeopleDesk::add));
        parts.put("list", new Part("list", PeopleDesk::list));
        parts.put("role", new Part("role NAME --role look|use|keep", PeopleDesk::giveRole));
        parts.put("reset", new Part("reset NAME", PeopleDesk::reset));
        parts.put("close", new Part("close NAME", PeopleDesk::close));
        parts.put("open", new Part("open NAME", PeopleDesk::open));
        return parts;
    }

    @Override
    public String noun() {
        return "people";
    }

    @Override
    public String summary() {
        return Words.of("noun.people");
    }

    @Override
    public String help() {
        StringBuilder text = new StringBuilder("landfall people - " + summary() + "\n\n");
        PARTS.forEach((word, part) -> HelpPage.row(text, part.usage(), Words.of("people.part." + word)));
        text.append('\n');
        HelpPage.row(text, "--store FILE|URL", Words.of("crib.store"));
        HelpPage.row(text, "--json", Words.of("command.json"));
        text.append('\n').append(Words.of("people.passwordIn")).append('\n');
        HelpPage.examples(text, noun());
        return text.toString();
    }

    @Override
    public Map<String, Options> written() {
        Map<String, Options> all = new LinkedHashMap<>();
        PARTS.keySet().forEach(word -> all.put(word, options(word)));
        return all;
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
        Part part = PARTS.get(word.get());
        if (part == null) {
            return Refusals.say(List.of(unknown(word.get())), json, terminal);
        }
        List<String> rest = new ArrayList<>(args);
        rest.remove(word.get());
        Answer<Options.Written> read = options(word.get()).read(rest);
        if (!(read instanceof Answer.Of<Options.Written> of)) {
            return Refusals.say(read.findings(), json, terminal);
        }
        if (of.value().has("help")) {
            terminal.out().print(help());
            return Exit.DONE;
        }
        return run(part, of.value(), json, terminal);
    }

    private static Options options(String word) {
        Options options = new Options("people " + word).text("store");
        if (!word.equals("list")) {
            options.word("NAME");
        }
        if (word.equals("add") || word.equals("role")) {
            options.text("role");
        }
        return word.equals("add") ? options.text("shown") : options;
    }

    private static Exit run(Part part, Options.Written written, boolean json, Terminal terminal) {
        try {
            Answer<Store> opened = StoreOption.open(written);
            if (!(opened instanceof Answer.Of<Store> of)) {
                return Refusals.say(opened.findings(), json, terminal);
            }
            try (Store store = of.value()) {
                return part.run().apply(new PeopleDesk(new People(store, Clock.systemUTC()), written, json, terminal));
            }
        } catch (StoreFault e) {
            return Refusals.say(List.of(e.finding()), json, terminal);
        }
    }

    private static Finding unknown(String word) {
        List<String> words = List.copyOf(PARTS.keySet());
        return new Finding(
                "people",
                word,
                "is not something that is done with people",
                "did you mean " + Nearest.of(word, words) + "? All of them: " + String.join(", ", words));
    }
}
