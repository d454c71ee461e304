// SPDX-License-Identifier: Apache-2.0
package landfall.app.shell;

import org.jspecify.annotations.Nullable;

/**
 * What the frame around a page needs to know.
 *
 * @param title of the window, without the program's name
 * @param here the place the page is, none for a page of trouble
 */
public record Frame(String title, @Nullable Place here) {
    public String windowTitle() {
        return title + " – Landfall";
    }
}
