// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import java.io.BufferedReader;
import java.io.IOException;
import org.jspecify.annotations.Nullable;

/** Reads lines without trusting them to be short. */
final class Lines {
    private Lines() {}

    /** The next line, of which no more than one character over the longest is kept; null at the end. */
    static @Nullable String next(BufferedReader in, int longest) throws IOException {
        StringBuilder line = new StringBuilder();
        int read = in.read();
        if (read < 0) {
            return null;
        }
        while (read >= 0 && read != '\n') {
            if (line.length() <= longest) {
                line.append((char) read);
            }
            read = in.read();
        }
        int end = line.length();
        if (end > 0 && line.charAt(end - 1) == '\r') {
            line.setLength(end - 1);
        }
        return line.toString();
    }
}
