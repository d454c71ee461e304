// SPDX-License-Identifier: Apache-2.0
package landfall.app.build;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;

/**
 * Which build this is, so that a printed sheet can say what made it.
 *
 * @param version as in the pom
 * @param commit short name of the commit, with {@code +} when the tree held changes; empty when the build was not told
 */
public record Build(String version, String commit) {
    /** The build that is running. */
    public static Build running() {
        Properties data = new Properties();
        try (InputStream in = Build.class.getResourceAsStream("build.properties")) {
            if (in == null) {
                throw new IllegalStateException("landfall/app/build/build.properties is not beside the classes");
            }
            data.load(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new Build(data.getProperty("version", ""), data.getProperty("commit", ""));
    }

    /** {@code landfall 0.1.0 (1a2b3c4)}. */
    public String words() {
        return commit.isEmpty() ? "landfall " + version : "landfall " + version + " (" + commit + ")";
    }
}
