// SPDX-License-Identifier: Apache-2.0
package landfall.app.shell;

import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import landfall.fault.Answer;
import landfall.fault.Finding;

/** What a person gave, as an address carries it: path and text, blank ones left out. */
public final class Typed {
    private Typed() {}

    /**
     * The query of a request, without what a page only carries on ({@link Subject}). A field given twice with different
     * texts is refused.
     */
    public static Answer<Map<String, String>> of(Context ctx) {
        Map<String, String> typed = new LinkedHashMap<>();
        List<Finding> findings = new ArrayList<>();
        ctx.queryParamMap().forEach((path, texts) -> {
            List<String> said = texts.stream()
                    .map(String::strip)
                    .filter(text -> !text.isEmpty())
                    .distinct()
                    .toList();
            if (path.equals(Subject.WITH) && !ctx.path().startsWith("/api/")) {
                return;
            }
            if (said.size() > 1) {
                findings.add(new Finding(path, String.join(", ", said), "is given more than once", "give one of them"));
            } else if (said.size() == 1) {
                typed.put(path, said.get(0));
            }
        });
        return findings.isEmpty() ? Answer.of(typed) : Answer.refused(findings);
    }

    /** An address that says the same. */
    public static String address(String path, Map<String, String> typed) {
        if (typed.isEmpty()) {
            return path;
        }
        return path + "?"
                + typed.entrySet().stream()
                        .map(entry -> encoded(entry.getKey()) + "=" + encoded(entry.getValue()))
                        .collect(Collectors.joining("&"));
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
