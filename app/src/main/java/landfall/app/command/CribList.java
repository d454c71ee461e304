// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import landfall.app.crib.CribJson;
import landfall.app.crib.CribText;
import landfall.app.crib.DueBoard;
import landfall.app.crib.DueTaps;
import landfall.app.crib.DueText;
import landfall.cards.crib.ItemForms;
import landfall.cards.form.Entries;
import landfall.cards.form.Field;
import landfall.cards.form.Form;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.history.ItemKind;
import landfall.quantity.UnitSystem;
import landfall.store.crib.HandSet;
import landfall.store.crib.Row;
import landfall.store.crib.Wanted;
import landfall.thread.callout.CallOuts;
import org.jspecify.annotations.Nullable;

/** {@code crib list}: what the crib holds. */
final class CribList implements CribPart {
    private static final int MOST = 10_000;
    private static final Field<ItemKind> KIND = Field.optional("kind", ItemForms.KIND, "tap");
    private static final Form KIND_FORM = Form.of("crib list", KIND);

    @Override
    public String word() {
        return "list";
    }

    @Override
    public String usage() {
        return "list [--due] [--thread CALLOUT]";
    }

    @Override
    public Options options(Options options, List<String> args) {
        return options.text("thread").text("kind").flag("all").flag("due");
    }

    @Override
    public Exit run(CribDesk desk) {
        List<Finding> findings = new ArrayList<>();
        Answer<Entries> kind = KIND_FORM.judge(
                desk.written().text("kind").map(text -> Map.of("kind", text)).orElse(Map.of()), UnitSystem.METRIC);
        findings.addAll(kind.findings());
        Optional<Answer<String>> size = desk.written()
                .text("thread")
                .map(text -> CallOuts.read(text)
                        .map(callOut -> callOut.withoutClass().normal()));
        size.ifPresent(read -> read.findings().forEach(found -> findings.add(found)));
        if (!findings.isEmpty()) {
            return desk.refuse(findings);
        }
        String wanted = size.map(Answer::orThrow).orElse(null);
        ItemKind of = kind.orThrow().get(KIND).orElse(null);
        return desk.written().has("due")
                ? due(desk, wanted, of)
                : list(desk, new Wanted(of, wanted, desk.written().has("all"), MOST));
    }

    private static Exit list(CribDesk desk, Wanted wanted) {
        List<Row> rows = desk.crib().list(wanted);
        long more = rows.size() < MOST ? 0 : desk.crib().count(wanted) - rows.size();
        List<HandSet> sets = new ArrayList<>();
        rows.stream()
                .map(row -> row.item().handSet())
                .filter(name -> !name.isEmpty())
                .distinct()
                .forEach(name -> sets.add(desk.crib().set(name)));
        return desk.say(CribJson.rows(rows, sets, more), CribText.rows(rows, sets, more));
    }

    private static Exit due(CribDesk desk, @Nullable String size, @Nullable ItemKind kind) {
        LocalDate today = desk.now().toLocalDate();
        DueBoard.DueRows rows = new DueBoard(desk.crib(), new DueTaps(desk.store()))
                .rows(size, today)
                .of(kind);
        return desk.say(DueText.json(rows, today), DueText.text(rows, today));
    }
}
