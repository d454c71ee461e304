// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import landfall.cards.answer.Item;
import landfall.cards.answer.Unit;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.thread.CallOut;
import landfall.thread.ExternalExtras;
import landfall.thread.Fit;
import landfall.thread.LimitsOfSize;
import landfall.thread.ScrewThread;
import landfall.thread.Side;
import landfall.thread.SideLimits;
import landfall.thread.Taper;
import org.jspecify.annotations.Nullable;

/**
 * Limits of size laid out as items. The families write their steps with one set of symbols: small letters outside,
 * capitals inside, 2 at the pitch line, 1 and 3 at the minor diameter.
 */
final class ThreadItems {
    private final Behind behind;

    ThreadItems(Behind behind) {
        this.behind = behind;
    }

    List<Item> of(LimitsOfSize limits) {
        CallOut callOut = limits.callOut();
        ScrewThread thread = callOut.thread();
        List<Item> items = new ArrayList<>();
        items.add(new Item.Text("callout", callOut.normal()));
        items.add(new Item.Text("display", callOut.normal().replaceAll("(?<=[\\d.])x(?=[\\dP])", "×")));
        items.add(new Item.Text("family", thread.family().code()));
        items.add(new Item.Text("hand", thread.hand().word()));
        items.add(new Item.Count("starts", thread.lead().starts()));
        items.add(behind.figure("pitch", thread.pitch(), "p"));
        items.add(behind.figure("lead", thread.lead().perTurn(), "L"));
        limits.internal().ifPresent(side -> items.add(new Item.Group("internal", internal(side))));
        limits.external().ifPresent(side -> items.add(new Item.Group("external", external(side, limits.extras()))));
        limits.fit().ifPresent(fit -> items.add(new Item.Group("fit", fit(fit))));
        limits.taper().ifPresent(taper -> items.add(new Item.Group("taper", taper(taper))));
        limits.truncation().ifPresent(cut -> items.add(range("truncation", cut, "f_min", "f_max")));
        return items;
    }

    /** The room between the flanks; the side that the call-out does not name is the usual one. */
    private List<Item> fit(Fit fit) {
        String inside = fit.internal().className() + (fit.usual() == Side.INTERNAL ? " (usual)" : "");
        String outside = fit.external().className() + (fit.usual() == Side.EXTERNAL ? " (usual)" : "");
        return List.of(
                new Item.Text("pair", inside + " with " + outside),
                behind.figure("least", fit.least(), "c_min"),
                behind.figure("greatest", fit.greatest(), "c_max"));
    }

    /** A taper thread: its diameters plane by plane, and how far it screws in. */
    private List<Item> taper(Taper taper) {
        Taper.Turns turns = taper.turns();
        return List.of(
                behind.figure("perLength", taper.perLength(), Unit.PURE, "taper"),
                new Item.Rows("planes", taper.planes().stream().map(this::plane).toList()),
                behind.figure("handTight", turns.handTight(), "L1", "a"),
                behind.figure("wrench", turns.wrench(), "L3", "w"),
                behind.figure("turnsPlus", turns.plus(), Unit.PURE, "plus"),
                behind.figure("turnsMinus", turns.minus(), Unit.PURE, "minus"));
    }

    private Item.Group plane(Taper.Plane plane) {
        return Item.Group.of(
                "plane",
                new Item.Text("name", plane.name()),
                behind.figure("at", plane.at(), "A3", "A0", "L1", "L2", "a", "b"),
                behind.figure("major", plane.major(), "D3", "D0", "D1", "D2", "d0", "dg", "du"),
                behind.figure("pitch", plane.pitch(), "E3", "E0", "E1", "E2", "d20", "d2g", "d2u"),
                behind.figure("minor", plane.minor(), "K3", "K0", "K1", "K2", "d10", "d1g", "d1u"));
    }

    private List<Item> internal(SideLimits side) {
        return List.of(
                new Item.Text("class", side.className()),
                range("major", side.major(), "Dmin", "D", "Dmax"),
                range("pitch", side.pitch(), "D2min", "D2max"),
                range("minor", side.minor(), "D1min", "D1max"));
    }

    private List<Item> external(SideLimits side, Optional<ExternalExtras> extras) {
        List<Item> items = new ArrayList<>(List.of(
                new Item.Text("class", side.className()),
                range("major", side.major(), "dmin", "dmax", "D"),
                range("pitch", side.pitch(), "d2min", "d2max"),
                range("minor", side.minor(), "d3min", "d1min", "d1max", "d3max")));
        extras.ifPresent(more -> {
            items.add(behind.figure("allowance", more.allowance(), "es"));
            items.add(behind.figure("roundedRootMinorMax", more.roundedRootMinorMax(), "d3max"));
            more.unfinishedMajorMin()
                    .ifPresent(least -> items.add(behind.figure("unfinishedMajorMin", least, "dminu")));
        });
        return items;
    }

    private Item.Range range(String key, Limits limits, String... symbols) {
        return new Item.Range(key, end(limits.min(), symbols), end(limits.max(), symbols), Unit.LENGTH);
    }

    private Item.@Nullable Point end(@Nullable Length length, String... symbols) {
        return length == null ? null : behind.point(length.mm(), Unit.LENGTH, symbols);
    }
}
