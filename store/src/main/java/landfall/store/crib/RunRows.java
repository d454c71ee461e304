// SPDX-License-Identifier: Apache-2.0
package landfall.store.crib;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import landfall.cards.crib.FoldedJson;
import landfall.cards.crib.ShopLaws;
import landfall.cards.crib.TapOnRecord;
import landfall.history.Mark;
import landfall.tap.FluteKind;
import landfall.wear.Brief;
import landfall.wear.Run;
import org.jdbi.v3.core.Handle;

/** Runs of taps, in brief, as rows. */
final class RunRows {
    static final String INSERT = "insert into run (size, flutes, material, works_in, ending, seq, told, mark, number)"
            + " values (?, ?, ?, ?, ?, ?, ?, ?, ?)";

    static final String UPDATE = "update run set size = ?, flutes = ?, material = ?, works_in = ?, ending = ?, seq = ?,"
            + " told = ? where mark = ? and number = ?";

    private RunRows() {}

    /** @param worksIn of the run before it */
    static Object[] values(ShopLaws.Key tap, Brief run, String worksIn, long seq, long number) {
        return new Object[] {
            tap.size(),
            word(tap.flutes()),
            run.material(),
            run.material().isEmpty() ? worksIn : run.material(),
            run.span().end().name().toLowerCase(Locale.ROOT),
            seq,
            FoldedJson.run(run),
            run.mark(),
            number
        };
    }

    static String word(FluteKind flutes) {
        return flutes.name().toLowerCase(Locale.ROOT);
    }

    static void clear(Handle handle, Mark mark) {
        handle.createUpdate("delete from run where mark = :mark")
                .bind("mark", mark.text())
                .execute();
    }

    static void recard(Handle handle, Item item) {
        handle.createUpdate("update run set size = :size, flutes = :flutes where mark = :mark")
                .bind("size", item.size())
                .bind("flutes", word(TapOnRecord.flutes(item.card())))
                .bind("mark", item.mark().text())
                .execute();
    }

    static Optional<TapOnRecord.InUse> open(Handle handle, Mark mark) {
        return handle.createQuery("select mark, ending, told, works_in from run where mark = :mark and ending = 'open'")
                .bind("mark", mark.text())
                .map((rows, context) -> new TapOnRecord.InUse(brief(rows), rows.getString("works_in")))
                .findOne();
    }

    static List<Brief> of(Handle handle, ShopLaws.Key law) {
        return handle.createQuery("select mark, ending, told from run where size = :size and flutes = :flutes"
                        + " and material = :material order by mark, number")
                .bind("size", law.size())
                .bind("flutes", word(law.flutes()))
                .bind("material", law.material())
                .map((rows, context) -> brief(rows))
                .list();
    }

    static Brief brief(ResultSet rows) throws SQLException {
        return FoldedJson.run(
                rows.getString("mark"),
                Run.End.valueOf(rows.getString("ending").toUpperCase(Locale.ROOT)),
                rows.getString("told"));
    }
}
