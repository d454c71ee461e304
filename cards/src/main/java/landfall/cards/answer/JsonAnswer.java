// SPDX-License-Identifier: Apache-2.0
package landfall.cards.answer;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import landfall.fault.Caution;
import landfall.fault.Finding;
import landfall.quantity.Rounding;
import landfall.quantity.UnitSystem;
import landfall.working.Step;
import org.jspecify.annotations.Nullable;

/**
 * Answers as JSON. A figure is {@code {"value","unit","step"}}, the step being the symbol of the working that made it.
 * Numbers carry 12 significant digits, so that binary noise is not printed.
 */
public final class JsonAnswer {
    private static final JsonFactory JSON = new JsonFactory();

    private final JsonGenerator out;
    private final UnitSystem units;

    private JsonAnswer(JsonGenerator out, UnitSystem units) {
        this.out = out;
        this.units = units;
    }

    /** The whole answer, indented. */
    public static String write(Document document) {
        return document(document, true, true);
    }

    /** The answer on one line, with or without its working. */
    public static String line(Document document, boolean working) {
        return document(document, working, false);
    }

    /** A refusal, indented: {@code {"refused":[{"field","given","why","mend"}]}}. */
    public static String refusal(List<Finding> findings) {
        return made(true, out -> findings(out, findings));
    }

    /** A refusal on one line. */
    public static String refusalLine(List<Finding> findings) {
        return made(false, out -> findings(out, findings));
    }

    private static String document(Document document, boolean working, boolean pretty) {
        return made(pretty, out -> {
            JsonAnswer answer = new JsonAnswer(out, document.units());
            out.writeStartObject();
            answer.items(document.items());
            if (working) {
                answer.working(document.working());
            }
            answer.cautions(document.cautions());
            out.writeEndObject();
        });
    }

    private interface Part {
        void to(JsonGenerator out) throws IOException;
    }

    private static String made(boolean pretty, Part part) {
        StringWriter text = new StringWriter();
        try (JsonGenerator out = JSON.createGenerator(text)) {
            if (pretty) {
                DefaultIndenter twoSpaces = new DefaultIndenter("  ", "\n");
                out.setPrettyPrinter(new DefaultPrettyPrinter().withObjectIndenter(twoSpaces));
            }
            part.to(out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    private static void findings(JsonGenerator out, List<Finding> findings) throws IOException {
        out.writeStartObject();
        out.writeArrayFieldStart("refused");
        for (Finding finding : findings) {
            out.writeStartObject();
            out.writeStringField("field", finding.field());
            out.writeStringField("given", finding.given());
            out.writeStringField("why", finding.why());
            out.writeStringField("mend", finding.mend());
            out.writeEndObject();
        }
        out.writeEndArray();
        out.writeEndObject();
    }

    private void items(List<Item> items) throws IOException {
        for (Item item : items) {
            out.writeFieldName(item.key());
            value(item);
        }
    }

    private void value(Item item) throws IOException {
        if (item instanceof Item.Figure figure) {
            figure(figure);
        } else if (item instanceof Item.Range range) {
            range(range);
        } else if (item instanceof Item.BandFigure band) {
            band(band);
        } else if (item instanceof Item.FittedFigure fitted) {
            fitted(fitted);
        } else if (item instanceof Item.Text text) {
            out.writeString(text.text());
        } else if (item instanceof Item.Flag flag) {
            out.writeBoolean(flag.yes());
        } else if (item instanceof Item.Count count) {
            out.writeNumber(count.count());
        } else if (item instanceof Item.Group group) {
            group(group);
        } else if (item instanceof Item.Rows rows) {
            out.writeStartArray();
            for (Item.Group row : rows.rows()) {
                group(row);
            }
            out.writeEndArray();
        } else if (item instanceof Item.Lines lines) {
            out.writeStartArray();
            for (String line : lines.lines()) {
                out.writeString(line);
            }
            out.writeEndArray();
        }
    }

    private void group(Item.Group group) throws IOException {
        out.writeStartObject();
        items(group.items());
        out.writeEndObject();
    }

    private void figure(Item.Figure figure) throws IOException {
        out.writeStartObject();
        number("value", figure.unit().in(units, figure.value()));
        out.writeStringField("unit", figure.unit().sign(units));
        out.writeStringField("step", figure.rule().symbol());
        out.writeEndObject();
    }

    private void range(Item.Range range) throws IOException {
        out.writeStartObject();
        end("min", range.min(), range.unit());
        end("max", range.max(), range.unit());
        out.writeStringField("unit", range.unit().sign(units));
        out.writeObjectFieldStart("steps");
        step("min", range.min());
        step("max", range.max());
        out.writeEndObject();
        out.writeEndObject();
    }

    private void band(Item.BandFigure band) throws IOException {
        out.writeStartObject();
        end("low", band.low(), band.unit());
        end("expected", band.expected(), band.unit());
        end("high", band.high(), band.unit());
        out.writeStringField("unit", band.unit().sign(units));
        out.writeObjectFieldStart("steps");
        step("low", band.low());
        step("expected", band.expected());
        step("high", band.high());
        out.writeEndObject();
        out.writeEndObject();
    }

    private void fitted(Item.FittedFigure fitted) throws IOException {
        out.writeStartObject();
        end("value", fitted.value(), fitted.unit());
        end("uncertainty", fitted.uncertainty(), fitted.unit());
        if (fitted.standard() != null) {
            end("standard", fitted.standard(), fitted.unit());
        }
        out.writeStringField("unit", fitted.unit().sign(units));
        out.writeStringField("step", fitted.value().rule().symbol());
        out.writeEndObject();
    }

    private void end(String key, Item.@Nullable Point point, Unit unit) throws IOException {
        if (point == null) {
            out.writeNullField(key);
        } else {
            number(key, unit.in(units, point.value()));
        }
    }

    private void step(String key, Item.@Nullable Point point) throws IOException {
        if (point != null) {
            out.writeStringField(key, point.rule().symbol());
        }
    }

    private void number(String key, double value) throws IOException {
        out.writeFieldName(key);
        out.writeNumber(digits(value));
    }

    /** Twelve significant digits, without an exponent where a person would write none. */
    static String digits(double value) {
        if (value == 0) {
            return "0";
        }
        var decimal = Rounding.decimal(value).stripTrailingZeros();
        double size = Math.abs(value);
        return size >= 1e-6 && size < 1e15 ? decimal.toPlainString() : decimal.toString();
    }

    /** Steps keep the unit of their formula, so that they can be checked against it. */
    private void working(List<Step> steps) throws IOException {
        out.writeArrayFieldStart("working");
        for (Step step : steps) {
            out.writeStartObject();
            out.writeStringField("symbol", step.symbol());
            out.writeStringField("formula", step.rule().formula());
            number("value", step.value());
            out.writeStringField("unit", step.rule().unit());
            out.writeStringField("source", step.rule().source().words());
            out.writeStringField("trust", step.rule().trust().code());
            out.writeStringField("means", step.rule().means());
            out.writeEndObject();
        }
        out.writeEndArray();
    }

    private void cautions(List<Caution> cautions) throws IOException {
        out.writeArrayFieldStart("cautions");
        for (Caution caution : cautions) {
            out.writeStartObject();
            out.writeStringField("code", caution.code());
            out.writeStringField("text", caution.text());
            out.writeStringField("raisedBy", caution.raisedBy());
            out.writeEndObject();
        }
        out.writeEndArray();
    }
}
