// SPDX-License-Identifier: Apache-2.0
package landfall.store.crib;

import java.util.Arrays;

/**
 * Tickets that were seen, each by 64 bits of it: one that is not known here is new for certain; one that is known has
 * to be looked up.
 */
final class Tickets {
    private static final long FREE = 0;
    private long[] places = new long[8];
    private int size;

    /** Whether it is new. */
    boolean add(String ticket) {
        if (2 * (size + 1) > places.length) {
            grow();
        }
        long mixed = mixed(ticket);
        int at = place(places, mixed);
        if (places[at] == mixed) {
            return false;
        }
        places[at] = mixed;
        size++;
        return true;
    }

    int size() {
        return size;
    }

    private void grow() {
        long[] more = new long[places.length * 2];
        for (long one : places) {
            if (one != FREE) {
                more[place(more, one)] = one;
            }
        }
        places = Arrays.copyOf(more, more.length);
    }

    /** Where it lies, or would. */
    private static int place(long[] places, long mixed) {
        int at = (int) (mixed & (places.length - 1));
        while (places[at] != FREE && places[at] != mixed) {
            at = (at + 1) & (places.length - 1);
        }
        return at;
    }

    /** All characters count, and every bit of the result depends on each. */
    private static long mixed(String ticket) {
        long sum = 0x9E3779B97F4A7C15L;
        for (int i = 0; i < ticket.length(); i++) {
            sum = (sum ^ ticket.charAt(i)) * 0xD6E8FEB86659FD93L;
            sum ^= sum >>> 32;
        }
        return sum == FREE ? 1 : sum;
    }
}
