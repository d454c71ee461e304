// SPDX-License-Identifier: Apache-2.0
package landfall.app.tap;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import landfall.app.figure.Digits;
import landfall.app.figure.Reply;
import landfall.app.shell.Place;
import landfall.app.shell.Typed;
import landfall.cards.answer.Item;
import landfall.cards.answer.Unit;
import landfall.cards.words.Words;
import landfall.quantity.UnitSystem;

/**
 * One thread that the tap may be for.
 *
 * @param score out of a hundred
 * @param thread address of its limits
 * @param tap address of the choice of a marked one
 */
public record CandidateRow(String callOut, String score, String over, String why, String thread, String tap) {

    static List<CandidateRow> of(Reply reply) {
        List<CandidateRow> rows = new ArrayList<>();
        if (reply.answer() != null) {
            UnitSystem units = reply.answer().units();
            reply.answer().rows("candidates").forEach(row -> rows.add(of(row, units)));
        }
        return List.copyOf(rows);
    }

    private static CandidateRow of(Item.Group row, UnitSystem units) {
        String callOut = "";
        String score = "";
        String over = "";
        String why = "";
        for (Item item : row.items()) {
            if (item instanceof Item.Text text) {
                callOut = text.key().equals("callout") ? text.text() : callOut;
                why = text.key().equals("why") ? text.text() : why;
            } else if (item instanceof Item.Figure figure && figure.key().equals("score")) {
                score = hundredths(figure.value());
            } else if (item instanceof Item.Figure figure && figure.key().equals("overNominal")) {
                over = Digits.signed(figure.value(), Unit.LENGTH, units) + " " + Unit.LENGTH.sign(units);
            }
        }
        Map<String, String> thread = Map.of("thread", callOut);
        return new CandidateRow(
                callOut,
                score,
                over,
                why,
                Typed.address(Place.THREAD.path(), thread),
                Typed.address(Place.TAP.path(), thread));
    }

    private static String hundredths(double share) {
        long rounded = Math.round(share * 100);
        return rounded == 0 ? Words.of("page.identify.under") : Words.of("page.identify.score", rounded);
    }
}
