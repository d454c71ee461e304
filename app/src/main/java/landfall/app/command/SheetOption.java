// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import landfall.app.cut.CutPaper;
import landfall.app.dial.DialPaper;
import landfall.app.grind.GrindPaper;
import landfall.cards.ask.Question;
import landfall.cards.words.Words;
import landfall.fault.Answer;
import landfall.fault.Finding;

/**
 * {@code --sheet FILE.pdf} and {@code --paper a4|letter}: the answer on paper, for the questions that have a sheet. A
 * tapping sheet can be plain text as well: {@code --sheet FILE.txt}.
 */
final class SheetOption {
    private SheetOption() {}

    static boolean has(Question question) {
        return question.noun().equals("grind") || question.noun().equals("dial") || isCut(question);
    }

    private static boolean isCut(Question question) {
        return question.noun().equals("cut");
    }

    static void on(Options options, Question question) {
        if (has(question)) {
            options.text("sheet").text("paper");
        }
    }

    static void help(StringBuilder text, Question question) {
        if (has(question)) {
            HelpPage.row(
                    text, "--sheet FILE.pdf", Words.of(isCut(question) ? "command.tappingSheet" : "command.sheet"));
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
        if (!isCut(question)) {
            Answer<byte[]> pdf =
                    question.noun().equals("dial") ? DialPaper.pdf(typed, paper) : GrindPaper.pdf(typed, paper);
            return pdf.then(bytes -> write(file, bytes, "command.sheetWritten"));
        }
        Answer<byte[]> sheet = file.toLowerCase(Locale.ROOT).endsWith(".txt")
                ? CutPaper.text(typed).map(text -> text.getBytes(StandardCharsets.UTF_8))
                : CutPaper.pdf(typed, paper);
        return sheet.then(bytes -> write(file, bytes, "command.tappingSheetWritten"));
    }

    private static Answer<String> write(String file, byte[] sheet, String written) {
        try {
            Files.write(Path.of(file), sheet);
            return Answer.of(Words.of(written, file));
        } catch (IOException | InvalidPathException e) {
            return Answer.refused(new Finding(
                    "--sheet",
                    file,
                    "cannot be written",
                    "name a file in a folder that is there and can be written to"));
        }
    }
}
