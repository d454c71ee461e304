// SPDX-License-Identifier: Apache-2.0
package landfall.cards.form;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.quantity.UnitSystem;

/**
 * The fields of one question or one card, once for command line, page, HTTP, batch and schema.
 *
 * @param name the question's noun or the card's name
 */
public record Form(String name, List<Field<?>> fields) {
    public Form {
        fields = List.copyOf(fields);
        Set<String> seen = new LinkedHashSet<>();
        for (Field<?> field : fields) {
            if (!seen.add(field.path())) {
                throw new IllegalArgumentException("two fields called " + field.path() + " in " + name);
            }
        }
    }

    public static Form of(String name, Field<?>... fields) {
        return new Form(name, List.of(fields));
    }

    /** The fields of this form, then those of another; a field of both stands once. */
    public Form and(Form other) {
        Set<Field<?>> all = new LinkedHashSet<>(fields);
        all.addAll(other.fields);
        return new Form(name, List.copyOf(all));
    }

    /** The same fields under another name. */
    public Form called(String other) {
        return new Form(other, fields);
    }

    /** The same, with the fields whose path begins so no longer required. */
    public Form easedOf(String... beginnings) {
        List<Field<?>> eased = new ArrayList<>();
        for (Field<?> field : fields) {
            boolean ease = List.of(beginnings).stream().anyMatch(field.path()::startsWith);
            eased.add(ease ? field.eased() : field);
        }
        return new Form(name, eased);
    }

    public Optional<Field<?>> field(String path) {
        return fields.stream().filter(field -> field.path().equals(path)).findFirst();
    }

    public List<String> paths() {
        return fields.stream().<String>map(Field::path).toList();
    }

    /** Reads every field. A blank text counts as left out; every bad, missing or unknown one is found at once. */
    public Answer<Entries> judge(Map<String, String> typed, UnitSystem bare) {
        List<Finding> findings = new ArrayList<>();
        Map<String, Object> values = new HashMap<>();
        for (Field<?> field : fields) {
            String text = typed.getOrDefault(field.path(), "");
            if (!text.isBlank()) {
                Answer<?> answer = field.kind().read(field.path(), text, bare);
                findings.addAll(answer.findings());
                if (answer instanceof Answer.Of<?> of) {
                    values.put(field.path(), of.value());
                }
            } else if (field.required()) {
                findings.add(new Finding(
                        field.path(),
                        text,
                        "is needed: " + field.means(),
                        "give " + field.kind().words() + ", such as " + field.example()));
            }
        }
        findings.addAll(unknown(typed));
        return findings.isEmpty() ? Answer.of(new Entries(values, Map.copyOf(typed))) : Answer.refused(findings);
    }

    private List<Finding> unknown(Map<String, String> typed) {
        List<String> known = paths();
        return typed.entrySet().stream()
                .filter(entry -> !known.contains(entry.getKey()))
                .sorted(Map.Entry.comparingByKey())
                .map(entry -> new Finding(
                        entry.getKey(),
                        entry.getValue(),
                        "is not a field of " + name,
                        "write " + Nearest.of(entry.getKey(), known) + ", the nearest, or leave it out"))
                .toList();
    }
}
