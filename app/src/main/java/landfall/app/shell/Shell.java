// SPDX-License-Identifier: Apache-2.0
package landfall.app.shell;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.Utf8ByteOutput;
import io.javalin.http.Context;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import landfall.app.visitor.Visitor;
import org.jspecify.annotations.Nullable;

/** Writes a page from its template; every template was compiled with the program. */
public final class Shell {
    /** The key of what a page knows of its subject besides what was typed: a map of path and text. */
    public static final String FOUND = "subject.found";

    /** The key of what a page found out for the pages that come next, and for no others. */
    public static final String OFFERED = "subject.offered";

    private final TemplateEngine engine;

    public Shell() {
        engine = TemplateEngine.createPrecompiled(null, ContentType.Html, null, "landfall.app.template");
        engine.setBinaryStaticContent(true);
    }

    /** Answers with a whole page or a part of one. */
    public void show(Context ctx, String template, Map<String, Object> values) {
        Map<String, Object> all = new HashMap<>(values);
        Map<String, String> known = texts(all.remove(FOUND));
        Subject subject = Subject.of(ctx, known, texts(all.remove(OFFERED)));
        String with = Optional.ofNullable(ctx.queryParam(Subject.WITH)).orElse("");
        ctx.contentType("text/html; charset=utf-8");
        // a page that has its subject by itself can only be left
        String bare = known.isEmpty() ? ctx.path() : Place.TODAY.path();
        if (all.get("frame") instanceof Frame frame) {
            all.put("frame", frame.seenBy(Visitor.of(ctx), new Trail(subject, frame.here(), with, bare)));
            ctx.result(write(template, all));
        } else {
            ctx.result(joined(write(template, all), trail(ctx, subject)));
        }
    }

    /** An answer alone brings the line of places that leads on from it. */
    private byte[] trail(Context ctx, Subject subject) {
        Place here = Place.at(ctx.path()).orElse(null);
        return write("trail", Map.of("trail", new Trail(subject, here, "", ctx.path())));
    }

    private static byte[] joined(byte[] one, byte[] other) {
        byte[] both = Arrays.copyOf(one, one.length + other.length);
        System.arraycopy(other, 0, both, one.length, other.length);
        return both;
    }

    @SuppressWarnings("unchecked")
    private static Map<String, String> texts(@Nullable Object value) {
        return value instanceof Map<?, ?> map ? (Map<String, String>) map : Map.of();
    }

    /** The page's script asks for the answer alone; the frame stays as it is. */
    public static boolean asksForAnswerOnly(Context ctx) {
        return "answer".equals(ctx.header("X-Landfall-Part"));
    }

    /** The page's script sends an entry by itself and reads what became of it. */
    public static boolean asksForEntryOnly(Context ctx) {
        return "entry".equals(ctx.header("X-Landfall-Part"));
    }

    /** The page as UTF-8. A template that fails leaves nothing half written. */
    public byte[] write(String template, Map<String, Object> values) {
        Utf8ByteOutput output = new Utf8ByteOutput();
        engine.render(template + ".jte", values, output);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(output.getContentLength());
        try {
            output.writeTo(bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }
}
