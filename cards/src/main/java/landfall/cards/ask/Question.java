// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import java.util.List;
import java.util.Map;
import landfall.cards.answer.Document;
import landfall.cards.form.Form;
import landfall.fault.Answer;

/** One question of the toolroom, however it was asked. */
public interface Question {
    /** Its name on the command line and in addresses, such as {@code thread}. */
    String noun();

    Form form();

    /** What stands on the command line beside the form's options, in order. */
    List<Given> given();

    /** The answer to what was typed: path and text, as {@link Form} names them. */
    Answer<Document> answer(Map<String, String> typed);
}
