// SPDX-License-Identifier: Apache-2.0
package landfall.store.people;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import landfall.fault.Answer;
import landfall.store.Store;
import landfall.store.StoreAddress;
import landfall.store.Stores;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PeopleTest {
    private static final Password OLD = Password.typed("old oil and new chips");
    private static final Password NEW = Password.typed("grey wheel, slow feed");
    private static final PersonName IDA = new PersonName("ida");
    private static final PersonName JON = new PersonName("jon");

    static Stream<StoreAddress> stores() {
        return Stores.both();
    }

    /** A clock that a test sets on. */
    private static final class Hand extends Clock {
        private Instant now = Stores.CLOCK.instant();

        @Override
        public ZoneId getZone() {
            return ZoneId.of("UTC");
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }

        @Override
        public Instant instant() {
            return now;
        }

        void on(Duration by) {
            now = now.plus(by);
        }
    }

    @ParameterizedTest
    @MethodSource("stores")
    void whoIsAddedEntersByNameAndPasswordAndNobodyElseDoes(StoreAddress address) {
        try (Store store = Stores.open(address)) {
            People people = new People(store, Stores.CLOCK);
            assertThat(people.isKept()).isFalse();
            people.add(IDA, "Ida Marsh", Role.KEEP, OLD).orThrow();
            assertThat(people.isKept()).isTrue();
            assertThat(people.enter(Optional.of(IDA), OLD).orElseThrow().shown())
                    .isEqualTo("Ida Marsh");
            assertThat(people.enter(Optional.of(IDA), NEW)).isEmpty();
            assertThat(people.enter(Optional.of(JON), OLD)).isEmpty();
            assertThat(people.enter(Optional.empty(), OLD)).isEmpty();
            assertThat(people.add(IDA, "another", Role.LOOK, NEW)
                            .findings()
                            .get(0)
                            .sentence())
                    .startsWith("name: \"ida\" is taken");
            assertThat(people.list()).hasSize(1).doesNotHaveToString("argon");
        }
    }

    @ParameterizedTest
    @MethodSource("stores")
    void theLastWhoKeepsIsNeitherShutOutNorGivenLess(StoreAddress address) {
        try (Store store = Stores.open(address)) {
            People people = new People(store, Stores.CLOCK);
            people.add(IDA, "", Role.KEEP, OLD).orThrow();
            assertThat(people.close(IDA).findings().get(0).sentence())
                    .isEqualTo("name: \"ida\" is the last who keeps."
                            + " To mend: give somebody else the role keep before, then do it again.");
            assertThat(people.role(IDA, Role.USE).findings()).hasSize(1);
            people.add(JON, "", Role.USE, NEW).orThrow();
            people.role(JON, Role.KEEP).orThrow();
            people.close(IDA).orThrow();
            assertThat(people.enter(Optional.of(IDA), OLD)).as("closed").isEmpty();
            people.open(IDA).orThrow();
            assertThat(people.enter(Optional.of(IDA), OLD)).isPresent();
            assertThat(people.role(new PersonName("kim"), Role.LOOK).findings())
                    .containsExactly(People.unknown(new PersonName("kim")));
        }
    }

    @ParameterizedTest
    @MethodSource("stores")
    void twoWhoCloseEachOtherAtOnceLeaveOne(StoreAddress address) throws Exception {
        try (Store store = Stores.open(address)) {
            People people = new People(store, Stores.CLOCK);
            people.add(IDA, "", Role.KEEP, OLD).orThrow();
            people.add(JON, "", Role.KEEP, NEW).orThrow();
            ExecutorService hands = Executors.newFixedThreadPool(2);
            List<Callable<Answer<Person>>> work = List.of(() -> people.close(IDA), () -> people.role(JON, Role.LOOK));
            int refused = 0;
            for (Future<Answer<Person>> done : hands.invokeAll(work)) {
                refused += done.get().findings().size();
            }
            hands.shutdown();
            assertThat(refused).isEqualTo(1);
            assertThat(people.isKept()).isTrue();
        }
    }

    @ParameterizedTest
    @MethodSource("stores")
    void aSignInEndsIdleAfterAShiftAndAtTheLatestAfterAWeek(StoreAddress address) {
        Hand clock = new Hand();
        try (Store store = Stores.open(address)) {
            Person ida = new People(store, clock).add(IDA, "", Role.USE, OLD).orThrow();
            SignIns signIns = new SignIns(store, clock);
            String token = signIns.begin(ida, Optional.empty());
            clock.on(SignIns.IDLE.minusSeconds(1));
            assertThat(signIns.find(token)).contains(ida);
            clock.on(SignIns.IDLE.minusSeconds(1));
            assertThat(signIns.find(token)).as("seen in between").contains(ida);
            clock.on(SignIns.IDLE.plusSeconds(1));
            assertThat(signIns.find(token)).isEmpty();
            String busy = signIns.begin(ida, Optional.empty());
            for (Duration past = Duration.ZERO; past.compareTo(SignIns.LONGEST) < 0; past = past.plusHours(1)) {
                assertThat(signIns.find(busy)).as("after %s", past).isPresent();
                clock.on(Duration.ofHours(1));
            }
            clock.on(Duration.ofSeconds(1));
            assertThat(signIns.find(busy)).isEmpty();
        }
    }

    @ParameterizedTest
    @MethodSource("stores")
    void aRoleCountsAtOnceAndResetAndCloseSignOutEverywhere(StoreAddress address) {
        try (Store store = Stores.open(address)) {
            People people = new People(store, Stores.CLOCK);
            people.add(JON, "", Role.KEEP, NEW).orThrow();
            Person ida = people.add(IDA, "", Role.USE, OLD).orThrow();
            SignIns signIns = new SignIns(store, Stores.CLOCK);
            String phone = signIns.begin(ida, Optional.empty());
            String bench = signIns.begin(ida, Optional.empty());
            assertThat(phone).isNotEqualTo(bench).hasSize(43);
            people.role(IDA, Role.LOOK).orThrow();
            assertThat(signIns.find(phone).orElseThrow().role()).isEqualTo(Role.LOOK);
            signIns.end(phone);
            assertThat(signIns.find(phone)).isEmpty();
            assertThat(signIns.find(bench)).isPresent();
            people.reset(IDA, NEW).orThrow();
            assertThat(signIns.find(bench)).isEmpty();
            String again = signIns.begin(ida, Optional.of(bench));
            people.close(IDA).orThrow();
            people.open(IDA).orThrow();
            assertThat(signIns.find(again)).as("closed once").isEmpty();
        }
    }

    @ParameterizedTest
    @MethodSource("stores")
    void theStoreHoldsNeitherTokenNorPassword(StoreAddress address) {
        try (Store store = Stores.open(address)) {
            Person ida =
                    new People(store, Stores.CLOCK).add(IDA, "", Role.USE, OLD).orThrow();
            SignIns signIns = new SignIns(store, Stores.CLOCK);
            String before = signIns.begin(ida, Optional.empty());
            String token = signIns.begin(ida, Optional.of(before));
            assertThat(signIns.find(before)).as("what the browser held before").isEmpty();
            String all = store.read(handle ->
                    handle.select("select * from sign_in").mapToMap().list().toString()
                            + handle.select("select * from person").mapToMap().list());
            assertThat(all)
                    .contains("ida")
                    .doesNotContain(token)
                    .doesNotContain(OLD.secret())
                    .doesNotContain(SignIns.formToken(token));
        }
    }
}
