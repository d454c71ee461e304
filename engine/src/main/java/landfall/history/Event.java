// SPDX-License-Identifier: Apache-2.0
package landfall.history;

import java.time.Instant;

/**
 * Something that happened to one thing.
 *
 * @param seq its number in the thing's own history, from 1
 * @param by who says so
 */
public record Event(long seq, Instant at, String by, Happening what) {
    public EventKind kind() {
        return what.kind();
    }
}
