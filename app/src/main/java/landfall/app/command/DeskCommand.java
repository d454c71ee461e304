// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import landfall.cards.form.Nearest;
import landfall.cards.words.Words;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.store.Store;
import landfall.store.StoreFault;

/** A noun whose parts each work on an open store: {@code landfall crib ...}, {@code landfall job ...}. */
abstract class DeskCommand implements Command {
    private final String noun;
    private final String words;
    private final List<CribPart> parts;

    /** @param words what the words of its parts are found by, with a point at the end */
    DeskCommand(String noun, String words, List<CribPart> parts) {
        this.noun = noun;
        this.words = words;
        this.parts = List.copyOf(parts);
    }

    @Override
    public String noun() {
        return noun;
    }

    @Override
    public String help() {
        StringBuilder text = new StringBuilder("landfall " + noun + " - " + summary() + "\n\n");
        parts.forEach(part -> HelpPage.row(text, part.usage(), Words.of(words + part.word())));
        text.append('\n');
        HelpPage.row(text, "--store FILE|URL", Words.of("crib.store"));
        HelpPage.row(text, "--json", Words.of("command.json"));
        HelpPage.examples(text, noun);
        return text.toString();
    }

    @Override
    public Map<String, Options> written() {
        Map<String, Options> all = new LinkedHashMap<>();
        parts.forEach(part -> all.put(part.word(), options(part, List.of())));
        return all;
    }

    private Options options(CribPart part, List<String> args) {
        return part.options(new Options(noun + " " + part.word()).text("store"), args);
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
        Optional<CribPart> part =
                parts.stream().filter(one -> one.word().equals(word.get())).findFirst();
        if (part.isEmpty()) {
            return Refusals.say(List.of(unknown(word.get())), json, terminal);
        }
        List<String> rest = new ArrayList<>(args);
        rest.remove(word.get());
        Answer<Options.Written> read = options(part.get(), rest).read(rest);
        if (!(read instanceof Answer.Of<Options.Written> of)) {
            return Refusals.say(read.findings(), json, terminal);
        }
        if (of.value().has("help")) {
            terminal.out().print(help());
            return Exit.DONE;
        }
        return run(part.get(), of.value(), json, terminal);
    }

    private static Exit run(CribPart part, Options.Written written, boolean json, Terminal terminal) {
        try {
            Answer<Store> opened = StoreOption.open(written);
            if (!(opened instanceof Answer.Of<Store> of)) {
                return Refusals.say(opened.findings(), json, terminal);
            }
            try (Store store = of.value()) {
                return part.run(new CribDesk(store, written, json, terminal));
            }
        } catch (StoreFault e) {
            return Refusals.say(List.of(e.finding()), json, terminal);
        }
    }

    private Finding unknown(String word) {
        List<String> known = parts.stream().map(CribPart::word).toList();
        return new Finding(
                noun,
                word,
                "is not something the " + noun + " does",
                "did you mean " + Nearest.of(word, known) + "? All of them: "
                        + known.stream().collect(Collectors.joining(", ")));
    }
}
