// SPDX-License-Identifier: Apache-2.0
package landfall.app.given;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import landfall.cards.form.Field;
import landfall.cards.form.Form;
import landfall.cards.words.Words;
import landfall.fault.Finding;

/** Lays the fields of a form out in groups; what no group has claimed is the rest. */
public final class Cells {
    private final Form form;
    private final Map<String, String> typed;
    private final List<Finding> findings;
    private final Set<String> claimed = new HashSet<>();

    public Cells(Form form, Map<String, String> typed, List<Finding> findings) {
        this.form = form;
        this.typed = typed;
        this.findings = findings;
    }

    /** The cells of some fields, in the order asked for. A field that the form doesn't have is left out. */
    public List<Cell> of(String... paths) {
        List<Cell> cells = new ArrayList<>();
        for (String path : paths) {
            form.field(path).ifPresent(field -> cells.add(cell(field)));
            claimed.add(path);
        }
        return cells;
    }

    /** The fields whose paths begin so and that are not claimed yet. */
    public List<Cell> restUnder(String... prefixes) {
        List<Cell> cells = new ArrayList<>();
        for (Field<?> field : form.fields()) {
            if (List.of(prefixes).stream().anyMatch(field.path()::startsWith) && claimed.add(field.path())) {
                cells.add(cell(field));
            }
        }
        return cells;
    }

    /** Whatever no group has claimed. */
    public List<Cell> rest() {
        return restUnder("");
    }

    private Cell cell(Field<?> field) {
        return new Cell(
                Cell.id(field.path()),
                field.path(),
                Words.find("label." + field.words()).orElseGet(field::means),
                field.means(),
                typed.getOrDefault(field.path(), ""),
                Words.of("page.given.example", field.example()),
                finding(field.path()),
                choices(field),
                Words.of(field.required() ? "page.given.choose" : "page.given.usual"));
    }

    private String finding(String path) {
        // A blank field that is needed says so in the answer's place; the cell stays quiet until something is typed.
        return findings.stream()
                .filter(found -> found.field().equals(path) && typed.containsKey(path))
                .map(found -> found.why() + ". " + Words.of("page.given.mend", found.mend()))
                .findFirst()
                .orElse("");
    }

    private static List<String> choices(Field<?> field) {
        return field.kind().schema().get("enum") instanceof List<?> words
                ? words.stream().map(String::valueOf).toList()
                : List.of();
    }
}
