// SPDX-License-Identifier: Apache-2.0
package landfall.cards.crib;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import landfall.cards.Cards;
import landfall.cards.answer.Document;
import landfall.cost.Sittings;
import landfall.history.Event;
import landfall.history.Happening;
import landfall.history.History;
import landfall.history.SharpeningWay;
import landfall.quantity.Length;
import landfall.quantity.Torque;
import landfall.quantity.UnitSystem;
import landfall.wear.Brief;
import landfall.wear.Briefs;
import landfall.wear.Due;
import landfall.wear.Job;
import landfall.wear.WearLaw;

/** An invented crib: three M8 taps and one that has cut nothing. */
public final class DueSamples {
    static final Happening BOUGHT = new Happening.Bought(null, null);
    static final Happening GROUND = new Happening.Sharpened(SharpeningWay.CHAMFER, null, null, null);
    static final Happening WORN = new Happening.Measured(new Happening.Sizes(Length.ofMm(0.09), null, null, null));
    private static final Instant START = Instant.parse("2026-01-05T07:00:00Z");

    private static final Map<String, History> HISTORIES = new HashMap<>();
    private static final Map<String, List<Brief>> RUNS = new HashMap<>();

    private DueSamples() {}

    public static List<Document> documents() {
        List<TapOnRecord> taps = taps();
        ShopLaws laws = laws();
        return List.of(
                DueDocument.of(Objects.requireNonNull(laws.find(taps.get(0))), new Job(40, null)),
                DueDocument.of(Objects.requireNonNull(laws.find(taps.get(1))), null),
                DueDocument.of(laws.found(taps), Sittings.Times.USUAL, UnitSystem.METRIC),
                ProspectDocument.of(prospect(measured(), 0, PRICED)),
                ProspectDocument.of(prospect(taps, 2, Map.of())),
                StockTest.documents().get(0),
                StockTest.documents().get(1),
                DueDocument.of(laws.found(taps), beside(), Sittings.Times.USUAL, UnitSystem.METRIC));
    }

    static final Map<String, String> PRICED =
            Map.of("holes", "40", "price", "20 EUR", "sharpening", "6 EUR", "spoilt", "40 EUR");

    static Prospect prospect(List<TapOnRecord> taps, int tap, Map<String, String> typed) {
        TapOnRecord asked = taps.get(tap);
        ShopLaws.Found found = Objects.requireNonNull(laws(taps).find(asked));
        return Prospect.of(found, history(asked.mark()), typed).orThrow();
    }

    private static DueBeside beside() {
        LocalDate today = LocalDate.parse("2026-11-30");
        return new DueBeside(
                today,
                List.of(new DueBeside.SetDue("SET-A", Due.When.PERHAPS, List.of("T1", "T2"), List.of("T9"))),
                List.of(
                        new GaugeDue("G-1", "GO plug M8x1.25", today.minusDays(3)),
                        new GaugeDue("G-2", "NOT GO plug M8x1.25", today.plusDays(20))),
                1,
                3,
                7);
    }

    static List<TapOnRecord> taps() {
        Map<String, String> card = Cards.typed("tap-m8.json");
        return List.of(
                tap("T1", card, BOUGHT, tapped(120), GROUND, tapped(140), GROUND, tapped(60)),
                tap("T2", card, BOUGHT, tapped(100), GROUND, cut(130, true)),
                tap("T3", Map.of("thread", "M8x1.25"), BOUGHT, tapped(150), GROUND, tapped(400)),
                tap("T4", card, BOUGHT));
    }

    /** What the taps of the crib have taught. */
    static ShopLaws laws() {
        return laws(taps());
    }

    static ShopLaws laws(List<TapOnRecord> taps) {
        Map<ShopLaws.Key, List<Brief>> runs = new HashMap<>();
        Map<ShopLaws.Key, WearLaw> laws = new HashMap<>();
        taps.forEach(tap -> runs(tap.mark()).forEach(run -> {
            ShopLaws.Key key = new ShopLaws.Key(tap.size(), tap.flutes(), run.material());
            runs.computeIfAbsent(key, any -> new ArrayList<>()).add(run);
        }));
        return ShopLaws.of(key ->
                laws.computeIfAbsent(key, any -> ShopLaws.law(key, runs.getOrDefault(key, List.of()))));
    }

    /** The same with a torque, a gauged hole and a wear land on the first one. */
    static List<TapOnRecord> measured() {
        List<TapOnRecord> taps = new ArrayList<>(taps());
        Map<String, String> card = Cards.typed("tap-m8.json");
        taps.set(0, tap("T1", card, BOUGHT, tapped(120), GROUND, tapped(140), GROUND, felt(60), WORN));
        return taps;
    }

    static TapOnRecord tap(String mark, Map<String, String> card, Happening... happenings) {
        List<Event> events = new ArrayList<>();
        for (Happening what : happenings) {
            events.add(new Event(events.size() + 1, START.plusSeconds(3600L * events.size()), "Ida", what));
        }
        History history = History.of(events);
        HISTORIES.put(mark, history);
        RUNS.put(mark, Briefs.of(mark, history).all());
        return TapOnRecord.of(mark, card, history).orElseThrow();
    }

    static List<Brief> runs(String mark) {
        return Objects.requireNonNull(RUNS.get(mark));
    }

    static History history(String mark) {
        return Objects.requireNonNull(HISTORIES.get(mark));
    }

    static Happening tapped(int holes) {
        return cut(holes, false);
    }

    /** A torque and a gauged first hole, and the wear land after it. */
    static Happening felt(int holes) {
        return new Happening.Tapped(
                new Happening.Holes(holes, false),
                new Happening.Work("1045", Length.ofMm(12)),
                new Happening.Felt(Torque.ofNm(5.5), null, 9.0));
    }

    private static Happening cut(int holes, boolean about) {
        return new Happening.Tapped(
                new Happening.Holes(holes, about),
                new Happening.Work("1045", Length.ofMm(12)),
                new Happening.Felt(null, null, null));
    }
}
