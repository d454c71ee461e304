// SPDX-License-Identifier: Apache-2.0
package landfall.store.crib;

import landfall.history.Standing;

/**
 * An event that is kept.
 *
 * @param standing of the thing after it; after the newest, where a request came twice
 */
public record Logged(Item item, Standing standing, KeptEvent event) {
    public long seq() {
        return event.event().seq();
    }
}
