// SPDX-License-Identifier: Apache-2.0
package landfall.app.why;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import landfall.app.figure.AnswerView;
import landfall.app.figure.Reply;
import landfall.app.figure.RowView;
import landfall.app.given.Cells;
import landfall.app.given.Onward;
import landfall.app.question.Questions;
import landfall.app.shell.Frame;
import landfall.app.shell.Place;
import landfall.app.shell.Shell;
import landfall.app.shell.Typed;
import landfall.cards.ask.Question;
import landfall.cards.ask.WhyAsk;
import landfall.fault.Answer;

/** {@code Why}: what is wrong with the thread or the tap. */
public final class WhyPage {
    private static final WhyAsk QUESTION = new WhyAsk();
    private static final Map<String, String> PATHS = Map.of(
            "dial", Place.GRIND.path() + "/dial",
            "life", Place.GRIND.path() + "/life",
            "decide", Place.GRIND.path() + "/decide",
            "inspect", Place.GRIND.path() + "/inspect");

    private final Shell shell;

    public WhyPage(Shell shell) {
        this.shell = shell;
    }

    public void show(Context ctx) {
        Answer<Map<String, String>> typed = Typed.of(ctx);
        Map<String, String> given = typed instanceof Answer.Of<Map<String, String>> of ? of.value() : Map.of();
        Reply reply = Reply.to(QUESTION, typed);
        Map<String, Object> values = new HashMap<>();
        values.put("reply", reply);
        values.put("causes", reply.answer() == null ? List.of() : causes(reply, given));
        values.put("symptoms", symptoms(given));
        if (Shell.asksForAnswerOnly(ctx)) {
            shell.show(ctx, "why-answer", values);
            return;
        }
        Cells cells = new Cells(QUESTION.form(), given, reply.findings());
        values.put("open", cells.of("symptom", "callout", "material"));
        values.put("rest", cells.rest());
        values.put("frame", new Frame(title(reply), Place.WHY));
        shell.show(ctx, "why", values);
    }

    /** Each cause with the question that helps to mend it. */
    private static List<Remedy> causes(Reply reply, Map<String, String> given) {
        Map<String, String> carried = new LinkedHashMap<>(given);
        if (given.containsKey("callout")) {
            carried.putIfAbsent("thread", given.get("callout"));
        }
        if (given.containsKey("material")) {
            carried.putIfAbsent("cuts", given.get("material"));
        }
        List<Remedy> causes = new ArrayList<>();
        for (RowView row : rows(reply, "causes")) {
            List<Onward> next = Questions.of(row.code("page")).stream()
                    .filter(question -> !question.noun().equals("why"))
                    .map(question -> to(question, carried))
                    .toList();
            causes.add(new Remedy(row, next));
        }
        return causes;
    }

    /** A cause; onward: what to ask next, one or none. */
    public record Remedy(RowView row, List<Onward> onward) {}

    private static Onward to(Question question, Map<String, String> carried) {
        return Onward.to(question, PATHS.getOrDefault(question.noun(), "/" + question.noun()), carried);
    }

    private static List<RowView> rows(Reply reply, String key) {
        AnswerView answer = reply.answer();
        return answer == null ? List.of() : answer.rowsOf(key);
    }

    /** Every symptom held, to choose from. */
    private static List<Seen> symptoms(Map<String, String> given) {
        Reply list = Reply.to(QUESTION, Answer.of(Map.of("units", "metric")));
        List<Seen> seen = new ArrayList<>();
        for (RowView row : rows(list, "symptoms")) {
            Map<String, String> typed = new LinkedHashMap<>(given);
            typed.put("symptom", row.code("symptom"));
            seen.add(new Seen(row.code("symptom"), row.code("means"), Typed.address(Place.WHY.path(), typed)));
        }
        return seen;
    }

    /** What is seen, in words, and the address that asks why. */
    public record Seen(String code, String words, String address) {}

    private static String title(Reply reply) {
        return reply.answer() == null
                ? Place.WHY.noun()
                : Place.WHY.noun() + " " + reply.answer().subject();
    }
}
