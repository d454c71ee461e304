// SPDX-License-Identifier: Apache-2.0
package landfall.store.people;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class HashingTest {
    /**
     * Made by the reference implementation's own program: {@code argon2 somesalt12345678 -id -t 2 -k 19456 -p 1 -l 32}.
     */
    private static final String PLAIN =
            "$argon2id$v=19$m=19456,t=2,p=1$c29tZXNhbHQxMjM0NTY3OA$oVLnFW4Vdd+KZaNyuHNZYDlTeeRDSkyoACLFGAAhgLc";

    private static final String FAR =
            "$argon2id$v=19$m=19456,t=2,p=1$c29tZXNhbHQxMjM0NTY3OA$4erS65rzFD8yHOYKaB51JUd5+A3pag3hJOuvnBCn7hA";

    @Test
    void hashesOfTheReferenceImplementationAgree() {
        assertThat(Hashing.matches(new Password("correct horse"), PLAIN)).isTrue();
        assertThat(Hashing.matches(new Password("correct horsf"), PLAIN)).isFalse();
        assertThat(Hashing.matches(new Password("k\u00e4se \ud83e\uddc0 und brot"), FAR))
                .isTrue();
    }

    @Test
    void theSamePasswordHashesDifferentlyEachTimeAndAgreesWithEach() {
        Password password = new Password("four words of a toolroom");
        String one = Hashing.hash(password);
        String two = Hashing.hash(password);
        assertThat(one).isNotEqualTo(two).startsWith("$argon2id$v=19$m=19456,t=2,p=1$");
        assertThat(Hashing.matches(password, one)).isTrue();
        assertThat(Hashing.matches(password, two)).isTrue();
        assertThat(Hashing.matchesNobody(password)).isFalse();
    }
}
