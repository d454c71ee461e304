// SPDX-License-Identifier: Apache-2.0
package landfall.app.crib;

import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.Map;

/** What a form sent, blank fields left out, and the token by which the server knows for whom it was written. */
public final class FormTyped {
    private FormTyped() {}

    public static Map<String, String> of(Context ctx) {
        Map<String, String> typed = new LinkedHashMap<>();
        ctx.formParamMap().forEach((path, texts) -> {
            String text = texts.isEmpty() ? "" : texts.get(0).strip();
            if (!text.isEmpty() && !path.equals("token")) {
                typed.put(path, text);
            }
        });
        return typed;
    }
}
