package landfall.app.command;

import java.util.Map;
import landfall.cards.ask.Question;
import landfall.fault.Answer;

/** {@code --sheet FILE.pdf} and {@code --paper}: the answer on paper, for questions that have a sheet. */
final class SheetOption {
    private final Question question;

    SheetOption(Question question) {
        this.question = question;
    }

    static void on(Options options, Question question) {
        if (question.noun().equals("grind")) {
            options.text("sheet").text("paper");
        }
    }

    /** The name of the file that was written; empty when none was asked for. */
    Answer<String> write(Options.Written written, Map<String, String> typed) {
        return Answer.of("");
    }
}
