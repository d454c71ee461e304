// SPDX-License-Identifier: Apache-2.0
package landfall.app.crib;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import landfall.app.figure.AnswerView;
import landfall.app.given.Cells;
import landfall.app.shell.Frame;
import landfall.app.shell.Place;
import landfall.app.shell.Shell;
import landfall.app.shell.Typed;
import landfall.cards.crib.ShopLaws;
import landfall.cards.crib.Stock;
import landfall.cards.crib.StockDocument;
import landfall.cards.crib.StockForm;
import landfall.cards.words.Words;
import landfall.cost.Saved;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.quantity.TimeSpan;
import landfall.store.crib.RunRecords;
import landfall.store.crib.ShelfRecords;
import landfall.wear.Brief;
import org.jspecify.annotations.Nullable;

/** The page of the taps that are due, gathered into sittings; of what to buy; of what sharpening saved this year. */
public final class DuePage {
    public static final String PATH = Place.CRIB.path() + "/due";

    private final Shell shell;
    private final CribDoor door;
    private @Nullable Sharpened sharpened;

    public DuePage(Shell shell, CribDoor door) {
        this.shell = shell;
        this.door = door;
    }

    public void show(Context ctx) {
        Answer<Map<String, String>> query = Typed.of(ctx);
        Map<String, String> typed = query instanceof Answer.Of<Map<String, String>> of ? of.value() : Map.of();
        List<Finding> findings = new ArrayList<>(query.findings());
        AnswerView stock = null;
        Answer<Stock> answer = Stock.of(records(ZonedDateTime.now(door.clock())), typed);
        if (answer instanceof Answer.Of<Stock> of) {
            stock = new AnswerView(StockDocument.of(of.value()));
        } else {
            findings.addAll(answer.findings());
            ctx.status(HttpStatus.BAD_REQUEST);
        }
        LocalDate today = ZonedDateTime.now(door.clock())
                .withZoneSameInstant(ZoneId.systemDefault())
                .toLocalDate();
        AnswerView due = new AnswerView(new DueBoard(door.crib(), door.due()).document(today));
        Map<String, Object> values = new HashMap<>();
        values.put("frame", new Frame(Words.of("page.due-taps.question"), Place.CRIB));
        values.put("due", new Due(due, stock, findings));
        values.put("cells", new Cells(StockForm.FORM, typed, findings).rest());
        shell.show(ctx, "crib-due", values);
    }

    /**
     * What the page shows.
     *
     * @param stock null where what was typed is refused
     */
    public record Due(AnswerView taps, @Nullable AnswerView stock, List<Finding> findings) {
        public Due {
            findings = List.copyOf(findings);
        }
    }

    /** What is on record, and the year that goes on. */
    private Stock.OnRecord records(ZonedDateTime now) {
        ShelfRecords shelves = door.shelves();
        Optional<Instant> first = shelves.first();
        TimeSpan span =
                TimeSpan.ofSeconds(first.map(at -> (now.toInstant().toEpochMilli() - at.toEpochMilli()) / 1000.0)
                        .orElse(0.0));
        Instant year = now.withZoneSameInstant(ZoneId.systemDefault())
                .toLocalDate()
                .withDayOfYear(1)
                .atStartOfDay(ZoneId.systemDefault())
                .toInstant();
        Saved.Period period = new Saved.Period(year, now.toInstant().plusSeconds(1));
        return new Stock.OnRecord(shelves.shelves(), span, ground(shelves, period), period);
    }

    /** Kinds that were sharpened in the period; read again when a run has changed since. */
    private List<Stock.Ground> ground(ShelfRecords shelves, Saved.Period period) {
        List<Stock.Ground> ground = new ArrayList<>();
        sharpened(period)
                .forEach((key, runs) -> ground.add(new Stock.Ground(
                        key.size(),
                        door.due().law(key),
                        runs,
                        shelves.price(key.size()).orElse(null))));
        return ground;
    }

    private synchronized Map<ShopLaws.Key, List<Brief>> sharpened(Saved.Period period) {
        RunRecords.Stamp stamp = door.runs().stamp();
        Sharpened kept = sharpened;
        if (kept == null || !kept.stamp.equals(stamp) || !kept.from.equals(period.from())) {
            Map<ShopLaws.Key, List<Brief>> runs = new TreeMap<>(Comparator.comparing(ShopLaws.Key::size)
                    .thenComparing(ShopLaws.Key::flutes)
                    .thenComparing(ShopLaws.Key::material));
            runs.putAll(door.runs().sharpened(period.from(), period.to()));
            kept = new Sharpened(stamp, period.from(), runs);
            sharpened = kept;
        }
        return kept.runs;
    }

    private record Sharpened(RunRecords.Stamp stamp, Instant from, Map<ShopLaws.Key, List<Brief>> runs) {}
}
