// SPDX-License-Identifier: Apache-2.0
package landfall.cards.spread;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import landfall.cards.form.Field;
import landfall.cards.form.Nearest;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.quantity.Rounding;
import landfall.quantity.UnitSystem;
import landfall.spread.Law;

/**
 * Reads how a field varies: {@code normal 9 deg; 0.2 deg}, {@code uniform 0.1 mm; 0.3 mm}, {@code list #7; F; 27/64},
 * {@code range 8 deg to 10 deg step 0.25 deg}, {@code measured 7.98; 8.01; 8.02}. With one figure, {@code normal 0.2
 * deg} and {@code uniform 0.25 deg} lie about what is given.
 */
final class LawText {
    static final List<String> WORDS = List.of("normal", "uniform", "list", "range", "measured");
    private static final int MOST_STEPS = 1000;
    private static final int FEWEST_READINGS = 3;

    private final Field<?> field;
    private final UnitSystem bare;
    private final String typed;
    private final Optional<String> about;

    /** @param about the text that the field has when it does not vary */
    LawText(Field<?> field, String typed, Optional<String> about, UnitSystem bare) {
        this.field = field;
        this.typed = typed.strip();
        this.about = about;
        this.bare = bare;
    }

    /** Whether a law needs to be told what it lies about. */
    static boolean isAbout(String typed) {
        String[] parts = typed.strip().split("\\s+", 2);
        boolean spread = parts.length == 2 && List.of("normal", "uniform").contains(parts[0].toLowerCase(Locale.ROOT));
        return spread && LawParts.of(parts[1]).size() == 1;
    }

    Answer<Varied> read() {
        String[] parts = typed.split("\\s+", 2);
        String word = parts[0].toLowerCase(Locale.ROOT);
        if (!WORDS.contains(word)) {
            return refused(
                    "does not begin with how it varies",
                    "begin with " + Nearest.of(word, WORDS) + ", the nearest, or another of "
                            + String.join(", ", WORDS));
        }
        if (parts.length < 2) {
            return refused("has no figures", "write such as " + example(word));
        }
        List<String> told = LawParts.of(parts[1]);
        return switch (word) {
            case "normal", "uniform" -> between(word, told);
            case "range" -> range(parts[1]);
            case "list" -> values(told).then(this::list);
            default -> values(told).then(this::measured);
        };
    }

    private String example(String word) {
        String such = field.example();
        return switch (word) {
            case "range" -> "range " + such + " to " + such + " step " + such;
            case "list", "measured" -> word + " " + such + "; " + such;
            default -> word + " " + such + "; " + such;
        };
    }

    /** A text as the field accepts it. */
    private record Value(String text, Amount amount, double held) {}

    private Answer<Value> value(String text) {
        Answer<?> accepted = field.kind().reading().read(text, bare);
        if (!(accepted instanceof Answer.Of<?> of)) {
            return again(accepted.findings(), text);
        }
        Optional<Amount> amount = Amount.of(field.kind(), of.value(), text, bare);
        if (amount.isEmpty()) {
            return Answer.of(new Value(text, Amount.NUMBER, Double.NaN));
        }
        return amount.get().held(of.value(), text, bare).map(held -> new Value(text, amount.get(), held));
    }

    private Answer<List<Value>> values(List<String> told) {
        List<Value> values = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        for (String text : told) {
            Answer<Value> value = value(text);
            findings.addAll(value.findings());
            if (value instanceof Answer.Of<Value> of) {
                values.add(of.value());
            }
        }
        return findings.isEmpty() ? Answer.of(values) : Answer.refused(findings);
    }

    private Answer<Varied> between(String word, List<String> told) {
        if (told.size() == 1) {
            if (about.isEmpty()) {
                return refused(
                        "has one figure, and what it lies about is not given",
                        "give " + field.path() + ", or write both figures: " + example(word));
            }
            return value(about.get()).then(middle -> spread(word, middle, told.get(0)));
        }
        if (told.size() != 2) {
            return refused("has " + told.size() + " figures", "write two with a ; between: " + example(word));
        }
        return value(told.get(0))
                .then(first -> word.equals("normal")
                        ? spread(word, first, told.get(1))
                        : value(told.get(1)).then(second -> uniform(first.amount(), first.held(), second.held())));
    }

    /** About a middle; the second figure is a size, which the field's own range does not judge. */
    private Answer<Varied> spread(String word, Value middle, String size) {
        if (Double.isNaN(middle.held())) {
            return refused("is about a word, " + middle.text(), "write list, and the words that it may be");
        }
        Answer<Double> read = middle.amount().read(size, bare);
        if (!(read instanceof Answer.Of<Double> of)) {
            return again(read.findings(), size);
        }
        double half = of.value();
        if (!(half > 0)) {
            return refused("spreads by " + size, "write a size over 0");
        }
        return word.equals("normal")
                ? varied(new Law.Normal(middle.held(), half), middle.amount())
                : uniform(middle.amount(), middle.held() - half, middle.held() + half);
    }

    private Answer<Varied> uniform(Amount amount, double low, double high) {
        return low < high
                ? varied(new Law.Uniform(low, high), amount)
                : refused("does not rise from its first figure to its second", "write the lesser figure first");
    }

    private Answer<Varied> range(String told) {
        String[] ends = told.split("\\s+(?:to|step)\\s+");
        if (ends.length != 3) {
            return refused("is not a range with a step", "write such as " + example("range"));
        }
        return value(ends[0])
                .then(from -> value(ends[1])
                        .then(to -> from.amount().read(ends[2], bare).then(step -> steps(from, to.held(), step))));
    }

    private Answer<Varied> steps(Value from, double to, double step) {
        double count = Math.floor((to - from.held()) / step + 1e-9) + 1;
        if (!(step > 0) || !(count >= 2) || count > MOST_STEPS) {
            return refused(
                    "makes %.0f values".formatted(count), "choose ends and step that make from 2 to " + MOST_STEPS);
        }
        List<Double> values = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            // 0.3 and not 0.30000000000000004
            values.add(Rounding.decimal(from.held() + i * step).doubleValue());
        }
        return varied(new Law.Choices(values), from.amount());
    }

    private Answer<Varied> list(List<Value> values) {
        if (values.stream().map(Value::text).distinct().count() != values.size() || values.size() > MOST_STEPS) {
            return refused("has the same value twice, or over " + MOST_STEPS, "leave out what stands twice");
        }
        boolean words = values.stream().anyMatch(value -> Double.isNaN(value.held()));
        List<Double> held = new ArrayList<>();
        for (int i = 0; i < values.size(); i++) {
            held.add(words ? i : values.get(i).held());
        }
        if (held.stream().distinct().count() != held.size()) {
            return refused("has the same value twice", "leave out what stands twice");
        }
        Amount amount = words ? Amount.NUMBER : values.get(0).amount();
        List<String> texts = values.stream().map(Value::text).toList();
        return Answer.of(new Varied(field.path(), typed, new Law.Choices(held), amount, texts, words));
    }

    private Answer<Varied> measured(List<Value> values) {
        if (values.size() < FEWEST_READINGS || values.stream().anyMatch(value -> Double.isNaN(value.held()))) {
            return refused(
                    "has too few readings, or words among them", "write at least " + FEWEST_READINGS + " readings");
        }
        return varied(
                new Law.Readings(values.stream().map(Value::held).toList()),
                values.get(0).amount());
    }

    private Answer<Varied> varied(Law law, Amount amount) {
        return Answer.of(new Varied(field.path(), typed, law, amount, List.of(), false));
    }

    private <T> Answer<T> refused(String why, String mend) {
        return Answer.refused(new Finding("vary." + field.path(), typed, why, mend));
    }

    private <T> Answer<T> again(List<Finding> findings, String text) {
        return Answer.refused(findings.stream()
                .map(found -> new Finding("vary." + field.path(), text, found.why(), found.mend()))
                .toList());
    }
}
