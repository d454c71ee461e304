// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import landfall.app.crib.CribJson;
import landfall.app.crib.CribText;
import landfall.cards.crib.ItemForms;
import landfall.cards.form.Entries;
import landfall.cards.form.Field;
import landfall.cards.form.Form;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.history.ItemKind;
import landfall.quantity.UnitSystem;
import landfall.store.crib.Row;
import landfall.store.crib.Wanted;
import landfall.thread.callout.CallOuts;

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
        return "list [--thread CALLOUT]";
    }

    @Override
    public Options options(Options options, List<String> args) {
        return options.text("thread").text("kind").flag("all");
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
        List<Row> rows = desk.crib()
                .list(new Wanted(
                        kind.orThrow().get(KIND).orElse(null),
                        size.map(Answer::orThrow).orElse(null),
                        desk.written().has("all"),
                        MOST));
        return desk.say(CribJson.rows(rows), CribText.rows(rows));
    }
}
