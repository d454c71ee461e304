// SPDX-License-Identifier: Apache-2.0
package landfall.store.crib;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import landfall.cards.crib.ItemForms;
import landfall.history.ItemKind;
import landfall.history.Mark;
import landfall.quantity.UnitSystem;

/**
 * A thing of the crib as it was entered.
 *
 * @param handSet the set it belongs to; empty for none
 * @param card path and text, as {@link ItemForms} names them
 */
public record Item(Mark mark, ItemKind kind, String handSet, Map<String, String> card) {
    public Item {
        card = Collections.unmodifiableMap(new LinkedHashMap<>(card));
    }

    /** What things of one kind are searched by: the call-out without class, else the diameter; empty where neither. */
    public String size() {
        return ItemForms.thread(card)
                .map(callOut -> callOut.withoutClass().normal())
                .orElse(card.getOrDefault("diameter", ""));
    }

    /** What bare figures about it are in. */
    public UnitSystem bare() {
        return ItemForms.bare(card);
    }
}
