// SPDX-License-Identifier: Apache-2.0
package landfall.app.given;

import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import landfall.app.shell.Subject;
import landfall.cards.card.CardFile;
import landfall.cards.card.FixtureCard;
import landfall.cards.card.Flat;
import landfall.cards.card.TapCard;
import landfall.cards.form.Field;
import landfall.cards.form.Form;
import landfall.fault.Answer;
import landfall.fault.Finding;

/**
 * A form that came with files: what was typed, with the files' content in its place. A file chosen as {@code x-card} is
 * a tap or a fixture card, one chosen as {@code x-file} is the text of the field {@code x}.
 *
 * @param findings what is wrong with the files
 */
public record Opened(Map<String, String> typed, List<Finding> findings) {
    private static final int GREATEST_CARD = 64 * 1024;
    private static final String CARD = "-card";
    private static final String FILE = "-file";

    /** What a request of a form says. */
    public static Opened of(Context ctx) {
        Map<String, String> typed = new LinkedHashMap<>();
        ctx.formParamMap()
                .forEach((path, texts) -> texts.stream()
                        .filter(text -> !text.isBlank() && !isFile(path) && !path.equals(Subject.WITH))
                        .forEach(text -> typed.putIfAbsent(path, text.strip())));
        List<Finding> findings = new ArrayList<>();
        ctx.uploadedFileMap()
                .forEach((name, files) -> files.stream()
                        .filter(file -> file.size() > 0)
                        .forEach(file -> findings.addAll(open(name, file, typed))));
        return new Opened(typed, findings);
    }

    /** Without a script a chosen file's name comes along with the other fields; it says nothing. */
    public static Map<String, String> withoutFiles(Map<String, String> typed) {
        Map<String, String> fields = new LinkedHashMap<>(typed);
        fields.keySet().removeIf(Opened::isFile);
        return fields;
    }

    private static boolean isFile(String path) {
        return path.endsWith(CARD) || path.endsWith(FILE);
    }

    private static List<Finding> open(String name, UploadedFile file, Map<String, String> typed) {
        Answer<String> read = text(file);
        if (!(read instanceof Answer.Of<String> of)) {
            return read.findings();
        }
        if (name.endsWith(FILE)) {
            typed.put(
                    name.substring(0, name.length() - FILE.length()), of.value().strip());
            return List.of();
        }
        CardFile card = CardFile.read(kind(of.value()), "card", file.filename(), of.value());
        if (card.findings().isEmpty()) {
            replace(typed, card.fields());
        }
        return card.findings();
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

    private static Answer<String> text(UploadedFile file) {
        if (file.size() > GREATEST_CARD) {
            return Answer.refused(
                    new Finding("card", file.filename(), "is over 64 kB", "open a card or a table of readings"));
        }
        try (InputStream in = file.content()) {
            return Answer.of(new String(in.readAllBytes(), StandardCharsets.UTF_8));
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
}
