// SPDX-License-Identifier: Apache-2.0
package landfall.cards.words;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.Properties;
import java.util.SortedSet;
import java.util.TreeSet;

/** What people read, by key. All of it stands in one file, {@code words.properties}. */
public final class Words {
    private static final Properties ALL = read();

    private Words() {}

    /** The words of a key; a key without words is a fault of ours. */
    public static String of(String key) {
        return find(key).orElseThrow(() -> new IllegalStateException("no words for " + key + " in words.properties"));
    }

    /** The words of a key with the values put in for its {@code %s}. */
    public static String of(String key, Object... values) {
        return of(key).formatted(values);
    }

    public static Optional<String> find(String key) {
        return Optional.ofNullable(ALL.getProperty(key));
    }

    /** Every key, in order. */
    public static SortedSet<String> keys() {
        return new TreeSet<>(ALL.stringPropertyNames());
    }

    private static Properties read() {
        Properties words = new Properties();
        try (InputStream in = Words.class.getResourceAsStream("words.properties")) {
            if (in == null) {
                throw new IllegalStateException("words.properties is missing from the program");
            }
            words.load(new InputStreamReader(in, StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return words;
    }
}
