// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import java.io.BufferedReader;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import landfall.cards.answer.Document;
import landfall.cards.answer.JsonAnswer;
import landfall.cards.ask.Asked;
import landfall.cards.ask.Given;
import landfall.cards.ask.Question;
import landfall.cards.card.Flat;
import landfall.fault.Answer;
import landfall.fault.Finding;

/**
 * Many questions from standard input, one a line, answered in order with one JSON document a line. Blank lines are
 * skipped, and lines that begin with # and a blank or a letter; {@code #10-32} is a call-out. A call-out is a line as
 * it is; a card is a line of JSON.
 *
 * <p>Each answer is written before the next line is read, so that a run of any length stays small and can be piped.
 */
final class Batch {
    /** Longer than any call-out or card on one line; more is refused unread, so that memory stays bounded. */
    static final int LONGEST_LINE = 64 * 1024;

    private final Question question;
    private final Given place;
    private final boolean working;
    private final Map<String, String> names;

    /** The names are those that options were written under, by path. */
    Batch(Question question, Given place, boolean working, Map<String, String> names) {
        this.question = question;
        this.place = place;
        this.working = working;
        this.names = names;
    }

    Exit run(Asked options, boolean json, Terminal terminal) {
        if (!options.findings().isEmpty()) {
            return Refusals.say(OptionName.asTyped(options.findings(), names), json, terminal);
        }
        Exit exit = Exit.DONE;
        try (BufferedReader lines = terminal.lines()) {
            for (String line = Lines.next(lines, LONGEST_LINE); line != null; line = Lines.next(lines, LONGEST_LINE)) {
                if (line.isBlank() || isComment(line)) {
                    continue;
                }
                Answer<Document> answer = answer(line, options.typed());
                terminal.out()
                        .println(
                                answer instanceof Answer.Of<Document> document
                                        ? JsonAnswer.line(document.value(), working)
                                        : JsonAnswer.refusalLine(OptionName.asTyped(answer.findings(), names)));
                exit = answer instanceof Answer.Of ? exit : Exit.REFUSED;
                if (terminal.out().checkError()) {
                    return exit;
                }
            }
        } catch (IOException e) {
            return Refusals.say(
                    List.of(new Finding("-", "standard input", "cannot be read", "check what is piped in")),
                    json,
                    terminal);
        }
        return exit;
    }

    private static boolean isComment(String line) {
        String text = line.strip();
        return text.startsWith("#")
                && (text.length() == 1 || Character.isWhitespace(text.charAt(1)) || Character.isLetter(text.charAt(1)));
    }

    private Answer<Document> answer(String line, Map<String, String> options) {
        Asked asked = new Asked();
        if (line.length() > LONGEST_LINE) {
            return Answer.refused(new Finding(
                    place.name(), line.substring(0, 40) + " ..", "is over 64 kB long", "write one question a line"));
        }
        if (place instanceof Given.Word word) {
            asked.put(word.path(), line.strip());
        } else {
            Answer<Map<String, String>> card = Flat.read(line, question.form());
            if (!(card instanceof Answer.Of<Map<String, String>> of)) {
                return Answer.refused(card.findings());
            }
            asked.putAll(of.value());
        }
        asked.putAll(options);
        asked.needCards(question);
        return asked.answer(question);
    }
}
