// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import java.util.ArrayList;
import java.util.List;
import landfall.cards.answer.Document;
import landfall.cards.answer.Item;
import landfall.cards.answer.Unit;
import landfall.hole.DepthStack;
import landfall.hole.Drilled;
import landfall.hole.FormingHole;
import landfall.hole.HoleChoice;
import landfall.hole.InsertSeat;
import landfall.hole.ListedDrill;
import landfall.hole.Strength;
import landfall.hole.TradeOff;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.quantity.UnitSystem;
import landfall.working.Step;
import landfall.working.Worked;
import org.jspecify.annotations.Nullable;

/** A hole laid out as one answer. */
final class HoleDocument {
    private final HoleChoice choice;
    private final Behind behind;

    private HoleDocument(HoleChoice choice, Behind behind) {
        this.choice = choice;
        this.behind = behind;
    }

    static Document of(Worked<HoleChoice> worked, UnitSystem units) {
        HoleChoice choice = worked.value();
        List<Step> steps = worked.steps();
        return new Document(
                "hole",
                choice.wish().callOut().normal(),
                units,
                new HoleDocument(choice, new Behind(steps)).items(),
                steps,
                choice.cautions());
    }

    private List<Item> items() {
        List<Item> items = new ArrayList<>();
        HoleChoice.Tools tools = choice.tools();
        items.add(new Item.Text("callout", choice.wish().callOut().normal()));
        items.add(new Item.Text("hand", choice.wish().callOut().thread().hand().word()));
        items.add(range("minor", choice.minor(), "Dhmin", "Dhmax", "D1min", "D1max"));
        items.add(new Item.Text("shareBasis", tools.basis().words()));
        items.add(behind.figure("wanted", 100 * tools.wanted(), Unit.SHARE, "q_w"));
        items.add(new Item.Group("drill", drill(tools.drill())));
        items.add(new Item.Rows(
                "others",
                tools.others().stream()
                        .map(other -> new Item.Group("drill", drill(other)))
                        .toList()));
        if (tools.forming() != null) {
            items.add(forming(tools.forming()));
        }
        if (!tools.listed().isEmpty()) {
            items.add(listed(tools.listed()));
        }
        items.add(range("countersink", choice.entry().countersink(), "D_c1", "D_c2"));
        if (choice.depth() != null) {
            items.add(depth(choice.depth()));
        }
        choice.insert().ifPresent(seat -> items.add(insert(seat)));
        choice.strength().ifPresent(strength -> items.add(strength(strength)));
        if (!choice.curve().isEmpty()) {
            items.add(curve());
        }
        return items;
    }

    private List<Item> drill(Drilled drilled) {
        Drilled.Rules rules = drilled.rules();
        return List.of(
                new Item.Text("name", drilled.drill().called()),
                behind.figure(
                        "diameter", drilled.drill().diameter(), rules.diameter().symbol()),
                behind.figure(
                        "share",
                        100 * drilled.share(),
                        Unit.SHARE,
                        rules.share().symbol()),
                new Item.BandFigure(
                        "expectedHole",
                        new Item.Point(drilled.expected().low(), rules.low()),
                        new Item.Point(drilled.expected().expected(), rules.middle()),
                        new Item.Point(drilled.expected().high(), rules.high()),
                        Unit.LENGTH),
                new Item.Flag("inside", drilled.inside()));
    }

    private Item forming(FormingHole forming) {
        return Item.Group.of(
                "forming",
                behind.figure("wanted", forming.wanted(), "D_form"),
                range("limits", forming.limits(), "D_jam", "D_low"));
    }

    private Item listed(List<ListedDrill> rows) {
        return new Item.Rows(
                "listed",
                rows.stream()
                        .map(row -> Item.Group.of(
                                "drill",
                                new Item.Text("list", row.drill().list()),
                                new Item.Text("name", row.drill().called()),
                                behind.figure(
                                        "diameter",
                                        row.drill().size().drill(),
                                        row.rules().diameter().symbol()),
                                behind.figure(
                                        "share",
                                        100 * row.share(),
                                        Unit.SHARE,
                                        row.rules().share().symbol()),
                                new Item.Flag("inside", row.inside())))
                        .toList());
    }

    private Item depth(DepthStack stack) {
        List<Item> items = new ArrayList<>(List.of(
                behind.figure("fullThread", stack.fullThread(), "T_f"),
                behind.figure("tapPoint", stack.tapPoint(), "T_p"),
                behind.figure("drill", stack.drill(), "T_d"),
                behind.figure("drillPoint", stack.drillPoint(), "T_t"),
                behind.figure("chamferThreads", stack.chamferThreads(), Unit.PURE, "n_c"),
                behind.figure("chipStore", stack.chipStore(), "c_s")));
        if (choice.entry().skew() != null) {
            items.add(behind.figure("skewPerDegree", choice.entry().skew(), "S_k"));
        }
        if (choice.entry().goTurns() != null) {
            items.add(behind.figure("goTurns", choice.entry().goTurns(), Unit.PURE, "N_go"));
        }
        return new Item.Group("depth", items);
    }

    private Item insert(InsertSeat seat) {
        return Item.Group.of(
                "insert",
                behind.figure("nominal", seat.nominal(), "Q_i"),
                range("fitted", seat.fitted(), "Q_1", "Q_2"),
                range("setDown", seat.setDown(), "s_1", "s_2"),
                behind.figure("fullThread", seat.fullThread(), "T_i"),
                behind.figure("drill", seat.drill(), "T_iq"));
    }

    private Item strength(Strength strength) {
        return Item.Group.of(
                "strength",
                behind.figure("tensileStressArea", strength.tensileArea().mm2(), Unit.AREA, "A_t"),
                behind.figure(
                        "externalShearAreaPerLength",
                        strength.externalPerLength().mm(),
                        Unit.AREA_PER_LENGTH,
                        "A_s"),
                behind.figure(
                        "internalShearAreaPerLength",
                        strength.internalPerLength().mm(),
                        Unit.AREA_PER_LENGTH,
                        "A_n"),
                behind.figure("engagementToBreakScrew", strength.engagement(), "L_e"),
                behind.figure("ratio", strength.ratio(), Unit.PURE, "J"));
    }

    private Item curve() {
        List<Item.Group> rows = new ArrayList<>();
        for (TradeOff row : choice.curve()) {
            TradeOff.Rules rules = row.rules();
            rows.add(Item.Group.of(
                    "share",
                    behind.figure(
                            "share",
                            100 * row.share(),
                            Unit.SHARE,
                            rules.share().symbol()),
                    behind.figure("hole", row.hole(), rules.hole().symbol()),
                    behind.figure(
                            "engagementToBreakScrew",
                            row.engagement(),
                            rules.engagement().symbol()),
                    behind.figure(
                            "torque", row.torque(), Unit.PURE, rules.torque().symbol()),
                    new Item.Flag("chosen", row.chosen())));
        }
        return new Item.Rows("curve", rows);
    }

    private Item.Range range(String key, Limits limits, String... symbols) {
        return new Item.Range(key, end(limits.min(), symbols), end(limits.max(), symbols), Unit.LENGTH);
    }

    private Item.@Nullable Point end(@Nullable Length length, String... symbols) {
        return length == null ? null : behind.point(length.mm(), Unit.LENGTH, symbols);
    }
}
