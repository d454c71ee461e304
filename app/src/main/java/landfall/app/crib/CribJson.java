// SPDX-License-Identifier: Apache-2.0
package landfall.app.crib;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import landfall.cards.crib.ShopLaws;
import landfall.store.crib.Glance;
import landfall.store.crib.HandSet;
import landfall.store.crib.Item;
import landfall.store.crib.Logged;
import landfall.store.crib.Row;
import landfall.store.crib.ThingJson;
import landfall.store.table.Report;
import landfall.wear.Due;

/** The crib's answers for programs. */
public final class CribJson {
    private static final ObjectMapper JSON = new ObjectMapper();

    private CribJson() {}

    /**
     * {@code crib show}.
     *
     * @param due when it is due; null in the answer where nobody can tell
     */
    public static String kept(Glance kept, Optional<ShopLaws.Found> due) {
        ObjectNode answer = ThingJson.whole(kept, Map.of());
        answer.put("earlier", kept.earlier());
        answer.set("due", due.<JsonNode>map(CribJson::due).orElse(JSON.nullNode()));
        return closed(answer);
    }

    /** A band of holes left; the whole answer with its working is that of {@code crib due MARK}. */
    static ObjectNode due(ShopLaws.Found found) {
        Due due = found.due().value();
        ObjectNode node = JSON.createObjectNode();
        node.put("when", due.when().name().toLowerCase(Locale.ROOT));
        node.put("material", found.material().id());
        node.putObject("left")
                .put("low", due.left().low())
                .put("expected", due.left().expected())
                .put("high", due.left().high())
                .put("unit", "holes");
        return node;
    }

    /** {@code crib list}. */
    public static String rows(List<Row> rows, List<HandSet> sets, long more) {
        ObjectNode answer = JSON.createObjectNode();
        ArrayNode all = answer.putArray("taps");
        rows.forEach(row -> all.add(row(row)));
        ArrayNode together = answer.putArray("sets");
        sets.forEach(set -> together.add(set(set)));
        answer.put("more", more);
        return closed(answer);
    }

    private static ObjectNode set(HandSet set) {
        ObjectNode node = JSON.createObjectNode();
        node.put("set", set.name());
        node.put("whole", set.isWhole());
        ArrayNode marks = node.putArray("taps");
        set.members().forEach(row -> marks.add(row.item().mark().text()));
        ArrayNode missing = node.putArray("missing");
        set.missing()
                .forEach(row -> missing.addObject()
                        .put("mark", row.item().mark().text())
                        .put("state", row.status().word())
                        .put("place", row.place()));
        return node;
    }

    static ObjectNode row(Row row) {
        ObjectNode node = ThingJson.thing(row.item());
        node.put("size", row.item().size());
        node.put("state", row.status().word());
        node.put("place", row.place());
        node.put("holes", row.counts().holes());
        node.put("sinceSharp", row.counts().sinceSharp());
        node.put("sharpenings", row.counts().sharpenings());
        return node;
    }

    /** {@code crib add}. */
    public static String added(Item item) {
        return closed(ThingJson.thing(item));
    }

    /** {@code crib log}. */
    public static String logged(Logged kept) {
        ObjectNode answer = JSON.createObjectNode();
        answer.put("mark", kept.item().mark().text());
        answer.set("event", ThingJson.event(kept.event(), false));
        answer.put("seq", kept.seq());
        return closed(answer);
    }

    /** What a page's script is told of an entry that is kept, and where it goes on. */
    static String entered(Logged kept, String page) {
        ObjectNode answer = JSON.createObjectNode();
        answer.put("mark", kept.item().mark().text());
        answer.put("seq", kept.seq());
        answer.put("page", page);
        return answer.toString();
    }

    /** {@code crib import}. */
    public static String report(Report report) {
        ObjectNode answer = JSON.createObjectNode();
        answer.put("rows", report.rows());
        answer.put("good", report.good());
        answer.put("kept", report.isKept());
        answer.put("added", report.addedRows());
        answer.put("unchanged", report.unchangedRows());
        answer.put("replaced", report.replacedRows());
        answer.put("badRows", report.badRows());
        if (report.isStopped()) {
            answer.put("stoppedIn", report.stoppedIn());
        }
        ArrayNode bad = answer.putArray("bad");
        for (Report.Bad one : report.bad()) {
            bad.addObject()
                    .put("line", one.line())
                    .put("field", one.finding().field())
                    .put("given", one.finding().given())
                    .put("why", one.finding().why())
                    .put("mend", one.finding().mend());
        }
        return closed(answer);
    }

    /** An answer of texts and counts. */
    public static String facts(Map<String, Object> facts) {
        return closed((ObjectNode) JSON.valueToTree(facts));
    }

    static String closed(ObjectNode answer) {
        if (!answer.has("working")) {
            answer.putArray("working");
        }
        if (!answer.has("cautions")) {
            answer.putArray("cautions");
        }
        return answer.toString();
    }
}
