// SPDX-License-Identifier: Apache-2.0
package landfall.app;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/** The program. Exit 0 done; 2 the input is refused; 3 no such record; 1 a fault of ours. */
public final class Main {
    static final int DONE = 0;
    static final int REFUSED = 2;

    private static final String HELP = """
            landfall NOUN [arguments] [--json] [--units inch|metric]

              --version   which build this is
              help        this page
            """;

    private Main() {}

    public static void main(String[] words) {
        PrintStream out = utf8(FileDescriptor.out);
        PrintStream err = utf8(FileDescriptor.err);
        int status = run(words, out, err);
        out.flush();
        err.flush();
        System.exit(status);
    }

    /** One run, without leaving the process. */
    static int run(String[] words, PrintStream out, PrintStream err) {
        String noun = words.length == 0 ? "help" : words[0];
        switch (noun) {
            case "--version" -> out.println(Build.running().words());
            case "help", "--help", "-h" -> out.print(HELP);
            // run once by the launcher after a build, so that the class-data archive holds what real runs load
            case "rehearse" -> out.print(Build.running().words() + "\n" + HELP);
            default -> {
                err.println("command is " + noun + "; it must be one that 'landfall help' names.");
                return REFUSED;
            }
        }
        return DONE;
    }

    /** The shell's locale does not decide what a file or a pipe gets. */
    private static PrintStream utf8(FileDescriptor to) {
        return new PrintStream(new FileOutputStream(to), false, StandardCharsets.UTF_8);
    }
}
