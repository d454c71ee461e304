// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import java.util.ArrayList;
import java.util.List;
import landfall.cards.answer.Item;
import landfall.cards.answer.Unit;
import landfall.dialling.Correction;
import landfall.dialling.DialFindings;
import landfall.dialling.FitCourse;
import landfall.dialling.Foreseen;
import landfall.dialling.Reading;
import landfall.dialling.Target;
import landfall.quantity.Length;

/** What to turn, and what the dials are held against: the second half of the answer to dialling in. */
final class DialMend {
    private final DialFindings.Mend mend;
    private final FitCourse course;
    private final Length division;
    private final DialFigures figures;

    DialMend(DialFindings found, Length division, DialFigures figures) {
        this.division = division;
        this.mend = found.mend();
        this.course = found.course();
        this.figures = figures;
    }

    List<Item> items() {
        List<Item> items = new ArrayList<>();
        items.add(corrections());
        items.add(new Item.Rows("then", then()));
        if (!mend.targets().isEmpty()) {
            items.add(new Item.Rows(
                    "targets", mend.targets().stream().map(this::target).toList()));
        }
        List<Item.Group> readings = new ArrayList<>();
        for (FitCourse.At at : course.readings()) {
            readings.add(compared(at, readings.size() + 1));
        }
        items.add(new Item.Rows("readings", readings));
        return items;
    }

    private Item corrections() {
        List<Item.Group> rows = new ArrayList<>();
        int number = 0;
        for (Correction correction : mend.corrections()) {
            number++;
            List<Item> items = new ArrayList<>(List.of(new Item.Text("do", correction.act())));
            if (correction.length() != null) {
                items.add(figures.length("by", "by_" + number, correction.length(), "by how much"));
                hint(correction, number, items);
            } else if (correction.angle() != null) {
                items.add(figures.angle("by", "by_" + number, correction.angle(), "by how much"));
            }
            rows.add(new Item.Group("correction", items));
        }
        return new Item.Rows("corrections", rows);
    }

    /** The same as the hand knows it: divisions of the dial, turns of the screw. */
    private void hint(Correction correction, int number, List<Item> items) {
        Double divisions = correction.divisions(division);
        if (divisions != null) {
            String means = "divisions of the dial of " + division.words();
            items.add(figures.figure("divisions", "n_" + number, divisions, Unit.DIVISIONS, means));
        }
        if (correction.turns() != null) {
            items.add(figures.figure("turns", "n_s", correction.turns(), Unit.TURNS, "turns of the adjusting screw"));
        }
    }

    /** One row a land, now and after each correction that the dial shows. */
    private List<Item.Group> then() {
        List<Item.Group> rows = new ArrayList<>();
        for (Foreseen foreseen : mend.foreseen()) {
            for (Foreseen.AtLand at : foreseen.lands()) {
                String place = "_%d_%d".formatted(foreseen.number(), at.land());
                rows.add(Item.Group.of(
                        "then",
                        new Item.Text("after", after(foreseen)),
                        new Item.Count("land", at.land()),
                        figures.length("edge", "y_e" + place, at.edge(), "foreseen reading at the edge"),
                        figures.length("heel", "y_h" + place, at.heel(), "foreseen reading at the heel")));
            }
        }
        return rows;
    }

    private static String after(Foreseen foreseen) {
        Correction.Kind kind = foreseen.after();
        return kind == null ? "now" : foreseen.number() + " " + kind.name().toLowerCase(java.util.Locale.ROOT);
    }

    private Item.Group target(Target target) {
        String at = place(target.land().deg());
        return Item.Group.of(
                "target",
                figures.angle("angle", "θ_" + at, target.land(), "land angle"),
                figures.length("reading", "y_w_" + at, target.reading(), "reading wanted, zero at the edge"));
    }

    private Item.Group compared(FitCourse.At at, int number) {
        Reading reading = at.reading();
        String place = "r" + number;
        List<Item> items = new ArrayList<>();
        items.add(new Item.Count("land", reading.land()));
        items.add(figures.given("angle", "θ_" + place, reading.angle().deg(), Unit.ANGLE, "land angle of the reading"));
        items.add(figures.given("reading", "y_" + place, reading.value().mm(), Unit.LENGTH, "as read"));
        items.add(figures.length("fitted", "y_f" + number, at.fitted(), "what the fit has there"));
        if (at.wanted() != null) {
            items.add(figures.length("target", "y_t" + number, at.wanted(), "what it should read there"));
        }
        return new Item.Group("reading", items);
    }

    private static String place(double deg) {
        return Double.toString(deg).replaceFirst("\\.0$", "");
    }
}
