// SPDX-License-Identifier: Apache-2.0
package landfall.app.today;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import landfall.app.crib.CribDoor;
import landfall.app.example.Examples;
import landfall.app.shell.Frame;
import landfall.app.shell.Place;
import landfall.app.shell.Shell;
import landfall.app.visitor.Visitor;
import landfall.fault.Answer;
import landfall.history.JobNumber;
import landfall.history.Mark;
import landfall.store.StoreFault;
import landfall.store.job.Jobs;
import landfall.store.people.Role;

/** {@code Today}: one box that takes a call-out or what was measured on a tap, and the way to the grinder. */
public final class TodayPage {
    /** Call-outs of an invented shop's drawings. */
    private static final List<String> CALL_OUTS =
            List.of("1/4-20 UNC-2B", "M8x1.25-6H", "10-32 UNF-2B-LH", "M16xPh3P1.5-6g");

    /** Where its box sends what was typed. */
    public static final String GO = "/go";

    private final Shell shell;
    private final CribDoor door;

    public TodayPage(Shell shell, CribDoor door) {
        this.shell = shell;
        this.door = door;
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
                        Examples.all(),
                        "atHand",
                        atHand(ctx),
                        "tour",
                        Tour.ofTheInventedShop()));
    }

    /** Nothing where nobody has signed in; when the store does not answer, the page of the store says why. */
    private AtHand atHand(Context ctx) {
        if (!Visitor.of(ctx).may(Role.LOOK)) {
            return AtHand.NOTHING;
        }
        try {
            return AtHand.of(door, LocalDate.now(door.clock().withZone(ZoneId.systemDefault())));
        } catch (StoreFault e) {
            return AtHand.NOTHING;
        }
    }

    /** Sends the browser to the page that what was typed belongs to. */
    public void go(Context ctx) {
        String typed = ctx.queryParam("typed");
        String text = typed == null ? "" : typed.strip();
        ctx.redirect(record(ctx, text).orElseGet(() -> Typing.address(text)), HttpStatus.SEE_OTHER);
    }

    /** The page of a tap or a job whose mark, number or scanned label was typed, where there is one. */
    private Optional<String> record(Context ctx, String text) {
        Optional<String> scanned = Typing.label(text);
        if (scanned.isPresent() || !Visitor.of(ctx).may(Role.LOOK)) {
            return scanned;
        }
        try {
            Answer<JobNumber> number = JobNumber.read(text);
            if (number instanceof Answer.Of<JobNumber> of
                    && new Jobs(door.store()).find(of.value()).isPresent()) {
                return Optional.of(Place.JOB.path() + "/" + of.value());
            }
            Answer<Mark> mark = Mark.read(text);
            return mark instanceof Answer.Of<Mark> of
                            && door.crib().row(of.value()).isPresent()
                    ? Optional.of(Place.CRIB.path() + "/" + of.value())
                    : Optional.empty();
        } catch (StoreFault e) {
            return Optional.empty();
        }
    }
}
