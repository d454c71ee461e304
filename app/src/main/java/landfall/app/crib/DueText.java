// SPDX-License-Identifier: Apache-2.0
package landfall.app.crib;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import landfall.cards.crib.GaugeDue;
import landfall.cards.crib.ShopLaws;
import landfall.cards.words.Words;
import landfall.quantity.Band;

/** {@code crib list --due}, for programs and for people. */
public final class DueText {
    private static final ObjectMapper JSON = new ObjectMapper();

    private DueText() {}

    public static String json(DueBoard.DueRows due, LocalDate today) {
        ObjectNode answer = JSON.createObjectNode();
        ArrayNode all = answer.putArray("taps");
        for (DueBoard.DueRow row : due.rows()) {
            ObjectNode node = CribJson.row(row.row());
            node.set("due", due(row, today));
            all.add(node);
        }
        answer.put("unweighed", due.unweighed());
        return CribJson.closed(answer);
    }

    private static ObjectNode due(DueBoard.DueRow row, LocalDate today) {
        if (row.tap() != null) {
            return CribJson.due(row.tap());
        }
        GaugeDue gauge = row.gauge();
        if (gauge == null) {
            return JSON.createObjectNode()
                    .put("when", "with its set")
                    .put("set", row.row().item().handSet());
        }
        long days = gauge.daysFrom(today);
        return JSON.createObjectNode()
                .put("when", days < 0 ? "over" : "near")
                .put("until", gauge.due().toString())
                .put("days", days);
    }

    public static String text(DueBoard.DueRows due, LocalDate today) {
        List<DueBoard.DueRow> rows = due.rows();
        if (rows.isEmpty()) {
            return Words.of("crib.due.noneDue");
        }
        StringBuilder text = new StringBuilder();
        rows.forEach(row -> text.append("%-12s %-6s %-22s %-9s %s%n"
                .formatted(
                        row.row().item().mark(),
                        row.row().item().kind().word(),
                        row.row().item().words(),
                        row.row().status().word(),
                        words(row, today))));
        if (due.unweighed() > 0) {
            text.append(Words.of("crib.due.unweighed", due.unweighed()));
        }
        return text.toString().stripTrailing();
    }

    /** How it is due, in a few words. */
    public static String words(DueBoard.DueRow row, LocalDate today) {
        ShopLaws.Found tap = row.tap();
        if (tap != null) {
            Band left = tap.due().value().left();
            return Words.of(
                    "crib.due.tap",
                    tap.when().name().toLowerCase(Locale.ROOT),
                    holes(left.expected()),
                    holes(left.low()),
                    holes(left.high()));
        }
        GaugeDue gauge = row.gauge();
        if (gauge == null) {
            return Words.of("crib.due.withSet");
        }
        long days = gauge.daysFrom(today);
        return days < 0
                ? Words.of("crib.due.gaugeOver", -days, gauge.due())
                : Words.of("crib.due.gaugeNear", days, gauge.due());
    }

    /** Holes that are left, or that it was due ago. */
    private static String holes(double left) {
        long holes = Math.round(left);
        return holes < 0 ? Words.of("crib.due.ago", -holes) : Words.of("crib.due.left", holes);
    }
}
