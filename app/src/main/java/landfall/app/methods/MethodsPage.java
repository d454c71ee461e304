// SPDX-License-Identifier: Apache-2.0
package landfall.app.methods;

import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.Map;
import landfall.app.shell.Frame;
import landfall.app.shell.Place;
import landfall.app.shell.Shell;
import landfall.cards.words.Words;

/** {@code Methods}: how the figures are computed, and where the formulas come from. */
public final class MethodsPage {
    private final Shell shell;

    public MethodsPage(Shell shell) {
        this.shell = shell;
    }

    /** All notes. */
    public void list(Context ctx) {
        shell.show(
                ctx,
                "methods",
                Map.of(
                        "frame",
                        new Frame(Place.METHODS.noun(), Place.METHODS),
                        "notes",
                        Notes.held().all()));
    }

    /** One note. */
    public void show(Context ctx) {
        Note note = Notes.held().of(ctx.pathParam("note")).orElseThrow(NotFoundResponse::new);
        shell.show(ctx, "note", Map.of("frame", new Frame(note.title(), Place.METHODS), "note", note));
    }

    /** The publications, by the keys that figures name. */
    public void sources(Context ctx) {
        shell.show(
                ctx,
                "sources",
                Map.of(
                        "frame",
                        new Frame(Words.of("page.sources.title"), Place.METHODS),
                        "publications",
                        Notes.held().publications()));
    }
}
