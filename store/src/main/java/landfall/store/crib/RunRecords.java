// SPDX-License-Identifier: Apache-2.0
package landfall.store.crib;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import landfall.cards.crib.ShopLaws;
import landfall.cards.crib.TapOnRecord;
import landfall.history.Mark;
import landfall.store.Store;
import landfall.tap.FluteKind;
import landfall.wear.Brief;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/** The runs of the shop's taps, in brief, as the wear laws want them; no history is read. */
public final class RunRecords {
    private static final int FETCH = 1000;

    private final Store store;

    /** What the runs of a law are at a moment: they have changed when this has. */
    public record Stamp(long runs, long seqs) {}

    /** A run that is open, with the law that tells when its tap is due. */
    public record OpenRun(Mark mark, ShopLaws.Key law, Brief run) {}

    /** Brings runs that an earlier program folded to the present rules first. */
    public RunRecords(Store store) {
        this.store = store;
        Refold.bring(store, done -> {});
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

    private static boolean open(Handle handle, @Nullable String size, Consumer<OpenRun> each) {
        String sql = "select mark, size, flutes, works_in, ending, told from run where ending = 'open'"
                + " and works_in <> ''" + (size == null ? "" : " and size = :size")
                + " order by size, flutes, works_in";
        var query = handle.createQuery(sql).setFetchSize(FETCH);
        if (size != null) {
            query.bind("size", size);
        }
        query.map((rows, context) -> new OpenRun(
                        new Mark(rows.getString("mark")),
                        new ShopLaws.Key(
                                rows.getString("size"),
                                FluteKind.valueOf(rows.getString("flutes").toUpperCase(Locale.ROOT)),
                                rows.getString("works_in")),
                        RunRows.brief(rows)))
                .useStream(all -> all.forEach(each));
        return true;
    }
}
