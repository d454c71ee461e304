// SPDX-License-Identifier: Apache-2.0
package landfall.app.given;

import java.util.LinkedHashMap;
import java.util.Map;
import landfall.app.shell.Subject;
import landfall.fault.Answer;

/**
 * What a page was given, and for which tap of the crib it was opened. The mark stands in the address as {@code crib}
 * and is no field of the question: it only leads back.
 *
 * @param mark empty where the page was opened for none
 */
public record OpenedFor(String mark, Answer<Map<String, String>> typed) {
    public static final String FIELD = Subject.CRIB;

    public static OpenedFor of(Answer<Map<String, String>> typed) {
        String[] mark = {""};
        Answer<Map<String, String>> rest = typed.map(all -> {
            String told = all.getOrDefault(FIELD, "");
            if (!told.matches("[A-Z0-9][A-Z0-9._-]{0,31}")) {
                return all;
            }
            mark[0] = told;
            Map<String, String> others = new LinkedHashMap<>(all);
            others.remove(FIELD);
            return others;
        });
        return new OpenedFor(mark[0], rest);
    }

    /** The form of an event on that tap's page. */
    public String log(String event) {
        return "/crib/" + mark + "?event=" + event;
    }
}
