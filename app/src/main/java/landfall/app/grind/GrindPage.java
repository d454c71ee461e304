// SPDX-License-Identifier: Apache-2.0
package landfall.app.grind;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import landfall.app.example.Examples;
import landfall.app.figure.Reply;
import landfall.app.shell.Frame;
import landfall.app.shell.Place;
import landfall.app.shell.Shell;
import landfall.app.shell.Typed;
import landfall.cards.ask.GrindAsk;
import landfall.cards.card.CardFile;
import landfall.cards.card.FixtureCard;
import landfall.cards.card.Flat;
import landfall.cards.card.TapCard;
import landfall.cards.form.Field;
import landfall.cards.form.Form;
import landfall.fault.Answer;
import landfall.fault.Finding;

/** {@code Grind}: how to set the fixture for a tap. */
public final class GrindPage {
    private static final GrindAsk QUESTION = new GrindAsk();
    private static final List<String> CARD_FILES = List.of("tap-card", "fixture-card");
    private static final int GREATEST_CARD = 64 * 1024;

    private final Shell shell;

    public GrindPage(Shell shell) {
        this.shell = shell;
    }

    public void show(Context ctx) {
        Answer<Map<String, String>> typed = Typed.of(ctx).map(GrindPage::withoutFiles);
        Reply reply = Reply.to(QUESTION, typed);
        Map<String, String> given = typed instanceof Answer.Of<Map<String, String>> of ? of.value() : Map.of();
        if (Shell.asksForAnswerOnly(ctx)) {
            shell.show(
                    ctx,
                    "grind-answer",
                    Map.of("reply", reply, "pictures", pictures(given, reply), "onward", Onward.of(given)));
        } else {
            page(ctx, given, reply);
        }
    }

    /** Without a script a chosen file's name comes along with the other fields; it says nothing. */
    private static Map<String, String> withoutFiles(Map<String, String> typed) {
        Map<String, String> fields = new LinkedHashMap<>(typed);
        CARD_FILES.forEach(fields::remove);
        return fields;
    }

    /** The sheet as PDF; what was typed stands in the address, the paper beside it. */
    public void pdf(Context ctx) {
        Answer<byte[]> pdf = Typed.of(ctx).then(typed -> {
            Map<String, String> given = new LinkedHashMap<>(typed);
            String paper = given.remove("paper");
            return GrindPaper.pdf(given, paper == null ? "" : paper);
        });
        if (pdf instanceof Answer.Of<byte[]> of) {
            ctx.contentType("application/pdf").result(of.value());
            ctx.header("Content-Disposition", "inline; filename=\"setup.pdf\"");
        } else {
            ctx.status(HttpStatus.BAD_REQUEST);
            page(ctx, Map.of(), new Reply(null, pdf.findings()));
        }
    }

    private static Pictures pictures(Map<String, String> typed, Reply reply) {
        return reply.answer() == null
                ? Pictures.NONE
                : Pictures.of(QUESTION, typed, reply.answer().units());
    }

    /**
     * Takes card files, puts them in the place of what was typed for that tap or fixture, and sends the browser to the
     * address that says so.
     */
    public void open(Context ctx) {
        Map<String, String> typed = new LinkedHashMap<>();
        ctx.formParamMap()
                .forEach((path, texts) -> texts.stream()
                        .filter(text -> !text.isBlank())
                        .forEach(text -> typed.putIfAbsent(path, text.strip())));
        List<Finding> findings = new ArrayList<>();
        for (UploadedFile file : ctx.uploadedFiles()) {
            if (file.size() > 0) {
                Answer<Map<String, String>> card = card(file);
                findings.addAll(card.findings());
                if (card instanceof Answer.Of<Map<String, String>> of) {
                    replace(typed, of.value());
                }
            }
        }
        if (findings.isEmpty()) {
            ctx.redirect(Typed.address(Place.GRIND.path(), typed), HttpStatus.SEE_OTHER);
        } else {
            ctx.status(HttpStatus.BAD_REQUEST);
            page(ctx, typed, new Reply(null, findings));
        }
    }

    /** Nothing of the tap before stays behind when another one is opened. */
    private static void replace(Map<String, String> typed, Map<String, String> card) {
        for (Form form : List.of(TapCard.FORM, FixtureCard.FORM)) {
            boolean isOfThisKind =
                    form.fields().stream().filter(Field::required).anyMatch(field -> card.containsKey(field.path()));
            if (isOfThisKind) {
                form.paths().forEach(typed::remove);
            }
        }
        typed.putAll(card);
    }

    private static Answer<Map<String, String>> card(UploadedFile file) {
        if (file.size() > GREATEST_CARD) {
            return Answer.refused(
                    new Finding("card", file.filename(), "is over 64 kB", "open a tap or a fixture card"));
        }
        try (InputStream in = file.content()) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            CardFile read = CardFile.read(kind(text), "card", file.filename(), text);
            return read.findings().isEmpty() ? Answer.of(read.fields()) : Answer.refused(read.findings());
        } catch (IOException e) {
            return Answer.refused(new Finding("card", file.filename(), "did not arrive whole", "open it again"));
        }
    }

    /** The card that most of the file's fields belong to. */
    private static Form kind(String text) {
        Map<String, String> fields =
                Flat.read(text) instanceof Answer.Of<Map<String, String>> of ? of.value() : Map.of();
        long ofFixture = fields.keySet().stream()
                .filter(FixtureCard.FORM.paths()::contains)
                .count();
        long ofTap =
                fields.keySet().stream().filter(TapCard.FORM.paths()::contains).count();
        return ofFixture > ofTap ? FixtureCard.FORM : TapCard.FORM;
    }

    private void page(Context ctx, Map<String, String> typed, Reply reply) {
        Map<String, Object> values = new HashMap<>();
        values.put("frame", new Frame(title(reply), Place.GRIND));
        values.put("given", GivenTapAndFixture.of(QUESTION.form(), typed, reply.findings()));
        values.put("examples", Examples.all());
        values.put("reply", reply);
        values.put("onward", Onward.of(typed));
        values.put("pictures", pictures(typed, reply));
        values.put("query", Typed.address("", typed));
        shell.show(ctx, "grind", values);
    }

    private static String title(Reply reply) {
        return reply.answer() == null
                ? Place.GRIND.noun()
                : Place.GRIND.noun() + " " + reply.answer().subject();
    }
}
