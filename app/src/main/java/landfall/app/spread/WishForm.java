// SPDX-License-Identifier: Apache-2.0
package landfall.app.spread;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import landfall.app.shell.Typed;
import landfall.cards.answer.Document;
import landfall.cards.ask.Question;
import landfall.cards.form.Field;
import landfall.cards.spread.SpreadFields;
import landfall.cards.spread.SpreadWish;
import landfall.cards.spread.WatchPaths;
import landfall.fault.Answer;

/**
 * What a person wants to vary and to watch, as the page's address tells it: {@code question}, the question's own
 * fields, {@code vary.1.field} with {@code vary.1.law}, {@code watch.1.result} with {@code watch.1.limits}, and the
 * numbers.
 *
 * @param question its noun, empty before one was chosen
 */
public record WishForm(
        String question, Map<String, String> given, List<Line> vary, List<Line> watch, Map<String, String> numbers) {
    public static final String PATH = "/what-if";
    public static final String QUESTION = "question";

    private static final String VARY = "vary";
    private static final String WATCH = "watch";
    private static final int MOST = 8;
    private static final int SPARE = 2;

    /** What varies and by which law, or what is watched and within which limits. */
    public record Line(String what, String how) {
        boolean isBlank() {
            return what.isEmpty() && how.isEmpty();
        }
    }

    public WishForm {
        given = Collections.unmodifiableMap(new LinkedHashMap<>(given));
        vary = List.copyOf(vary);
        watch = List.copyOf(watch);
        numbers = Map.copyOf(numbers);
    }

    static WishForm of(Map<String, String> typed) {
        Map<String, String> rest = new LinkedHashMap<>(typed);
        String question = Optional.ofNullable(rest.remove(QUESTION)).orElse("");
        List<Line> vary = lines(rest, VARY, "field", "law");
        List<Line> watch = lines(rest, WATCH, "result", "limits");
        Map<String, String> numbers = new LinkedHashMap<>();
        for (String path : SpreadFields.FORM.paths()) {
            Optional.ofNullable(rest.remove(path)).ifPresent(text -> numbers.put(path, text));
        }
        WishForm form = new WishForm(question, rest, vary, watch, numbers);
        return vary.isEmpty() && watch.isEmpty() ? form.begun() : form;
    }

    private static List<Line> lines(Map<String, String> typed, String name, String first, String second) {
        List<Line> lines = new ArrayList<>();
        for (int at = 1; at <= MOST; at++) {
            String what = Optional.ofNullable(typed.remove(name + "." + at + "." + first))
                    .orElse("");
            String how = Optional.ofNullable(typed.remove(name + "." + at + "." + second))
                    .orElse("");
            Line line = new Line(what, how);
            if (!line.isBlank()) {
                lines.add(line);
            }
        }
        return lines;
    }

    /** What somebody would look at first, where nothing was told; the figures are there to be changed. */
    private WishForm begun() {
        return switch (question) {
            case "grind" -> with(rises(), List.of(new Line("asSet.working", "4 deg to 7 deg")));
            case "hole" -> with(List.of(new Line("share", "uniform 55% ; 80%")), List.of(new Line("drill.share", "")));
            case "cut" ->
                with(List.of(new Line("hole", "normal 0.03 mm")), List.of(new Line("margin.low", "1.5 or more")));
            default -> this;
        };
    }

    /** The swivel, and the rises that the fixture is set to. */
    private List<Line> rises() {
        List<Line> lines = new ArrayList<>(List.of(new Line("swivel", "normal 0.25 deg")));
        for (String rise : List.of("radial", "axial")) {
            boolean isSet = answer().stream()
                    .flatMap(document -> document.figures().stream())
                    .anyMatch(shown -> shown.path().equals("grind.setting." + rise)
                            && shown.point().value() > 0);
            if (isSet) {
                lines.add(new Line(rise + "-rise", "normal 0.01 mm"));
            }
        }
        return lines;
    }

    private WishForm with(List<Line> varied, List<Line> watched) {
        return new WishForm(question, given, varied, watched, numbers);
    }

    Optional<Question> asked() {
        return SpreadFields.question(question);
    }

    SpreadWish wish() {
        Map<String, String> laws = new LinkedHashMap<>();
        vary.forEach(line -> laws.put(line.what(), line.how()));
        Map<String, String> limits = new LinkedHashMap<>();
        watch.forEach(line -> limits.put(line.what(), line.how()));
        return new SpreadWish(question, given, laws, limits, numbers);
    }

    /** Lines to fill in: those that were, and some more. */
    static List<Line> spare(List<Line> lines) {
        List<Line> all = new ArrayList<>(lines);
        while (all.size() < MOST && all.size() < lines.size() + SPARE) {
            all.add(new Line("", ""));
        }
        return all;
    }

    /** Fields that can vary: all that the question has, those given first. */
    List<String> fields() {
        List<String> all = new ArrayList<>(given.keySet());
        asked().ifPresent(question -> question.form().fields().stream()
                .map(Field::path)
                .filter(path -> !all.contains(path))
                .forEach(all::add));
        return all;
    }

    /** Figures that can be watched; none while what is given is not answered. */
    List<String> results() {
        return answer().map(WatchPaths::of).orElse(List.of());
    }

    private Optional<Document> answer() {
        return asked().map(question -> question.answer(given))
                .flatMap(answer ->
                        answer instanceof Answer.Of<Document> of ? Optional.of(of.value()) : Optional.empty());
    }

    /** The address of the form as it is filled in. */
    String address() {
        Map<String, String> all = new LinkedHashMap<>();
        all.put(QUESTION, question);
        put(all, VARY, vary, "field", "law");
        put(all, WATCH, watch, "result", "limits");
        all.putAll(numbers);
        all.putAll(given);
        return Typed.address(PATH, all);
    }

    private static void put(Map<String, String> all, String name, List<Line> lines, String first, String second) {
        for (int at = 1; at <= lines.size(); at++) {
            all.put(name + "." + at + "." + first, lines.get(at - 1).what());
            all.put(name + "." + at + "." + second, lines.get(at - 1).how());
        }
    }

    static WishForm of(SpreadWish wish) {
        return new WishForm(wish.question(), wish.given(), lines(wish.vary()), lines(wish.watch()), wish.numbers());
    }

    private static List<Line> lines(Map<String, String> texts) {
        return texts.entrySet().stream()
                .map(entry -> new Line(entry.getKey(), entry.getValue()))
                .toList();
    }
}
