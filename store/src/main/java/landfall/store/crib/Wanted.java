// SPDX-License-Identifier: Apache-2.0
package landfall.store.crib;

import landfall.history.ItemKind;
import org.jspecify.annotations.Nullable;

/**
 * Which things a list holds; null asks for all.
 *
 * @param size as {@link Item#size()} writes it
 * @param ended whether broken and scrapped ones are in it
 */
public record Wanted(@Nullable ItemKind kind, @Nullable String size, boolean ended, int most) {
    public static Wanted all() {
        return new Wanted(null, null, true, Integer.MAX_VALUE);
    }
}
