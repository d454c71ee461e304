// SPDX-License-Identifier: Apache-2.0
package landfall.store.crib;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import landfall.cards.crib.FoldedJson;
import landfall.cards.crib.ShopLaws;
import landfall.cards.crib.TapOnRecord;
import landfall.history.Mark;
import landfall.store.Store;
import landfall.tap.FluteKind;
import landfall.wear.Brief;
import landfall.wear.Run;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Query;
import org.jspecify.annotations.Nullable;

/** The runs of the shop's taps, in brief, as the wear laws want them; no history is read. */
public final class RunRecords {
    private static final int FETCH = 1000;

    private final Store store;

    /** What the runs of a law are at a moment: they have changed when this has. */
    public record Stamp(long runs, long seqs) {}

    /** A run with the law that it belongs to; of an open one, the law that tells when its tap is due. */
    public record OpenRun(Mark mark, ShopLaws.Key law, Brief run) {}

    /** Brings runs that an earlier program folded to the present rules first. */
    public RunRecords(Store store) {
        this.store = store;
        Refold.bring(store);
    }

    public List<Brief> of(ShopLaws.Key law) {
        return store.read(handle -> RunRows.of(handle, law));
    }

    public Stamp stamp(ShopLaws.Key law) {
        return store.read(handle -> handle.createQuery("select count(*) as runs, coalesce(sum(seq), 0) as seqs from run"
                        + " where size = :size and flutes = :flutes and material = :material")
                .bind("size", law.size())
                .bind("flutes", RunRows.word(law.flutes()))
                .bind("material", law.material())
                .map((rows, context) -> new Stamp(rows.getLong("runs"), rows.getLong("seqs")))
                .one());
    }

    /** A tap as it is in use; empty for what is no tap, or is one that has ended. */
    public Optional<TapOnRecord> tap(Mark mark) {
        return store.read(handle -> ItemRows.find(handle, mark)
                .flatMap(row -> RunRows.open(handle, mark)
                        .flatMap(use -> TapOnRecord.of(mark.text(), row.item().card(), use))));
    }

    /**
     * Every open run of a tap of which a material is known.
     *
     * @param size of the taps wanted; null for all
     */
    public void open(@Nullable String size, Consumer<OpenRun> each) {
        store.read(handle -> open(handle, size, each));
    }

    /**
     * Runs that a sharpening in that time began, by law; those of which no material is known are left out.
     *
     * @param from the first moment
     * @param to the first one after it
     */
    public Map<ShopLaws.Key, List<Brief>> sharpened(Instant from, Instant to) {
        Map<ShopLaws.Key, List<Brief>> runs = new HashMap<>();
        store.read(handle -> {
            handle.createQuery("select mark, size, flutes, material, ending, told from run where material <> ''"
                            + " and told like '%\"SHARPENED\"%'")
                    .setFetchSize(FETCH)
                    .map((rows, context) -> began(rows, from, to))
                    .useStream(all -> all.flatMap(Optional::stream)
                            .forEach(run -> runs.computeIfAbsent(run.law(), law -> new ArrayList<>())
                                    .add(run.run())));
            return handle;
        });
        return runs;
    }

    private static Optional<OpenRun> began(ResultSet rows, Instant from, Instant to) throws SQLException {
        Instant at = FoldedJson.from(rows.getString("told")).orElse(Instant.MIN);
        if (at.isBefore(from) || !at.isBefore(to)) {
            return Optional.empty();
        }
        Brief run = RunRows.brief(rows);
        return run.span().start() == Run.Start.SHARPENED
                ? Optional.of(new OpenRun(new Mark(run.mark()), key(rows, "material"), run))
                : Optional.empty();
    }

    private static ShopLaws.Key key(ResultSet rows, String material) throws SQLException {
        return new ShopLaws.Key(
                rows.getString("size"),
                FluteKind.valueOf(rows.getString("flutes").toUpperCase(Locale.ROOT)),
                rows.getString(material));
    }

    /** What all runs are at a moment: none has changed while this has not. */
    public Stamp stamp() {
        return store.read(
                handle -> handle.createQuery("select count(*) as runs, coalesce(sum(seq), 0) as seqs from run")
                        .map((rows, context) -> new Stamp(rows.getLong("runs"), rows.getLong("seqs")))
                        .one());
    }

    /** The laws that tell when the taps of open runs are due. */
    public List<ShopLaws.Key> laws(@Nullable String size) {
        return store.read(handle -> {
            Query query = handle.createQuery("select distinct size, flutes, works_in from run where ending = 'open'"
                    + " and works_in <> ''" + (size == null ? "" : " and size = :size"));
            if (size != null) {
                query.bind("size", size);
            }
            return query.map((rows, context) -> key(rows, "works_in")).list();
        });
    }

    private static boolean open(Handle handle, @Nullable String size, Consumer<OpenRun> each) {
        String sql = "select mark, size, flutes, works_in, ending, told from run where ending = 'open'"
                + " and works_in <> ''" + (size == null ? "" : " and size = :size")
                + " order by size, flutes, works_in";
        Query query = handle.createQuery(sql).setFetchSize(FETCH);
        if (size != null) {
            query.bind("size", size);
        }
        query.map((rows, context) ->
                        new OpenRun(new Mark(rows.getString("mark")), key(rows, "works_in"), RunRows.brief(rows)))
                .useStream(all -> all.forEach(each));
        return true;
    }
}
