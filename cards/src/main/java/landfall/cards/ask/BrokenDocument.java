// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import landfall.cards.answer.Document;
import landfall.cards.answer.Item;
import landfall.cards.answer.Unit;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.quantity.UnitSystem;
import landfall.salvage.Salvage;
import landfall.salvage.Sizes;
import landfall.salvage.WayOut;
import landfall.working.Step;
import landfall.working.Worked;
import org.jspecify.annotations.Nullable;

/** The ways to get a broken tap out laid out as one answer. */
final class BrokenDocument {
    private final Salvage salvage;
    private final Behind behind;

    private BrokenDocument(Salvage salvage, Behind behind) {
        this.salvage = salvage;
        this.behind = behind;
    }

    static Document of(Worked<Salvage> worked, UnitSystem units) {
        Salvage salvage = worked.value();
        List<Step> steps = worked.steps();
        String callOut = salvage.broken().callOut().normal();
        return new Document(
                "broken",
                callOut,
                units,
                new BrokenDocument(salvage, new Behind(steps)).items(),
                steps,
                salvage.cautions());
    }

    private List<Item> items() {
        List<Item> items = new ArrayList<>();
        items.add(new Item.Text("callout", salvage.broken().callOut().normal()));
        items.add(
                new Item.Text("hand", salvage.broken().callOut().thread().hand().word()));
        items.add(new Item.Rows(
                "ways", salvage.ways().stream().map(BrokenDocument::way).toList()));
        Sizes sizes = salvage.sizes();
        items.add(range("core", sizes.core(), "d_k1", "d_k2"));
        if (sizes.tool() != null) {
            items.add(range("tool", sizes.tool(), "d_k2", "D_x"));
        }
        sizes.insert()
                .ifPresent(insert -> items.add(Item.Group.of(
                        "insert",
                        new Item.Text("callout", insert.callOut().normal()),
                        range("minor", insert.minor(), "D1min", "D1max"),
                        range("major", insert.major(), "Dmin"))));
        return items;
    }

    private static Item.Group way(WayOut out) {
        return Item.Group.of(
                "way",
                new Item.Text("way", out.way().name()),
                new Item.Flag("fits", out.fits()),
                new Item.Text("how", out.way().how()),
                new Item.Text("needs", out.way().needs()),
                new Item.Text("cost", out.way().cost()),
                new Item.Text("risk", out.way().risk()),
                new Item.Lines("reasons", out.reasons()),
                new Item.Lines("against", out.against()));
    }

    private Item range(String key, Limits limits, String... symbols) {
        return new Item.Range(
                key,
                point(Objects.requireNonNull(limits.min()), symbols),
                limits.max() == null ? null : point(limits.max(), symbols),
                Unit.LENGTH);
    }

    private Item.@Nullable Point point(Length length, String... symbols) {
        return behind.point(length.mm(), Unit.LENGTH, symbols);
    }
}
