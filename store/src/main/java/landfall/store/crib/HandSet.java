// SPDX-License-Identifier: Apache-2.0
package landfall.store.crib;

import java.util.List;
import landfall.history.Status;

/**
 * Taps that belong together, such as taper, plug and bottoming: each cuts part of the thread, so they are worth little
 * apart and are sharpened together.
 *
 * @param members every one that was ever entered, by mark
 */
public record HandSet(String name, List<Row> members) {
    public HandSet {
        members = List.copyOf(members);
    }

    /** Those that will not cut again. */
    public List<Row> gone() {
        return members.stream().filter(row -> row.status().ended()).toList();
    }

    /** Those that are with somebody else. */
    public List<Row> lent() {
        return members.stream().filter(row -> row.status() == Status.LENT).toList();
    }

    /** Those that cut still, wherever they are. */
    public List<Row> inUse() {
        return members.stream().filter(row -> !row.status().ended()).toList();
    }

    /** Those whom the job would lack: gone, or lent. */
    public List<Row> missing() {
        return members.stream()
                .filter(row -> row.status().ended() || row.status() == Status.LENT)
                .toList();
    }

    /** Whether each of its taps is in the shop; one tap alone is no set. */
    public boolean isWhole() {
        return members.size() > 1 && missing().isEmpty();
    }
}
