// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

/** What a person writes after a noun on the command line, besides {@code --field text}. */
public sealed interface Given {
    /** As the help calls it: {@code CALLOUT}. */
    String name();

    /** A word that is the text of a field: {@code thread CALLOUT}. */
    record Word(String name, String path) implements Given {}

    /** A file of JSON whose fields join the others: {@code grind CARD}; after an option when one is named. */
    record Card(String name, String option) implements Given {
        public Card(String name) {
            this(name, "");
        }
    }

    /** A file whose whole text is one field, such as readings in CSV; after an option when one is named. */
    record TextFile(String name, String option, String path) implements Given {}
}
