// SPDX-License-Identifier: Apache-2.0
package landfall.store.crib;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import landfall.cards.crib.ShopLaws;
import landfall.cards.crib.TapOnRecord;
import landfall.history.Event;
import landfall.history.History;
import landfall.history.ItemKind;
import landfall.history.Mark;
import landfall.history.Standing;
import landfall.wear.Brief;
import landfall.wear.Briefs;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/** How one thing stands within a transaction. Events that follow in time are folded in one by one; others anew. */
final class Ledger {
    static final String SELECT = "select " + ItemRows.COLUMNS + ", run.number, run.works_in, run.told, run.ending"
            + " from item left join run on run.mark = item.mark and run.ending = 'open' where item.mark = ?";

    private final Item item;
    private final Standing before;
    private final boolean isNew;
    private final @Nullable Open open;
    private Standing standing;
    private @Nullable Briefs briefs;
    private boolean anew;
    private boolean known;

    /** The run that is open, as it was read. */
    private record Open(long number, String worksIn, Brief run) {}

    private Ledger(Row row, @Nullable Open open, boolean isNew) {
        this.item = row.item();
        this.before = row.standing();
        this.standing = row.standing();
        this.isNew = isNew;
        this.open = open;
        this.briefs = open == null ? null : Briefs.after(open.run);
        this.anew = !row.current();
        this.known = row.current();
    }

    /** Of a thing to which nothing has happened and which is yet to be entered. */
    static Ledger fresh(Item item) {
        Ledger ledger = new Ledger(Row.of(item, Standing.NEW), null, true);
        ledger.briefs = item.kind() == ItemKind.TAP ? Briefs.fresh(item.mark().text()) : null;
        return ledger;
    }

    static Optional<Ledger> of(Handle handle, Mark mark) {
        return handle.createQuery(SELECT.replace("?", ":mark"))
                .bind("mark", mark.text())
                .map((rows, context) -> of(rows))
                .findOne();
    }

    static Ledger of(ResultSet rows) throws SQLException {
        Row row = ItemRows.row(rows);
        String told = rows.getString("told");
        return new Ledger(
                row,
                told == null ? null : new Open(rows.getLong("number"), rows.getString("works_in"), RunRows.brief(rows)),
                false);
    }

    Item item() {
        return item;
    }

    /** How it stands after what was taken; only where nothing has to be folded anew. */
    Standing standing() {
        if (!known) {
            throw new IllegalStateException("to be folded anew: " + item.mark());
        }
        return standing;
    }

    /** The number of the last event that was there when it was read. */
    long lastSeq() {
        return before.last().seq();
    }

    /** Whether it has to be folded anew before it can be told or written. */
    boolean isUnknown() {
        return !known;
    }

    /** Whether that event can be folded in without the others: it is the next in time, of a thing that goes on. */
    boolean follows(Event event) {
        return known && standing.isBefore(event) && !standing.status().ended() && (briefs != null) == isTap();
    }

    private boolean isTap() {
        return item.kind() == ItemKind.TAP;
    }

    void take(Event event) {
        if (!follows(event)) {
            anew = true;
            known = false;
            return;
        }
        standing = standing.then(event);
        if (briefs != null) {
            briefs.take(event);
        }
    }

    /** Folds all again from the events in the store and those given. */
    void foldAnew(History history) {
        standing = history.standing();
        briefs = isTap() ? Briefs.of(item.mark().text(), history) : null;
        anew = true;
        known = true;
    }

    /** Writes what follows from the events. Where it has to be done anew, that must have been done. */
    void write(Handle handle, Writes writes) {
        Row row = Row.of(item, standing());
        if (isNew) {
            writes.item().row(ItemRows.inserted(row));
        } else {
            writes.fold().row(ItemRows.folded(row, before.last().seq()));
        }
        writeRuns(handle, writes);
    }

    /** The runs alone. */
    void writeRuns(Handle handle, Writes writes) {
        if (briefs == null) {
            return;
        }
        if (anew && !isNew) {
            RunRows.clear(handle, item.mark());
        }
        runs(writes, briefs.all());
    }

    private void runs(Writes writes, List<Brief> all) {
        ShopLaws.Key tap = new ShopLaws.Key(item.size(), TapOnRecord.flutes(item.card()), "");
        boolean goesOn = !anew && !isNew;
        Open was = goesOn ? Objects.requireNonNull(open) : null;
        if (was != null && all.equals(List.of(was.run))) {
            return;
        }
        long number = was == null ? 1 : was.number;
        String worksIn = was == null ? "" : was.worksIn;
        for (Brief run : all) {
            Object[] values = RunRows.values(tap, run, worksIn, standing.last().seq(), number);
            (was != null && number == was.number ? writes.runAgain() : writes.run()).row(values);
            worksIn = run.material().isEmpty() ? worksIn : run.material();
            number++;
        }
    }
}
