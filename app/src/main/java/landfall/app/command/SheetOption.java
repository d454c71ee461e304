// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Map;
import landfall.app.dial.DialPaper;
import landfall.app.grind.GrindPaper;
import landfall.cards.ask.Question;
import landfall.cards.words.Words;
import landfall.fault.Answer;
import landfall.fault.Finding;

/** {@code --sheet FILE.pdf} and {@code --paper a4|letter}: the answer on paper, for the questions that have a sheet. */
final class SheetOption {
    private SheetOption() {}

    static boolean has(Question question) {
        return question.noun().equals("grind") || question.noun().equals("dial");
    }

    static void on(Options options, Question question) {
        if (has(question)) {
            options.text("sheet").text("paper");
        }
    }

    static void help(StringBuilder text, Question question) {
        if (has(question)) {
            HelpPage.row(text, "--sheet FILE.pdf", Words.of("command.sheet"));
            HelpPage.row(text, "--paper a4|letter", Words.of("command.paper"));
        }
    }

    /** What to tell the person about the file; empty when none was asked for. */
    static Answer<String> write(Question question, Options.Written written, Map<String, String> typed) {
        String file = written.text("sheet").orElse("");
        String paper = written.text("paper").orElse("");
        if (file.isEmpty()) {
            return paper.isEmpty()
                    ? Answer.of("")
                    : Answer.refused(new Finding(
                            "--paper", paper, "is of no use without a sheet", "add --sheet FILE.pdf, or leave it out"));
        }
        Answer<byte[]> pdf =
                question.noun().equals("dial") ? DialPaper.pdf(typed, paper) : GrindPaper.pdf(typed, paper);
        return pdf.then(bytes -> write(file, bytes));
    }

    private static Answer<String> write(String file, byte[] pdf) {
        try {
            Files.write(Path.of(file), pdf);
            return Answer.of(Words.of("command.sheetWritten", file));
        } catch (IOException | InvalidPathException e) {
            return Answer.refused(new Finding(
                    "--sheet",
                    file,
                    "cannot be written",
                    "name a file in a folder that is there and can be written to"));
        }
    }
}
