// SPDX-License-Identifier: Apache-2.0
package landfall.store.crib;

import org.jdbi.v3.core.Handle;

/**
 * Which tickets may be in a store already, in eight megabytes however many there are (a Bloom filter): what it says is
 * new is new, anything else has to be looked up. It serves one import; what that adds it learns at once, what was there
 * before only when so much is added that reading it is worth it.
 */
public final class SeenTickets {
    private static final int PLACES = 1 << 26;

    /** Places for each ticket. */
    private static final int EACH = 4;

    /** Rows of an import for each event in the store from which all of them are read. */
    private static final double WORTH_READING = 0.2;

    private final long[] places = new long[PLACES / Long.SIZE];
    private long rows;
    private long before = -1;
    private boolean complete;

    /** Whether the ticket may be among those that this import added; from now on it is. */
    boolean addedBefore(String mark, String ticket) {
        long mixed = mixed(mixed(0x9E3779B97F4A7C15L, mark), ticket);
        int step = (int) (mixed >>> 32) | 1;
        boolean all = true;
        int place = (int) mixed;
        for (int i = 0; i < EACH; i++) {
            int at = place & (PLACES - 1);
            long bit = 1L << at;
            all &= (places[at / Long.SIZE] & bit) != 0;
            places[at / Long.SIZE] |= bit;
            place += step;
        }
        return all;
    }

    /** Whether what was in the store before the import is known here too; reads it when that has become worth it. */
    boolean isComplete(Handle handle) {
        if (complete) {
            return true;
        }
        if (before < 0) {
            before = handle.createQuery("select coalesce(sum(last_seq), 0) from item")
                    .mapTo(Long.class)
                    .one();
        }
        if (++rows >= before * WORTH_READING) {
            handle.createQuery("select mark, ticket from event")
                    .setFetchSize(1000)
                    .map((all, context) -> addedBefore(all.getString("mark"), all.getString("ticket")))
                    .useStream(all -> all.forEach(known -> {}));
            complete = true;
        }
        return complete;
    }

    /** All characters count, and every bit of the result depends on each. */
    private static long mixed(long seed, String text) {
        long sum = seed;
        for (int i = 0; i < text.length(); i++) {
            sum = (sum ^ text.charAt(i)) * 0xD6E8FEB86659FD93L;
            sum ^= sum >>> 32;
        }
        return sum;
    }
}
