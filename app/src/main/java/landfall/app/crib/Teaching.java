// SPDX-License-Identifier: Apache-2.0
package landfall.app.crib;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import landfall.app.figure.AnswerView;
import landfall.app.given.Cell;
import landfall.app.given.Cells;
import landfall.app.shell.Typed;
import landfall.cards.crib.Costs;
import landfall.cards.crib.Prospect;
import landfall.cards.crib.ProspectDocument;
import landfall.cards.crib.ProspectForm;
import landfall.cards.crib.ShopLaws;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.history.ItemKind;
import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Ink;
import landfall.sheets.figure.Figures;
import landfall.sheets.wear.CostView;
import landfall.sheets.wear.WearView;
import landfall.store.crib.Glance;
import landfall.store.crib.Kept;
import org.jspecify.annotations.Nullable;

/**
 * What the records teach of a tap, as a part of its page.
 *
 * @param answer null where nothing is known yet, or what was asked is refused
 * @param cells of what may be asked
 * @param drawings the charts there are: of wear, and of cost where prices and card tell it
 * @param said the same in sentences
 */
public record Teaching(
        @Nullable AnswerView answer,
        List<Cell> cells,
        List<Finding> findings,
        List<Drawing> drawings,
        List<String> said) {
    public Teaching {
        cells = List.copyOf(cells);
        findings = List.copyOf(findings);
        drawings = List.copyOf(drawings);
        said = List.copyOf(said);
    }

    /**
     * Empty for what is no tap.
     *
     * @param found when it is due; empty where nobody can tell
     */
    static Optional<Teaching> of(Context ctx, CribDoor door, Glance kept, Optional<ShopLaws.Found> found) {
        if (kept.item().kind() != ItemKind.TAP || kept.standing().status().ended()) {
            return Optional.empty();
        }
        Map<String, String> typed = typed(ctx);
        if (found.isEmpty()) {
            return Optional.of(new Teaching(null, List.of(), List.of(), List.of(), List.of()));
        }
        Optional<Kept> whole = door.crib().find(kept.item().mark());
        Answer<Prospect> prospect = whole.isEmpty()
                ? Answer.refused(List.of())
                : Prospect.of(found.get(), whole.get().history(), typed);
        List<Cell> cells = new Cells(ProspectForm.FORM, typed, prospect.findings())
                .rest().stream().map(cell -> cell.of("teach")).toList();
        return Optional.of(
                prospect instanceof Answer.Of<Prospect> of
                        ? of(of.value(), cells)
                        : new Teaching(null, cells, prospect.findings(), List.of(), List.of()));
    }

    private static Teaching of(Prospect prospect, List<Cell> cells) {
        AnswerView answer = new AnswerView(ProspectDocument.of(prospect));
        Figures figures = new Figures(answer.units());
        WearView wear = new WearView(prospect.curve().value(), figures);
        List<Drawing> drawings = new ArrayList<>(List.of(wear.draw("wear", Ink.SCREEN)));
        List<String> said = new ArrayList<>(List.of(wear.said()));
        Costs costs = prospect.costs();
        if (costs != null) {
            CostView cost = new CostView(costs.choice(), costs.currency(), figures);
            drawings.add(cost.draw("cost", Ink.SCREEN));
            said.add(cost.said());
        }
        return new Teaching(answer, cells, List.of(), drawings, said);
    }

    /** What the form of this part sends; other parts of the page have their own. */
    private static Map<String, String> typed(Context ctx) {
        Map<String, String> own = new LinkedHashMap<>();
        if (Typed.of(ctx) instanceof Answer.Of<Map<String, String>> of) {
            own.putAll(of.value());
            own.keySet().retainAll(ProspectForm.FORM.paths());
        }
        return own;
    }

    /** Nothing was refused, and nothing is known. */
    public boolean isEmpty() {
        return answer == null && findings.isEmpty();
    }
}
