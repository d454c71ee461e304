// SPDX-License-Identifier: Apache-2.0
package landfall.app.crib;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import landfall.cards.answer.Document;
import landfall.cards.crib.DueBeside;
import landfall.cards.crib.DueDocument;
import landfall.cards.crib.GaugeDue;
import landfall.cards.crib.ShopLaws;
import landfall.cost.Sittings;
import landfall.history.ItemKind;
import landfall.history.Mark;
import landfall.quantity.UnitSystem;
import landfall.store.crib.Crib;
import landfall.store.crib.HandSet;
import landfall.store.crib.Row;
import landfall.wear.Due;
import org.jspecify.annotations.Nullable;

/** All that is due in the crib: taps by their wear, hand sets as wholes, gauges by the day of their calibration. */
public final class DueBoard {
    /** The most worn taps, each of which a list weighs. */
    private static final int MOST_ROWS = 5000;

    private final Crib crib;
    private final DueTaps taps;

    public DueBoard(Crib crib, DueTaps taps) {
        this.crib = crib;
        this.taps = taps;
    }

    /**
     * A thing that is due, or that belongs to a set of which a tap is.
     *
     * @param tap how it is due; null for a gauge, and for a tap that only goes with its set
     * @param gauge null for a tap
     */
    public record DueRow(
            Row row, ShopLaws.@Nullable Found tap, @Nullable GaugeDue gauge) {}

    /** {@code crib due}. */
    public Document document(LocalDate today) {
        DueTaps.Soonest soonest = taps.soonest();
        List<ShopLaws.Found> due = soonest.taps().stream()
                .filter(found -> found.when() != Due.When.LATER)
                .toList();
        DueBeside beside = new DueBeside(
                today,
                sets(due),
                crib.calibrations(null, today.plusDays(GaugeDue.NEAR_DAYS)),
                crib.gaugesWithoutCalibration(),
                soonest.unweighed(),
                soonest.later());
        return DueDocument.of(soonest.taps(), beside, Sittings.Times.USUAL, UnitSystem.METRIC);
    }

    private List<DueBeside.SetDue> sets(List<ShopLaws.Found> due) {
        Map<String, Due.When> when = new TreeMap<>();
        for (ShopLaws.Found found : due) {
            String set = setOf(new Mark(found.tap().mark()));
            if (!set.isEmpty()) {
                when.merge(set, found.when(), (one, other) -> one.compareTo(other) <= 0 ? one : other);
            }
        }
        List<DueBeside.SetDue> sets = new ArrayList<>();
        when.forEach((name, first) -> {
            HandSet set = crib.set(name);
            List<Row> missing = set.missing();
            sets.add(new DueBeside.SetDue(
                    name,
                    first,
                    marks(set.members().stream()
                            .filter(row -> !missing.contains(row))
                            .toList()),
                    marks(missing)));
        });
        return sets;
    }

    private String setOf(Mark mark) {
        return crib.row(mark).map(row -> row.item().handSet()).orElse("");
    }

    private static List<String> marks(List<Row> rows) {
        return rows.stream().map(row -> row.item().mark().text()).toList();
    }

    /** @param unweighed taps that are less worn than those told and may be due too */
    public record DueRows(List<DueRow> rows, int unweighed) {
        public DueRows {
            rows = List.copyOf(rows);
        }

        /** @param kind of the things wanted; null for all */
        public DueRows of(@Nullable ItemKind kind) {
            return kind == null
                    ? this
                    : new DueRows(
                            rows.stream()
                                    .filter(row -> row.row().item().kind() == kind)
                                    .toList(),
                            unweighed);
        }
    }

    /**
     * {@code crib list --due}: the taps that are due or may be, the first at the head, each with the rest of its set;
     * then gauges past their calibration or near its end.
     *
     * @param size call-out without class; null for all
     */
    public DueRows rows(@Nullable String size, LocalDate today) {
        Map<Mark, DueRow> rows = new LinkedHashMap<>();
        DueTaps.Soonest soonest = taps.due(size, MOST_ROWS);
        for (ShopLaws.Found found : soonest.taps()) {
            Mark mark = new Mark(found.tap().mark());
            Optional<Row> row = crib.row(mark);
            if (row.isEmpty()) {
                continue;
            }
            rows.put(mark, new DueRow(row.get(), found, null));
            String name = row.get().item().handSet();
            if (!name.isEmpty()) {
                crib.set(name)
                        .inUse()
                        .forEach(member -> rows.putIfAbsent(member.item().mark(), new DueRow(member, null, null)));
            }
        }
        crib.calibrations(size, today.plusDays(GaugeDue.NEAR_DAYS))
                .forEach(gauge -> crib.row(new Mark(gauge.mark()))
                        .ifPresent(row -> rows.put(row.item().mark(), new DueRow(row, null, gauge))));
        return new DueRows(List.copyOf(rows.values()), soonest.unweighed());
    }
}
