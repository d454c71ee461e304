// SPDX-License-Identifier: Apache-2.0
package landfall.app.job;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import landfall.app.given.Cell;
import landfall.app.given.Cells;
import landfall.cards.job.Amiss;
import landfall.cards.job.HoleRow;
import landfall.cards.job.JobForms;
import landfall.cards.job.JobGiven;
import landfall.cards.job.JobText;
import landfall.fault.Finding;

/**
 * The page's form: fields of the job, rows of cells for its holes, and a text to paste a table into. What was typed
 * comes back in its cells, whatever is amiss.
 *
 * @param rows as they stand on the page, the first is line 1; blank ones among them
 * @param paste a text that is not yet rows
 */
record JobForm(Map<String, String> fields, List<Map<String, String>> rows, String paste, List<Amiss> amiss) {
    private static final Pattern CELL = Pattern.compile("holes\\.(\\d{1,3})\\.([a-z]+)");
    private static final int LEAST = 4;

    JobForm {
        fields = new LinkedHashMap<>(fields);
        rows = List.copyOf(rows);
        amiss = List.copyOf(amiss);
    }

    static JobForm blank() {
        return new JobForm(Map.of(), List.of(), "", List.of());
    }

    /** What a form sent. */
    static JobForm of(Context ctx) {
        Map<String, String> fields = new LinkedHashMap<>();
        Map<Integer, Map<String, String>> rows = new TreeMap<>();
        String paste = "";
        for (Map.Entry<String, List<String>> entry : ctx.formParamMap().entrySet()) {
            String text =
                    entry.getValue().isEmpty() ? "" : entry.getValue().get(0).strip();
            Matcher cell = CELL.matcher(entry.getKey());
            if (cell.matches()) {
                Map<String, String> row =
                        rows.computeIfAbsent(Integer.valueOf(cell.group(1)), any -> new LinkedHashMap<>());
                if (!text.isEmpty()) {
                    row.put(cell.group(2), text);
                }
            } else if (entry.getKey().equals("paste")) {
                paste = text;
            } else if (!text.isEmpty() && JobForms.JOB.field(entry.getKey()).isPresent()) {
                fields.put(entry.getKey(), text);
            }
        }
        return new JobForm(fields, new ArrayList<>(rows.values()), paste, List.of());
    }

    JobGiven given() {
        return new JobGiven(fields, JobGiven.filled(rows));
    }

    /** The same with what is amiss. */
    JobForm with(List<Amiss> found) {
        return new JobForm(fields, rows, paste, found);
    }

    /** The pasted table as rows after those that were typed; a table that cannot be read stays where it is. */
    JobForm pasted() {
        JobGiven read = JobText.read(paste);
        if (paste.isBlank() || !read.amiss().isEmpty()) {
            return paste.isBlank() ? this : with(read.amiss());
        }
        Map<String, String> all = new LinkedHashMap<>(fields);
        read.fields().forEach(all::putIfAbsent);
        List<Map<String, String>> rowsAfter = new ArrayList<>();
        JobGiven.filled(rows).forEach(row -> rowsAfter.add(row.cells()));
        read.rows().forEach(row -> rowsAfter.add(row.cells()));
        return new JobForm(all, rowsAfter, "", List.of());
    }

    /** The same with room for more. */
    JobForm longer() {
        List<Map<String, String>> more = new ArrayList<>(rows);
        for (int i = 0; i < LEAST; i++) {
            more.add(Map.of());
        }
        return new JobForm(fields, more, paste, amiss);
    }

    /** Cells of the job's own fields. */
    List<Cell> cells(String... paths) {
        return new Cells(JobForms.JOB, fields, findings(0)).of(paths);
    }

    /** Cells of each row, four at least and one blank. */
    List<List<Cell>> holes() {
        List<HoleRow> filled = JobGiven.filled(rows);
        int last = filled.isEmpty() ? 0 : filled.get(filled.size() - 1).at();
        int count = Math.max(Math.max(LEAST, rows.size()), last + 1);
        List<List<Cell>> holes = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            holes.add(hole(i, i <= rows.size() ? rows.get(i - 1) : Map.of()));
        }
        return holes;
    }

    private List<Cell> hole(int at, Map<String, String> typed) {
        List<Cell> cells = new ArrayList<>();
        for (Cell cell : new Cells(JobForms.HOLE, typed, findings(at)).rest()) {
            String path = "holes." + at + "." + cell.path();
            cells.add(new Cell(
                    Cell.id(path),
                    path,
                    cell.label(),
                    cell.means(),
                    cell.value(),
                    cell.example(),
                    cell.finding(),
                    cell.choices(),
                    cell.unchosen()));
        }
        return cells;
    }

    private List<Finding> findings(int at) {
        return amiss.stream().filter(one -> one.at() == at).map(Amiss::finding).toList();
    }

    /** For the list above the form. */
    List<Finding> placed() {
        return amiss.stream().map(Amiss::placed).toList();
    }
}
