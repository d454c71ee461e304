// SPDX-License-Identifier: Apache-2.0
package landfall.app.today;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Map;
import landfall.app.example.Examples;
import landfall.app.shell.Frame;
import landfall.app.shell.Place;
import landfall.app.shell.Shell;

/** {@code Today}: one box that takes a call-out or what was measured on a tap, and the way to the grinder. */
public final class TodayPage {
    /** Call-outs of an invented shop's drawings. */
    private static final List<String> CALL_OUTS =
            List.of("1/4-20 UNC-2B", "M8x1.25-6H", "10-32 UNF-2B-LH", "M16xPh3P1.5-6g");

    /** Where its box sends what was typed. */
    public static final String GO = "/go";

    private final Shell shell;

    public TodayPage(Shell shell) {
        this.shell = shell;
    }

    public void show(Context ctx) {
        shell.show(
                ctx,
                "today",
                Map.of(
                        "frame",
                        new Frame(Place.TODAY.noun(), Place.TODAY),
                        "callOuts",
                        CALL_OUTS,
                        "examples",
                        Examples.all()));
    }

    /** Sends the browser to the page that what was typed belongs to. */
    public void go(Context ctx) {
        String typed = ctx.queryParam("typed");
        ctx.redirect(Typing.address(typed == null ? "" : typed), HttpStatus.SEE_OTHER);
    }
}
