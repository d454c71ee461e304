// SPDX-License-Identifier: Apache-2.0
package landfall.app.crib;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import landfall.cards.crib.ShopLaws;
import landfall.cards.crib.TapOnRecord;
import landfall.history.ItemKind;
import landfall.history.Mark;
import landfall.store.crib.Crib;
import landfall.store.crib.Kept;
import landfall.store.crib.Row;
import landfall.store.crib.Wanted;
import org.jspecify.annotations.Nullable;

/** When taps of the crib are due, by the wear laws that all taps of their threads have taught. */
public final class DueTaps {
    private DueTaps() {}

    /** Every tap in use whose material is known, the one that is due first at the head. */
    public static List<ShopLaws.Found> all(Crib crib) {
        List<TapOnRecord> taps = taps(crib, null);
        return ShopLaws.of(taps).found(taps);
    }

    /** One tap; empty where it is no tap, has ended, or nobody told what it cuts. */
    public static Optional<ShopLaws.Found> of(Crib crib, Kept kept) {
        if (kept.item().kind() != ItemKind.TAP) {
            return Optional.empty();
        }
        Mark mark = kept.item().mark();
        List<TapOnRecord> alike = taps(crib, kept.item().size());
        return alike.stream()
                .filter(tap -> tap.mark().equals(mark.text()))
                .findFirst()
                .flatMap(tap -> Optional.ofNullable(ShopLaws.of(alike).find(tap)));
    }

    /** Broken and scrapped ones teach too. */
    private static List<TapOnRecord> taps(Crib crib, @Nullable String size) {
        List<TapOnRecord> taps = new ArrayList<>();
        for (Row row : crib.list(new Wanted(ItemKind.TAP, size, true, Integer.MAX_VALUE))) {
            crib.find(row.item().mark())
                    .flatMap(kept -> TapOnRecord.of(
                            kept.item().mark().text(), kept.item().card(), kept.history()))
                    .ifPresent(taps::add);
        }
        return taps;
    }
}
