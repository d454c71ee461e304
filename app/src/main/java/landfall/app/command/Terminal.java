// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import java.io.BufferedReader;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/** The three streams of a command. Answers go to out, everything else to err; all of it is UTF-8 on every machine. */
public record Terminal(InputStream in, PrintStream out, PrintStream err) {

    public static Terminal ofThisProcess() {
        return new Terminal(
                System.in,
                new PrintStream(new FileOutputStream(FileDescriptor.out), false, StandardCharsets.UTF_8),
                new PrintStream(new FileOutputStream(FileDescriptor.err), true, StandardCharsets.UTF_8));
    }

    /**
     * Standard input by lines. What is not UTF-8 arrives as the replacement sign and is refused by whoever reads it.
     */
    public BufferedReader lines() {
        return new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
    }
}
