// SPDX-License-Identifier: Apache-2.0
package landfall.cards.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import landfall.cards.words.Words;
import landfall.fault.Caution;
import landfall.fault.Finding;
import landfall.quantity.UnitSystem;
import landfall.working.Step;

/**
 * Answers as plain text of 80 columns. Decimal points stand under each other; a length has the other system's figure
 * beside it in brackets. Figures are rounded for reading only: JSON carries them whole.
 */
public final class TextAnswer {
    /** Column where values begin, and the places before a decimal point there. */
    private static final int VALUES = 34;

    private static final int BEFORE_POINT = 5;

    private final Document document;
    private final UnitSystem units;
    private final List<String> lines = new ArrayList<>();

    private TextAnswer(Document document) {
        this.document = document;
        this.units = document.units();
    }

    public static String write(Document document) {
        return write(document, false);
    }

    /** The answer, with each step of its working when asked for. */
    public static String write(Document document, boolean working) {
        TextAnswer answer = new TextAnswer(document);
        answer.title();
        answer.items(document.noun(), document.items(), 0);
        answer.cautions();
        if (working) {
            answer.working();
        }
        return String.join("\n", answer.lines) + "\n";
    }

    /** A refusal: each field with what was given, why that cannot be, and how to mend it. */
    public static String refusal(List<Finding> findings) {
        List<String> lines = new ArrayList<>();
        lines.add(Words.of("text.refused"));
        for (Finding finding : findings) {
            lines.add("  " + finding.field());
            String given = finding.given().isBlank() ? Words.of("text.nothing") : finding.given();
            lines.addAll(Lay.wrap("    " + Words.of("text.given"), 12, given));
            lines.addAll(Lay.wrap("    " + Words.of("text.why"), 12, finding.why()));
            lines.addAll(Lay.wrap("    " + Words.of("text.mend"), 12, finding.mend()));
        }
        return String.join("\n", lines) + "\n";
    }

    private void title() {
        lines.addAll(Lay.wrap("", 0, Words.of("title." + document.noun()) + ": " + document.subject()));
        lines.add("=".repeat(Math.min(Lay.WIDTH, Lay.columns(lines.get(0)))));
    }

    private void items(String path, List<Item> items, int indent) {
        for (Item item : items) {
            item(path + "." + item.key(), item, indent);
        }
    }

    private void item(String path, Item item, int indent) {
        String label = " ".repeat(indent) + Words.of(path);
        if (item instanceof Item.Group group) {
            heading(label, indent);
            items(path, group.items(), indent + 2);
        } else if (item instanceof Item.Rows rows) {
            heading(label, indent);
            lines.addAll(new TextTable(path, units).lines(rows, indent + 2));
        } else if (item instanceof Item.Lines list) {
            heading(label, indent);
            numbered(list.lines(), indent + 2);
        } else {
            lines.addAll(labelled(label, value(path, item)));
        }
    }

    private void heading(String label, int indent) {
        if (indent == 0) {
            lines.add("");
        }
        lines.add(label);
    }

    private static List<String> labelled(String label, String value) {
        if (Lay.columns(label) < VALUES) {
            return Lay.wrap(label, VALUES, value);
        }
        List<String> both = new ArrayList<>(Lay.wrap("", 0, label));
        both.addAll(Lay.wrap("", VALUES, value));
        return both;
    }

    private String value(String path, Item item) {
        if (item instanceof Item.Figure figure) {
            return beside(figure);
        } else if (item instanceof Item.Range range) {
            return range(range);
        } else if (item instanceof Item.BandFigure band) {
            return Words.of(
                    "text.band",
                    aligned(band.expected().value(), band.unit(), units),
                    sign(band.unit(), units),
                    shown(band.low().value(), band.unit(), units),
                    shown(band.high().value(), band.unit(), units));
        }
        if (item instanceof Item.FittedFigure fitted) {
            return Words.of(
                    "text.fitted",
                    aligned(fitted.value().value(), fitted.unit(), units),
                    shown(fitted.uncertainty().value(), fitted.unit(), units),
                    sign(fitted.unit(), units));
        }
        return new TextTable(path, units).cell(item);
    }

    private String beside(Item.Figure figure) {
        String here = aligned(figure.value(), figure.unit(), units) + " " + sign(figure.unit(), units);
        return figure.unit().hasTwoSigns() ? Lay.pad(here, 16) + " " + there(figure.value(), figure.unit()) : here;
    }

    private String there(double value, Unit unit) {
        UnitSystem other = units == UnitSystem.INCH ? UnitSystem.METRIC : UnitSystem.INCH;
        return "(" + shown(value, unit, other) + " " + unit.sign(other) + ")";
    }

    private String range(Item.Range range) {
        Unit unit = range.unit();
        String sign = sign(unit, units);
        if (range.min() != null && range.max() != null) {
            return aligned(range.min().value(), unit, units) + " " + Words.of("text.to") + " "
                    + shown(range.max().value(), unit, units) + " " + sign;
        }
        if (range.min() != null) {
            return aligned(range.min().value(), unit, units) + " " + sign + " " + Words.of("text.orMore");
        }
        return range.max() == null
                ? Words.of("text.open")
                : aligned(range.max().value(), unit, units) + " " + sign + " " + Words.of("text.orLess");
    }

    private static String aligned(double value, Unit unit, UnitSystem system) {
        return Lay.atPoint(shown(value, unit, system), BEFORE_POINT);
    }

    private static String shown(double value, Unit unit, UnitSystem system) {
        return Lay.figure(unit.in(system, value), unit.places(system));
    }

    private static String sign(Unit unit, UnitSystem system) {
        return unit == Unit.PURE ? "" : unit.sign(system);
    }

    private void numbered(List<String> list, int indent) {
        for (int i = 0; i < list.size(); i++) {
            String head = Lay.padLeft((i + 1) + ".", indent + 3) + " ";
            lines.addAll(Lay.wrap(head, indent + 4, list.get(i)));
        }
    }

    private void cautions() {
        if (document.cautions().isEmpty()) {
            return;
        }
        lines.add("");
        lines.add(Words.of("text.cautions"));
        for (Caution caution : document.cautions()) {
            String by = caution.raisedBy().isEmpty() ? "" : " (" + caution.raisedBy() + ")";
            lines.addAll(Lay.wrap("  ! ", 4, caution.text() + by));
        }
    }

    private void working() {
        lines.add("");
        lines.add(Words.of("text.working"));
        for (Step step : document.working()) {
            String unit =
                    step.rule().unit().equals("1") ? "" : " " + step.rule().unit();
            String value =
                    JsonAnswer.digits(Double.parseDouble(String.format(Locale.ROOT, "%.6g", step.value()))) + unit;
            lines.addAll(Lay.wrap(
                    "  " + step.symbol() + " ",
                    Math.max(12, Lay.columns(step.symbol()) + 3),
                    step.rule().means()));
            String formula = step.rule().formula();
            lines.addAll(Lay.wrap(
                    "", 12, step.rule().isComputed() ? "= " + formula + " = " + value : formula + ": " + value));
            lines.addAll(Lay.wrap(
                    "",
                    12,
                    "[" + step.rule().source().words() + "; "
                            + step.rule().trust().words() + "]"));
        }
    }
}
