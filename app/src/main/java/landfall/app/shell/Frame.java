// SPDX-License-Identifier: Apache-2.0
package landfall.app.shell;

import landfall.app.visitor.Visitor;
import org.jspecify.annotations.Nullable;

/**
 * What the frame around a page needs to know.
 *
 * @param title of the window, without the program's name
 * @param here the place the page is, none for a page of trouble
 * @param visitor who looks at it
 */
public record Frame(String title, @Nullable Place here, Visitor visitor) {
    public Frame(String title, @Nullable Place here) {
        this(title, here, Visitor.atThisMachine(""));
    }

    public String windowTitle() {
        return title + " – Landfall";
    }

    Frame seenBy(Visitor other) {
        return new Frame(title, here, other);
    }
}
