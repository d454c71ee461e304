// SPDX-License-Identifier: Apache-2.0
package landfall.app.body;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import landfall.app.figure.Reply;
import landfall.app.shell.Frame;
import landfall.app.shell.Place;
import landfall.app.shell.Shell;
import landfall.app.shell.Typed;
import landfall.cards.ask.GrindTrial;
import landfall.cards.words.Words;
import landfall.fault.Answer;
import landfall.fault.Caution;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.sheets.body.BodyFormat;
import landfall.sheets.body.GapSteps;
import landfall.sheets.body.Picture;
import landfall.solid.TapBody;

/**
 * {@code /grind/body}: the tap of a set-up in space, before and after. The pictures stand without a script; where there
 * is WebGL the same bodies can be turned.
 */
public final class BodyPage {
    public static final String PATH = Place.GRIND.path() + "/body";
    private static final String STATE = "state";
    private static final double SHOWN_CHAMFERS = 1.9;
    private static final Angle TURN = Angle.ofDeg(20);

    private final Shell shell;

    public BodyPage(Shell shell) {
        this.shell = shell;
    }

    /** A step of the ink on the chamfer, and what it stands for. */
    public record InkStep(String fill, String words) {}

    public void show(Context ctx) {
        Answer<Map<String, String>> typed = Typed.of(ctx);
        Answer<TapBody> body = typed.then(given -> Bodies.of(given, Bodies.State.AFTER));
        Map<String, String> given = typed instanceof Answer.Of<Map<String, String>> of ? of.value() : Map.of();
        if (!(body instanceof Answer.Of<TapBody>)) {
            ctx.status(HttpStatus.BAD_REQUEST);
        }
        String query = Typed.address("", given);
        Map<String, Object> values = new HashMap<>();
        values.put("frame", new Frame(Words.of("page.body.title"), Place.GRIND));
        values.put("subject", given.getOrDefault("thread", ""));
        values.put("reply", new Reply(null, body.findings()));
        values.put("query", query.isEmpty() ? "?" : query + "&");
        values.put("back", Typed.address(Place.GRIND.path(), given));
        values.put("steps", steps());
        values.put(
                "cautions",
                body instanceof Answer.Of<TapBody> of ? texts(of.value().cautions()) : List.of());
        values.put(
                "turn", turn(body.findings().isEmpty() ? typed.then(Bodies::trial) : Answer.refused(body.findings())));
        shell.show(ctx, "body", values);
    }

    private static List<TurnView> turn(Answer<GrindTrial> trial) {
        return trial instanceof Answer.Of<GrindTrial> of ? List.of(TurnView.of(of.value())) : List.of();
    }

    private static List<String> texts(List<Caution> cautions) {
        return cautions.stream().map(Caution::text).toList();
    }

    private static List<InkStep> steps() {
        List<InkStep> steps = new ArrayList<>();
        for (int step = 0; step <= GapSteps.ENDS.size(); step++) {
            steps.add(new InkStep(Picture.ink(step), words(step)));
        }
        return steps;
    }

    private static String words(int step) {
        if (step == 0) {
            return Words.of("page.body.drags");
        }
        String from = micrometres(GapSteps.ENDS.get(step - 1));
        return step == GapSteps.ENDS.size()
                ? Words.of("page.body.over", from)
                : Words.of("page.body.between", from, micrometres(GapSteps.ENDS.get(step)));
    }

    private static String micrometres(Length length) {
        return String.valueOf(Math.round(1000 * length.mm()));
    }

    /** The picture as PNG. */
    public void picture(Context ctx) {
        send(ctx, "image/png", body -> Picture.png(body.body, body.shown, TURN));
    }

    /** The body as a file, of the format that the address ends with. */
    public void file(Context ctx, BodyFormat format) {
        send(ctx, format.type(), body -> Bodies.file(body.body, format));
    }

    private record Drawn(TapBody body, Length shown) {}

    private interface Writer {
        byte[] write(Drawn body);
    }

    private void send(Context ctx, String type, Writer writer) {
        Answer<byte[]> bytes = Typed.of(ctx).then(all -> {
            Map<String, String> given = new LinkedHashMap<>(all);
            Bodies.State state = "before".equals(given.remove(STATE)) ? Bodies.State.BEFORE : Bodies.State.AFTER;
            return Bodies.of(given, state).map(body -> writer.write(new Drawn(body, shown(body))));
        });
        if (bytes instanceof Answer.Of<byte[]> of) {
            ctx.contentType(type).result(of.value());
        } else {
            ctx.status(HttpStatus.BAD_REQUEST).result(String.valueOf(bytes.findings()));
        }
    }

    private static Length shown(TapBody body) {
        return body.chamferLength().times(SHOWN_CHAMFERS);
    }
}
