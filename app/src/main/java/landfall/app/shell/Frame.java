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
 * @param trail where it leads, and what is carried on
 */
public record Frame(String title, @Nullable Place here, Visitor visitor, Trail trail) {
    public Frame(String title, @Nullable Place here) {
        this(title, here, Visitor.atThisMachine(""), Trail.bare(here));
    }

    public String windowTitle() {
        return title + " – Landfall";
    }

    Frame seenBy(Visitor other, Trail carried) {
        return new Frame(title, here, other, carried);
    }
}
