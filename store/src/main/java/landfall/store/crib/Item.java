// SPDX-License-Identifier: Apache-2.0
package landfall.store.crib;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
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

    /** What it is, in few words: its size, else what its card calls it; a gauge with both. */
    public String words() {
        List<String> words = new ArrayList<>();
        for (String text : List.of(
                card.getOrDefault("gauge", ""),
                size(),
                card.getOrDefault("name", ""),
                card.getOrDefault("wheel.marking", ""))) {
            if (!text.isEmpty()) {
                words.add(text);
            }
        }
        return kind == ItemKind.GAUGE
                ? String.join(" ", words.subList(0, Math.min(2, words.size())))
                : words.stream().findFirst().orElse("");
    }

    /** What bare figures about it are in. */
    public UnitSystem bare() {
        return ItemForms.bare(card);
    }
}
