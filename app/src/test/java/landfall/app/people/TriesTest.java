// SPDX-License-Identifier: Apache-2.0
package landfall.app.people;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;

class TriesTest {
    private static final Instant BEGIN = Instant.parse("2026-11-25T08:00:00Z");

    private final AtomicReference<Clock> now = new AtomicReference<>(Clock.fixed(BEGIN, ZoneOffset.UTC));
    private final Tries tries = new Tries(new Clock() {
        @Override
        public ZoneOffset getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(java.time.ZoneId zone) {
            return this;
        }

        @Override
        public Instant instant() {
            return now.get().instant();
        }
    });

    private void on(Duration by) {
        now.set(Clock.offset(now.get(), by));
    }

    @Test
    void aNameWaitsFromWhereverItIsTried() {
        for (int i = 0; i < Tries.OF_A_NAME; i++) {
            assertThat(tries.begin("ida", "192.0.2." + i)).isEmpty();
        }
        assertThat(tries.begin("ida", "192.0.2.99")).contains(Tries.WITHIN);
        on(Duration.ofMinutes(5));
        assertThat(tries.begin("ida", "192.0.2.99")).contains(Duration.ofMinutes(10));
        assertThat(tries.begin("jon", "192.0.2.99")).isEmpty();
        on(Duration.ofMinutes(10));
        assertThat(tries.begin("ida", "192.0.2.99")).isEmpty();
    }

    @Test
    void anAddressWaitsWhateverNamesItTries() {
        for (int i = 0; i < Tries.FROM_AN_ADDRESS; i++) {
            assertThat(tries.begin("name" + i, "192.0.2.1")).isEmpty();
        }
        assertThat(tries.begin("another", "192.0.2.1")).isPresent();
        assertThat(tries.begin("another", "192.0.2.2")).isEmpty();
    }

    @Test
    void aRightOneFreesTheNameAndDoesNotCountAgainstTheAddress() {
        for (int round = 0; round < 10; round++) {
            for (int i = 0; i < 2; i++) {
                tries.begin("ida", "192.0.2.1");
            }
            assertThat(tries.begin("ida", "192.0.2.1")).isEmpty();
            tries.right("ida", "192.0.2.1");
        }
        assertThat(tries.begin("ida", "192.0.2.1"))
                .as("20 wrong ones are under 30")
                .isEmpty();
    }

    @Test
    void onlyOwnPathsAreOwn() {
        assertThat(OwnPath.of("/crib/T-17?event=tapped")).isEqualTo("/crib/T-17?event=tapped");
        assertThat(OwnPath.of("/" + "x".repeat(9000))).isEqualTo(OwnPath.USUAL);
        assertThat(OwnPath.of("/a//b")).isEqualTo("/a//b");
        assertThat(OwnPath.of("//b")).isEqualTo(OwnPath.USUAL);
    }
}
