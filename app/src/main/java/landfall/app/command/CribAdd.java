// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import landfall.app.crib.CribJson;
import landfall.cards.card.CardFile;
import landfall.cards.crib.ItemForms;
import landfall.cards.crib.Told;
import landfall.cards.form.Field;
import landfall.cards.form.Form;
import landfall.cards.words.Words;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.history.EventKind;
import landfall.history.ItemKind;
import landfall.history.Mark;
import landfall.quantity.UnitSystem;
import landfall.store.crib.Item;
import landfall.store.crib.Saying;

/** {@code crib add CARD [--mark M]}: a thing with its card, or a tap by its call-out alone. */
final class CribAdd implements CribPart {
    private static final Field<ItemKind> KIND = Field.optional("kind", ItemForms.KIND, "tap");
    private static final Form KIND_FORM = Form.of("crib add", KIND);

    @Override
    public String word() {
        return "add";
    }

    @Override
    public String usage() {
        return "add CARD|CALLOUT";
    }

    @Override
    public Options options(Options options, List<String> args) {
        return options.word("CARD")
                .text("mark")
                .text("kind")
                .text("set")
                .text("place")
                .text("price")
                .text("supplier")
                .text("by")
                .text("at");
    }

    @Override
    public Exit run(CribDesk desk) {
        Answer<ItemKind> kind = KIND_FORM
                .judge(
                        desk.written()
                                .text("kind")
                                .map(text -> Map.of("kind", text))
                                .orElse(Map.of()),
                        UnitSystem.METRIC)
                .map(entries -> entries.get(KIND).orElse(ItemKind.TAP));
        if (!(kind instanceof Answer.Of<ItemKind> of)) {
            return desk.refuse(kind.findings());
        }
        Answer<Map<String, String>> card = card(desk, of.value());
        Optional<Answer<Mark>> mark = mark(desk, card);
        Answer<Instant> at = desk.at();
        Answer<List<Told>> first = first(desk.written());
        List<Finding> findings = new ArrayList<>(card.findings());
        mark.ifPresent(read -> findings.addAll(read.findings()));
        findings.addAll(at.findings());
        findings.addAll(first.findings());
        if (!findings.isEmpty()) {
            return desk.refuse(findings);
        }
        return add(desk, of.value(), card.orThrow(), mark.map(Answer::orThrow), first.orThrow());
    }

    private static Exit add(
            CribDesk desk, ItemKind kind, Map<String, String> card, Optional<Mark> mark, List<Told> first) {
        String set = desk.written().text("set").orElse("");
        Answer<Item> added = mark.isPresent()
                ? desk.crib().add(new Item(mark.get(), kind, set, card))
                : Answer.of(desk.crib().addNumbered(kind, set, card));
        if (!(added instanceof Answer.Of<Item> of)) {
            return desk.refuse(added.findings());
        }
        Item item = of.value();
        for (Told told : first) {
            desk.crib()
                    .log(new Saying(
                            item.mark(),
                            told,
                            new Saying.Who(desk.by(), desk.at().orThrow()),
                            null,
                            null))
                    .orThrow();
        }
        String says = Words.of("crib.added", item.mark(), item.size());
        boolean noStart = kind == ItemKind.TAP
                && first.stream().noneMatch(told -> told.what().kind() == EventKind.BOUGHT);
        return desk.say(CribJson.added(item), noStart ? says + "\n" + Words.of("crib.noStart", item.mark()) : says);
    }

    /** What the card calls the thing counts when no mark was written beside it. */
    private static Optional<Answer<Mark>> mark(CribDesk desk, Answer<Map<String, String>> card) {
        Optional<String> written = desk.written().text("mark");
        if (written.isEmpty() && card instanceof Answer.Of<Map<String, String>> of) {
            written = Optional.ofNullable(of.value().get("mark"));
        }
        return written.map(Mark::read);
    }

    private static Answer<Map<String, String>> card(CribDesk desk, ItemKind kind) {
        String given = desk.written().word(0).orElse("");
        if (given.isEmpty()) {
            return Answer.refused(
                    new Finding("card", "", "is needed", "write the file of a card, or a call-out such as M8x1.25"));
        }
        if (kind == ItemKind.TAP && !isFile(given) && !given.endsWith(".json")) {
            return ItemForms.lasting(kind, Map.of("thread", given));
        }
        return InputFile.text("card", given).then(text -> {
            CardFile file = CardFile.read(ItemForms.of(kind), "card", given, text);
            return file.findings().isEmpty() ? ItemForms.lasting(kind, file.fields()) : Answer.refused(file.findings());
        });
    }

    private static boolean isFile(String given) {
        try {
            return Files.exists(Path.of(given));
        } catch (InvalidPathException e) {
            return false;
        }
    }

    /** What it cost and where it lies, told with the card. */
    private static Answer<List<Told>> first(Options.Written written) {
        List<Told> all = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        Map<String, String> bought = new LinkedHashMap<>();
        for (String name : List.of("price", "supplier")) {
            written.text(name).ifPresent(text -> bought.put(name, text));
        }
        if (!bought.isEmpty()) {
            Answer<Told> told = Told.read(EventKind.BOUGHT, bought, UnitSystem.METRIC);
            told.map(all::add);
            findings.addAll(told.findings());
        }
        written.text("place").ifPresent(place -> {
            Answer<Told> told = Told.read(EventKind.MOVED, Map.of("place", place), UnitSystem.METRIC);
            told.map(all::add);
            findings.addAll(told.findings());
        });
        return findings.isEmpty() ? Answer.of(all) : Answer.refused(findings);
    }
}
