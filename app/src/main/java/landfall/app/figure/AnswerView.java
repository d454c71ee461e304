// SPDX-License-Identifier: Apache-2.0
package landfall.app.figure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import landfall.cards.answer.Document;
import landfall.cards.answer.Item;
import landfall.cards.answer.Unit;
import landfall.cards.words.Words;
import landfall.fault.Caution;
import landfall.quantity.UnitSystem;
import landfall.working.Rule;
import landfall.working.Trust;

/** An answer as pages look things up in it: by path, such as {@code setting.axial}. */
public final class AnswerView {
    private final Document document;
    private final WorkingView working;
    private final Map<String, Item> items = new LinkedHashMap<>();

    public AnswerView(Document document) {
        this.document = document;
        this.working = new WorkingView(document.working());
        int noun = document.noun().length() + 1;
        document.walk((path, item) -> items.put(path.substring(noun), item));
    }

    public String subject() {
        return document.subject();
    }

    public UnitSystem units() {
        return document.units();
    }

    /** Doubts and dangers, without what was only assumed. */
    public List<Caution> cautions() {
        return document.cautions().stream()
                .filter(caution -> !isAssumption(caution))
                .toList();
    }

    /** What was not told, and what was taken instead. */
    public List<Caution> assumed() {
        return document.cautions().stream().filter(AnswerView::isAssumption).toList();
    }

    private static boolean isAssumption(Caution caution) {
        return caution.code().endsWith("Assumed");
    }

    public List<StepView> working() {
        return working.all();
    }

    public boolean has(String path) {
        return items.containsKey(path);
    }

    /** A single figure; a path without one is a fault of the page. */
    public FigureView figure(String path) {
        return view(path, need(path, Item.Figure.class));
    }

    /** The figures among some paths that this answer has. */
    public List<FigureView> figures(String... paths) {
        List<FigureView> found = new ArrayList<>();
        for (String path : paths) {
            if (items.get(path) instanceof Item.Figure figure) {
                found.add(view(path, figure));
            } else if (items.get(path) instanceof Item.BandFigure band) {
                found.add(view(path, band));
            } else if (items.get(path) instanceof Item.FittedFigure fitted) {
                found.add(view(path, fitted));
            }
        }
        return found;
    }

    public String text(String path) {
        return items.get(path) instanceof Item.Text text ? text.text() : "";
    }

    /** A text in the trade's words: some are codes, made for programs to read. */
    String words(Item.Text text) {
        return RowView.words(document.noun(), text.text());
    }

    /** The text at a path in the trade's words; empty where there is none. */
    public String words(String path) {
        return items.get(path) instanceof Item.Text text ? words(text) : "";
    }

    public boolean flag(String path) {
        return need(path, Item.Flag.class).yes();
    }

    public int count(String path) {
        return need(path, Item.Count.class).count();
    }

    public List<String> lines(String path) {
        return items.get(path) instanceof Item.Lines lines ? lines.lines() : List.of();
    }

    /** The rows of a table. */
    public List<Item.Group> rows(String path) {
        return items.get(path) instanceof Item.Rows rows ? rows.rows() : List.of();
    }

    /** The rows of a table, each to be looked into. */
    public List<RowView> rowsOf(String path) {
        return rows(path).stream()
                .map(row -> new RowView(row, document.noun(), path, document.units()))
                .toList();
    }

    /** A table; none where the answer has none of that path, or it is empty. */
    public Optional<TableView> table(String path) {
        return items.get(path) instanceof Item.Rows rows && !rows.rows().isEmpty()
                ? Optional.of(TableView.of(document.noun(), path, rows, document.units()))
                : Optional.empty();
    }

    /** One end of limits as a figure; none where the standard leaves it open. */
    public Optional<FigureView> end(String path, boolean most) {
        if (!(items.get(path) instanceof Item.Range range)) {
            return Optional.empty();
        }
        Item.Point point = most ? range.max() : range.min();
        String here = path + (most ? ".max" : ".min");
        return Optional.ofNullable(point).map(p -> view(here, label(path), p, range.unit()));
    }

    /** The words that an item is called by; fuller ones where the page shows it outside of its group. */
    public String label(String path) {
        String key = document.noun() + "." + path;
        return Words.find("page.figure." + key).orElseGet(() -> Words.of(key));
    }

    /** The whole answer in sections, for a page without a layout of its own. */
    public List<Section> sections() {
        return Sections.of(document, this);
    }

    /** The groups that a page with a layout of its own has not laid out itself; what stands loose it has. */
    public List<Section> sections(String... laidOut) {
        return Sections.withoutLoose(document, this, List.of(laidOut));
    }

    /** The expected figure, with its band where others have the other system's value. */
    private FigureView view(String path, Item.BandFigure band) {
        FigureView expected = view(path, label(path), band.expected(), band.unit());
        UnitSystem units = document.units();
        String range = Words.of(
                "page.figure.band",
                Digits.estimated(band.low().value(), band.unit(), units),
                Digits.estimated(band.high().value(), band.unit(), units));
        String value = Digits.estimated(band.expected().value(), band.unit(), units);
        return new FigureView(
                path, expected.label(), value, expected.unit(), range, expected.trust(), expected.working());
    }

    /** A figure fitted to readings, with its uncertainty (95 %) where others have the other system's value. */
    private FigureView view(String path, Item.FittedFigure fitted) {
        FigureView value = view(path, label(path), fitted.value(), fitted.unit());
        String within = Words.of(
                "page.figure.within", Digits.shown(fitted.uncertainty().value(), fitted.unit(), document.units()));
        return new FigureView(path, value.label(), value.value(), value.unit(), within, value.trust(), value.working());
    }

    private FigureView view(String path, Item.Figure figure) {
        return view(path, label(path), figure.point(), figure.unit());
    }

    private FigureView view(String path, String label, Item.Point point, Unit unit) {
        UnitSystem units = document.units();
        Rule rule = point.rule();
        return new FigureView(
                path,
                label,
                unit == Unit.PURE ? Digits.plain(point.value(), unit) : Digits.shown(point.value(), unit, units),
                Digits.sign(unit, units),
                unit.hasTwoSigns() ? other(point.value(), unit, units) : "",
                trust(rule),
                working.of(rule, point.value()));
    }

    /** What the person gave is called given, whoever measured it. */
    private static FigureView.TrustMark trust(Rule rule) {
        String word = rule.formula().equals(Rule.GIVEN)
                ? Words.of("text.given")
                : rule.trust().words();
        return new FigureView.TrustMark(word, rule.trust() == Trust.ESTIMATE);
    }

    private static String other(double held, Unit unit, UnitSystem units) {
        UnitSystem other = units == UnitSystem.INCH ? UnitSystem.METRIC : UnitSystem.INCH;
        return Digits.shown(held, unit, other) + " " + unit.sign(other);
    }

    private <T extends Item> T need(String path, Class<T> kind) {
        Item item = items.get(path);
        if (!kind.isInstance(item)) {
            throw new IllegalStateException(
                    "the answer to " + document.noun() + " has no " + kind.getSimpleName() + " at " + path);
        }
        return kind.cast(item);
    }
}
