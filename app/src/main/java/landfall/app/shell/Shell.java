// SPDX-License-Identifier: Apache-2.0
package landfall.app.shell;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.Utf8ByteOutput;
import io.javalin.http.Context;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.Map;
import landfall.app.visitor.Visitor;

/** Writes a page from its template; every template was compiled with the program. */
public final class Shell {
    private final TemplateEngine engine;

    public Shell() {
        engine = TemplateEngine.createPrecompiled(null, ContentType.Html, null, "landfall.app.template");
        engine.setBinaryStaticContent(true);
    }

    /** Answers with a whole page or a part of one. */
    public void show(Context ctx, String template, Map<String, Object> values) {
        Map<String, Object> all = new HashMap<>(values);
        if (all.get("frame") instanceof Frame frame) {
            all.put("frame", frame.seenBy(Visitor.of(ctx)));
        }
        ctx.contentType("text/html; charset=utf-8").result(write(template, all));
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
