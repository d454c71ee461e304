// SPDX-License-Identifier: Apache-2.0
package landfall.app.serve;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import landfall.app.question.Questions;
import landfall.app.shell.Typed;
import landfall.app.visitor.Visitor;
import landfall.cards.answer.Document;
import landfall.cards.answer.JsonAnswer;
import landfall.cards.ask.Question;
import landfall.cards.card.Flat;
import landfall.cards.form.Nearest;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.fault.OutOfRange;
import landfall.store.people.Role;

/**
 * The questions over HTTP: the fields in the query, or as a JSON body of the same paths (nested or with dots), or both.
 * The answer is the document that {@code --json} prints; a refusal is the same one, with status 400.
 */
final class ApiDoor {
    private ApiDoor() {}

    static void get(Context ctx) {
        answer(ctx, question -> Typed.of(ctx));
    }

    static void post(Context ctx) {
        Answer<Map<String, String>> query = Typed.of(ctx);
        String body = ctx.body();
        answer(
                ctx,
                question -> query.then(given -> fields(body, question).map(fields -> {
                    Map<String, String> all = new LinkedHashMap<>(fields);
                    all.putAll(given);
                    return all;
                })));
    }

    private static Answer<Map<String, String>> fields(String body, Question question) {
        return body.isBlank() ? Answer.of(Map.of()) : Flat.read(body, question.form());
    }

    private static void answer(Context ctx, Function<Question, Answer<Map<String, String>>> typed) {
        String noun = ctx.pathParam("noun");
        Optional<Question> question = Questions.of(noun);
        if (question.isEmpty()) {
            refuse(ctx, 404, List.of(unknown(noun)));
            return;
        }
        Answer<Document> answer;
        try {
            answer = typed.apply(question.get()).then(question.get()::answer);
        } catch (OutOfRange e) {
            answer = Answer.refused(e.finding());
        }
        if (answer instanceof Answer.Of<Document> document) {
            json(ctx, JsonAnswer.write(document.value()));
        } else {
            refuse(ctx, 400, answer.findings());
        }
    }

    /** Who asks, and the token that whatever changes the records must bring. */
    static void me(Context ctx) {
        Visitor visitor = Visitor.of(ctx);
        Role role = Objects.requireNonNull(visitor.role());
        ObjectNode answer = new ObjectMapper().createObjectNode();
        answer.put("name", visitor.name()).put("role", role.word()).put("token", visitor.token());
        json(ctx, answer.toString());
    }

    private static Finding unknown(String noun) {
        List<String> nouns = Questions.nouns();
        return new Finding(
                "noun",
                noun,
                "is not a question",
                "did you mean " + Nearest.of(noun, nouns) + "? All of them: " + String.join(", ", nouns));
    }

    static void refuse(Context ctx, int status, List<Finding> findings) {
        ctx.status(status);
        json(ctx, JsonAnswer.refusal(findings));
    }

    private static void json(Context ctx, String text) {
        ctx.contentType("application/json; charset=utf-8").result(text);
    }
}
