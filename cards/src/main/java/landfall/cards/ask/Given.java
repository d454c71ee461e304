// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import landfall.cards.form.Form;

/** What a person writes after a noun on the command line, besides {@code --field text}. */
public sealed interface Given {
    /** As the help calls it: {@code CALLOUT}. */
    String name();

    /** A word that is the text of a field: {@code thread CALLOUT}. */
    record Word(String name, String path) implements Given {}

    /**
     * A file of JSON whose fields join the others: {@code grind CARD}; after an option when one is named.
     *
     * @param form of the card, which settles what the file may hold
     */
    record Card(String name, String option, Form form) implements Given {
        public Card(String name, Form form) {
            this(name, "", form);
        }

        /** What refusals call it. */
        public String place() {
            return option.isEmpty() ? "card" : option;
        }
    }

    /** A file whose whole text is one field, such as readings in CSV; after an option when one is named. */
    record TextFile(String name, String option, String path) implements Given {}
}
