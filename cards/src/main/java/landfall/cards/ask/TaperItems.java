// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import landfall.cards.answer.Item;
import landfall.cards.answer.Unit;
import landfall.verdict.TaperPlug;

/** The plug of a taper thread laid out as items. */
final class TaperItems {
    private final Behind behind;

    TaperItems(Behind behind) {
        this.behind = behind;
    }

    Item plug(TaperPlug plug) {
        List<Item> items = new ArrayList<>();
        items.add(behind.figure("notch", plug.notch(), "l_n"));
        items.add(behind.figure("pitchDiameter", plug.pitchDiameter(), "E_n"));
        items.add(behind.figure("perTurn", plug.turn().depth(), "p_t"));
        items.add(behind.figure("growthPerTurn", plug.turn().growth(), "g_t"));
        items.add(new Item.Range(
                "standOffAllowed",
                behind.point(Objects.requireNonNull(plug.standOff().min()).mm(), Unit.LENGTH, "s_in"),
                behind.point(Objects.requireNonNull(plug.standOff().max()).mm(), Unit.LENGTH, "s_out"),
                Unit.LENGTH));
        TaperPlug.Standing found = plug.found();
        if (found != null) {
            items.add(behind.figure("standOff", found.off(), "s"));
            items.add(behind.figure("turns", found.turns(), Unit.PURE, "n_s"));
            items.add(new Item.Text("verdict", found.verdict().name()));
            items.add(behind.figure("moreTurns", found.more(), Unit.PURE, "n_go"));
            items.add(behind.figure("moreDepth", found.moreDepth(), "l_go"));
            items.add(behind.figure("overSize", found.overSize(), "dE_s"));
        }
        return new Item.Group("taperPlug", items);
    }
}
