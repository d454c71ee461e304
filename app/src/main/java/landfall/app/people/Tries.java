// SPDX-License-Identifier: Apache-2.0
package landfall.app.people;

import java.time.Clock;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * How often somebody may try to sign in: for one name ten times in a quarter of an hour, from one address thirty times.
 * Own choice, well under the hundred failures that NIST SP 800-63B allows an account. Kept in memory: a server that
 * starts again has forgotten them. A name that nobody has counts as any other, so that the limit tells nothing of it.
 */
final class Tries {
    static final int OF_A_NAME = 10;
    static final int FROM_AN_ADDRESS = 30;
    static final Duration WITHIN = Duration.ofMinutes(15);
    private static final int MOST_KEPT = 10_000;

    private final Clock clock;
    private final Map<String, Deque<Long>> names = new Kept();
    private final Map<String, Deque<Long>> addresses = new Kept();

    Tries(Clock clock) {
        this.clock = clock;
    }

    /** The longest unused make room. */
    private static final class Kept extends LinkedHashMap<String, Deque<Long>> {
        private static final long serialVersionUID = 1L;

        Kept() {
            super(16, 0.75f, true);
        }

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Deque<Long>> eldest) {
            return size() > MOST_KEPT;
        }
    }

    /**
     * Counts a try before it is judged, so that many at once count each; or says how long to wait, and counts nothing.
     */
    synchronized Optional<Duration> begin(String name, String address) {
        Deque<Long> ofName = recent(names, name);
        Deque<Long> ofAddress = recent(addresses, address);
        long wait = Math.max(wait(ofName, OF_A_NAME), wait(ofAddress, FROM_AN_ADDRESS));
        if (wait > 0) {
            return Optional.of(Duration.ofMillis(wait));
        }
        ofName.addLast(clock.millis());
        ofAddress.addLast(clock.millis());
        return Optional.empty();
    }

    /** It was right: the name begins anew, and the address has this one less. */
    synchronized void right(String name, String address) {
        names.remove(name);
        recent(addresses, address).pollLast();
    }

    private Deque<Long> recent(Map<String, Deque<Long>> of, String key) {
        Deque<Long> all = of.computeIfAbsent(key, none -> new ArrayDeque<>());
        long oldest = clock.millis() - WITHIN.toMillis();
        while (!all.isEmpty() && all.peekFirst() <= oldest) {
            all.removeFirst();
        }
        return all;
    }

    /** Milliseconds until one of the tries is forgotten; none while there are fewer than allowed. */
    private long wait(Deque<Long> tries, int most) {
        return tries.size() < most || tries.isEmpty() ? 0 : tries.peekFirst() + WITHIN.toMillis() - clock.millis();
    }
}
