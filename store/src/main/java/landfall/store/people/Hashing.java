// SPDX-License-Identifier: Apache-2.0
package landfall.store.people;

import com.password4j.Argon2Function;
import com.password4j.types.Argon2;
import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.util.concurrent.Semaphore;
import java.util.regex.Pattern;

/**
 * Hashes of passwords: Argon2id (RFC 9106) with 19 MiB, two passes, one lane, the least that the OWASP cheat sheet on
 * the storage of passwords advises (looked up 2026-11). The encoded hash carries its parameters, so that they can grow.
 */
final class Hashing {
    private static final int MEMORY_KIB = 19_456;
    private static final int PASSES = 2;
    private static final int LANES = 1;
    private static final int BYTES = 32;
    private static final int SALT_BYTES = 16;

    /** So many at once, that a flood of sign-ins takes no more memory than this. */
    private static final Semaphore TURNS = new Semaphore(2, true);

    private static final Pattern HASH =
            Pattern.compile("\\$argon2id\\$v=19\\$m=\\d{1,7},t=\\d{1,3},p=\\d{1,2}\\$[A-Za-z0-9+/]+\\$[A-Za-z0-9+/]+");

    private static final SecureRandom RANDOM = new SecureRandom();

    /** Of nobody: what is hashed for a name that is not there, so that it takes as long. */
    private static final String OF_NOBODY = hash(new Password(String.valueOf(RANDOM.nextLong())));

    private Hashing() {}

    static String hash(Password password) {
        byte[] salt = new byte[SALT_BYTES];
        RANDOM.nextBytes(salt);
        TURNS.acquireUninterruptibly();
        try {
            return Argon2Function.getInstance(MEMORY_KIB, PASSES, LANES, BYTES, Argon2.ID)
                    .hash(bytes(password), salt)
                    .getResult();
        } finally {
            TURNS.release();
        }
    }

    static boolean matches(Password password, String hash) {
        TURNS.acquireUninterruptibly();
        try {
            return Argon2Function.getInstanceFromHash(hash)
                    .check(bytes(password), hash.getBytes(StandardCharsets.US_ASCII));
        } finally {
            TURNS.release();
        }
    }

    /** Whether that is a hash as they are kept here. */
    static boolean isHash(String text) {
        return HASH.matcher(text).matches();
    }

    /** Takes as long as a comparison, and never agrees. */
    static boolean matchesNobody(Password password) {
        matches(password, OF_NOBODY);
        return false;
    }

    private static byte[] bytes(Password password) {
        return password.secret().getBytes(StandardCharsets.UTF_8);
    }
}
