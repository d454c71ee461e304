// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import landfall.cards.answer.Item;
import landfall.cards.answer.Unit;
import landfall.quantity.Band;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.tap.mark.TapZone;
import landfall.verdict.CutHole;
import landfall.verdict.Found;
import landfall.verdict.Judged;
import landfall.verdict.Verdict;
import org.jspecify.annotations.Nullable;

/** The verdict on a tap, a hole or a screw laid out as items. */
final class FoundItems {
    private final Behind behind;

    FoundItems(Behind behind) {
        this.behind = behind;
    }

    List<Item> of(Found found) {
        List<Item> items = new ArrayList<>();
        Found.OfTap tap = found.tap();
        if (tap != null && tap.zone() != null) {
            items.add(zone(tap.zone()));
        }
        items.add(new Item.Group("found", verdict(found)));
        return items;
    }

    Item zone(TapZone zone) {
        List<Item> items = new ArrayList<>();
        items.add(new Item.Text("marking", zone.mark().words()));
        items.add(range("pitch", zone.pitch(), "E_t.min", "E_t.max"));
        if (zone.major().min() != null || zone.major().max() != null) {
            items.add(range("major", zone.major(), "d_t.min", "d_t.max"));
        }
        return new Item.Group("tap", items);
    }

    private List<Item> verdict(Found found) {
        List<Item> items = new ArrayList<>();
        items.add(new Item.Text("part", found.part()));
        text("verdict", found.verdict(), items);
        rows("measured", found.judged().stream().filter(each -> each.measured() != null), items);
        rows("gauged", found.judged().stream().filter(each -> each.measured() == null), items);
        Found.OfTap tap = found.tap();
        if (tap != null) {
            text("inLimits", tap.inLimits(), items);
            if (tap.worn() != null) {
                items.add(new Item.Text("worn", tap.worn().words()));
            }
            if (tap.hole() != null) {
                items.add(hole(tap.hole()));
            }
        }
        if (found.depth() != null) {
            items.add(range("fullThread", found.depth().full(), "l_full.min", "l_full.max"));
        }
        return items;
    }

    private static void text(String key, @Nullable Verdict verdict, List<Item> items) {
        if (verdict != null) {
            items.add(new Item.Text(key, verdict.name()));
        }
    }

    private void rows(String key, Stream<Judged> judged, List<Item> items) {
        List<Item.Group> rows = judged.map(this::judged).toList();
        if (!rows.isEmpty()) {
            items.add(new Item.Rows(key, rows));
        }
    }

    private Item.Group judged(Judged judged) {
        List<Item> cells = new ArrayList<>();
        cells.add(new Item.Text("what", judged.what()));
        if (judged.measured() != null) {
            cells.add(behind.figure("found", judged.measured().value(), "x_j"));
            cells.add(behind.figure("uncertainty", judged.measured().uncertainty(), "U_j"));
            cells.add(range("limits", judged.limits(), "j.min", "j.max"));
        }
        cells.add(new Item.Text("verdict", judged.verdict().name()));
        cells.add(new Item.Text("why", judged.why()));
        return new Item.Group("row", cells);
    }

    private Item hole(CutHole hole) {
        Band pitch = hole.pitch();
        return Item.Group.of(
                "hole",
                new Item.BandFigure(
                        "pitch",
                        behind.point(pitch.low(), Unit.LENGTH, "E_h.lo"),
                        behind.point(pitch.expected(), Unit.LENGTH, "E_h"),
                        behind.point(pitch.high(), Unit.LENGTH, "E_h.hi"),
                        Unit.LENGTH),
                range("limits", hole.limits(), "E_min", "E_max"),
                new Item.Text("goPlug", hole.go().name()),
                new Item.Text("notGoPlug", hole.notGo().name()),
                new Item.Text("words", words(hole)));
    }

    private static String words(CutHole hole) {
        String go = switch (hole.go()) {
            case GO -> "GO will enter";
            case NOT_GO -> "GO will not enter";
            case BORDERLINE -> "GO may not enter";
        };
        String notGo = switch (hole.notGo()) {
            case GO -> "NOT GO will be kept out";
            case NOT_GO -> "NOT GO will enter";
            case BORDERLINE -> "NOT GO may enter";
        };
        return go + ", " + notGo;
    }

    private Item.Range range(String key, Limits limits, String least, String greatest) {
        return new Item.Range(key, end(limits.min(), least), end(limits.max(), greatest), Unit.LENGTH);
    }

    private Item.@Nullable Point end(@Nullable Length length, String symbol) {
        return length == null
                ? null
                : behind.point(Objects.requireNonNull(length).mm(), Unit.LENGTH, symbol);
    }
}
