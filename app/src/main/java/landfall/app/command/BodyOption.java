// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import landfall.app.body.Bodies;
import landfall.cards.ask.Question;
import landfall.cards.words.Words;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.sheets.body.BodyFormat;
import landfall.solid.TapBody;

/**
 * {@code --body FILE.stl|.3mf|.glb} and {@code --body-before FILE}: the tap of a regrind set-up as a body, as the wheel
 * leaves it or with an even relief.
 */
final class BodyOption {
    private static final String AFTER = "body";
    private static final String BEFORE = "body-before";

    private BodyOption() {}

    private static boolean has(Question question) {
        return question.noun().equals("grind");
    }

    static void on(Options options, Question question) {
        if (has(question)) {
            options.text(AFTER).text(BEFORE);
        }
    }

    static void help(StringBuilder text, Question question) {
        if (has(question)) {
            HelpPage.row(text, "--body FILE", Words.of("command.body"));
            HelpPage.row(text, "--body-before FILE", Words.of("command.bodyBefore"));
        }
    }

    /** What to tell the person about the files; empty when none was asked for. */
    static Answer<String> write(Question question, Options.Written written, Map<String, String> typed) {
        if (!has(question)) {
            return Answer.of("");
        }
        return write(AFTER, Bodies.State.AFTER, written, typed)
                .then(after ->
                        write(BEFORE, Bodies.State.BEFORE, written, typed).map(before -> after + before));
    }

    private static Answer<String> write(
            String option, Bodies.State state, Options.Written written, Map<String, String> typed) {
        Optional<String> file = written.text(option);
        if (file.isEmpty()) {
            return Answer.of("");
        }
        Optional<BodyFormat> format = BodyFormat.of(file.get());
        if (format.isEmpty()) {
            return Answer.refused(new Finding(
                    "--" + option,
                    file.get(),
                    "must end with .stl, .3mf or .glb",
                    "end the file's name with the format that the other program reads"));
        }
        return Bodies.of(typed, state).then(body -> write(option, file.get(), body, format.get()));
    }

    private static Answer<String> write(String option, String file, TapBody body, BodyFormat format) {
        try {
            Files.write(Path.of(file), Bodies.file(body, format));
            return Answer.of(Words.of(
                            "command.bodyWritten",
                            file,
                            Integer.toString(body.mesh().triangles()),
                            body.error().words())
                    + "\n");
        } catch (IOException | InvalidPathException e) {
            return Answer.refused(new Finding(
                    "--" + option,
                    file,
                    "cannot be written",
                    "name a file in a folder that is there and can be written to"));
        }
    }
}
