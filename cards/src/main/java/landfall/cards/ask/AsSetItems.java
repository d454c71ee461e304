// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import landfall.cards.answer.Document;
import landfall.cards.answer.Item;
import landfall.cards.answer.Unit;
import landfall.cards.words.Words;
import landfall.grind.AsSet;
import landfall.grind.GrindSetup;
import landfall.grind.Moves;
import landfall.working.Step;
import landfall.working.Worked;

/** A regrind set-up read forwards: what the fixture grinds as it stands, and what the relief moves most with. */
final class AsSetItems {
    private AsSetItems() {}

    /** The answer with both beside the setting; the first only where something was read off the fixture. */
    static Document with(Document document, GrindSetup setup, AsSet.Read read) {
        Worked<List<Moves>> moves = Worked.of(pen -> Moves.of(setup, pen));
        List<Step> steps = new ArrayList<>(document.working());
        steps.addAll(moves.steps());
        List<Item> beside = new ArrayList<>();
        beside.add(moves(moves.value(), new Behind(steps)));
        if (!read.isEmpty()) {
            Worked<AsSet> set = Worked.of(pen -> AsSet.of(setup, read, pen));
            steps.addAll(set.steps());
            beside.add(set(set.value(), new Behind(steps)));
        }
        List<Item> items = new ArrayList<>();
        for (Item item : document.items()) {
            items.add(item);
            if (item.key().equals("setting")) {
                items.addAll(beside);
            }
        }
        return new Document(document.noun(), document.subject(), document.units(), items, steps, document.cautions());
    }

    private static Item set(AsSet set, Behind behind) {
        return Item.Group.of(
                "asSet",
                behind.figure("swivel", set.setting().swivel(), "κ_u"),
                behind.figure("axial", set.setting().axial(), "a_u"),
                behind.figure("radial", set.setting().radial(), "b_u"),
                behind.figure("chamfer", set.chamfer(), "κ_cu"),
                behind.figure("perRadian", set.perRadian().mm(), Unit.LENGTH_PER_RADIAN, "f'_u"),
                behind.figure("static", set.relief().ground(), "α_nu"),
                behind.figure("loss", set.relief().loss(), "η_u"),
                behind.figure("working", set.relief().working(), "α_u"));
    }

    private static Item moves(List<Moves> moves, Behind behind) {
        List<String> words = new ArrayList<>();
        List<Item.Group> rows = new ArrayList<>();
        for (Moves move : moves) {
            String relief = String.format(
                    Locale.ROOT, "%.2f deg", Math.abs(move.relief().deg()));
            words.add(Words.of("grind.moves.one", move.with(), relief, move.by()));
            rows.add(Item.Group.of(
                    "move",
                    new Item.Text("with", move.with()),
                    new Item.Text("by", move.by()),
                    behind.figure("relief", move.relief(), "m_κ", "m_a", "m_b", "m_p")));
        }
        return Item.Group.of("moves", new Item.Text("most", String.join("; ", words)), new Item.Rows("by", rows));
    }
}
