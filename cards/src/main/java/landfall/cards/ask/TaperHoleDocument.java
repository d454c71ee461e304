// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import java.util.ArrayList;
import java.util.List;
import landfall.cards.answer.Document;
import landfall.cards.answer.Item;
import landfall.cards.answer.Unit;
import landfall.hole.TaperHole;
import landfall.quantity.UnitSystem;
import landfall.working.Worked;

/** The hole for a taper pipe thread laid out as one answer. */
final class TaperHoleDocument {
    private final TaperHole hole;
    private final Behind behind;

    private TaperHoleDocument(TaperHole hole, Behind behind) {
        this.hole = hole;
        this.behind = behind;
    }

    static Document of(Worked<TaperHole> worked, UnitSystem units) {
        TaperHole hole = worked.value();
        return new Document(
                "hole",
                hole.wish().callOut().normal(),
                units,
                new TaperHoleDocument(hole, new Behind(worked.steps())).items(),
                worked.steps(),
                hole.cautions());
    }

    private List<Item> items() {
        List<Item> items = new ArrayList<>();
        items.add(new Item.Text("callout", hole.wish().callOut().normal()));
        items.add(new Item.Text("hand", hole.wish().callOut().thread().hand().word()));
        items.add(Item.Group.of(
                "taper",
                behind.figure("majorAtFace", hole.face().major(), "M_f"),
                behind.figure("minorAtFace", hole.face().minor(), "m_f"),
                behind.figure("minorAtEnd", hole.face().end(), "m_e"),
                behind.figure("handTight", hole.depths().handTight(), "L_h")));
        TaperHole.Straight straight = hole.straight();
        items.add(Item.Group.of(
                "straight",
                new Item.Text("name", straight.name()),
                behind.figure("diameter", straight.diameter(), "δ"),
                behind.figure("shareAtFace", 100 * straight.atFace(), Unit.SHARE, "q_f"),
                behind.figure("shareAtEnd", 100 * straight.atEnd(), Unit.SHARE, "q_e")));
        TaperHole.Reamed reamed = hole.reamed();
        if (reamed != null) {
            items.add(Item.Group.of(
                    "reamed",
                    new Item.Text("name", reamed.drill().called()),
                    behind.figure("diameter", reamed.drill().diameter(), "δ_r"),
                    behind.figure("reamAtFace", hole.face().minor(), "m_f")));
        }
        items.add(Item.Group.of(
                "depth",
                behind.figure("fullThread", hole.depths().fullThread(), "T_f"),
                behind.figure("tapPoint", hole.depths().tapPoint(), "T_p"),
                behind.figure("drill", hole.depths().drill(), "T_d"),
                behind.figure("chamferThreads", hole.depths().chamferThreads(), Unit.PURE, "n_c")));
        return items;
    }
}
