// SPDX-License-Identifier: Apache-2.0
package landfall.cards.spread;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import landfall.cards.answer.Document;
import landfall.cards.ask.GrindAsk;
import landfall.cards.ask.Question;
import landfall.cards.form.Entries;
import landfall.cards.form.Field;
import landfall.cards.form.Nearest;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.quantity.UnitSystem;
import landfall.spread.Plan;
import landfall.spread.Within;

/** Judges a wish: everything that is wrong with it at once. */
final class SpreadJudge {
    /** What is set on a fixture, and where the set-up says what it should be. */
    private static final Map<String, String> SET = Map.of(
            GrindAsk.SWIVEL.path(), "setting.swivel",
            GrindAsk.AXIAL.path(), "setting.axial",
            GrindAsk.RADIAL.path(), "setting.radial");

    private static final int NEAREST = 3;

    private final SpreadWish wish;
    private final Question question;
    private final UnitSystem bare;
    private final List<Finding> findings = new ArrayList<>();
    private final Map<String, String> given;
    private final Map<String, Varied> varied = new LinkedHashMap<>();

    private SpreadJudge(SpreadWish wish, Question question) {
        this.wish = wish;
        this.question = question;
        this.bare = GrindAsk.bare(wish.given());
        this.given = new LinkedHashMap<>(wish.given());
        wish.vary().keySet().forEach(path -> varied.put(path, null));
    }

    static Answer<SpreadSetup> judge(SpreadWish wish) {
        Optional<Question> question = SpreadFields.question(wish.question());
        if (question.isEmpty()) {
            return Answer.refused(new Finding(
                    "question",
                    wish.question(),
                    "is not a question that can be asked of many set-ups",
                    "write one of " + String.join(", ", SpreadFields.nouns())));
        }
        return new SpreadJudge(wish, question.get()).setup();
    }

    private Answer<SpreadSetup> setup() {
        Answer<Entries> numbers = SpreadFields.FORM.judge(wish.numbers(), bare);
        findings.addAll(numbers.findings());
        needed();
        laws(false);
        Optional<Document> base = answer();
        base.ifPresent(this::hold);
        laws(true);
        Optional<Document> nominal = findings.isEmpty() ? answer() : base;
        List<Watched> watched = nominal.map(this::watched).orElse(List.of());
        if (!findings.isEmpty() || nominal.isEmpty()) {
            return Answer.refused(findings.stream().distinct().toList());
        }
        List<Varied> laws = List.copyOf(varied.values());
        return Answer.of(
                new SpreadSetup(wish, still(), nominal.get(), laws, watched, plan(numbers.orThrow(), laws, watched)));
    }

    private void needed() {
        if (wish.vary().isEmpty()) {
            findings.add(new Finding(
                    "vary",
                    "",
                    "is needed: the field that varies, and how",
                    "write a field of " + question.noun() + " and its law, such as normal 9 deg; 0.2 deg"));
        }
        if (wish.watch().isEmpty()) {
            findings.add(new Finding(
                    "watch",
                    "",
                    "is needed: the result that is looked at",
                    "write its name in the answer of " + question.noun() + ", with its limits where it has any"));
        }
    }

    /** @param about whether those are read that lie about what is given, or the others */
    private void laws(boolean about) {
        wish.vary().forEach((path, law) -> {
            if (LawText.isAbout(law) == about) {
                Optional<Field<?>> field = question.form().field(path);
                if (field.isEmpty()) {
                    findings.add(new Finding(
                            "vary." + path,
                            law,
                            "is not a field of " + question.noun(),
                            "write " + Nearest.of(path, question.form().paths()) + ", the nearest"));
                } else {
                    Optional<String> middle =
                            Optional.ofNullable(given.get(path)).filter(text -> !text.isBlank());
                    Answer<Varied> read = new LawText(field.get(), law, middle, bare).read();
                    findings.addAll(read.findings());
                    read.map(one -> varied.put(path, one));
                }
            }
        });
    }

    /** What is given, with the middle of everything that varies. */
    private Map<String, String> middle() {
        Map<String, String> typed = new LinkedHashMap<>(given);
        varied.forEach((path, one) -> {
            if (one != null) {
                typed.put(path, one.text(one.law().middle()));
            }
        });
        return typed;
    }

    private Optional<Document> answer() {
        Answer<Document> answer = question.answer(middle());
        answer.findings().stream()
                .filter(found -> wish.vary().keySet().stream().noneMatch(path -> lacks(path, found)))
                .forEach(findings::add);
        return answer instanceof Answer.Of<Document> of ? Optional.of(of.value()) : Optional.empty();
    }

    /** A field whose law could not be read is no second finding. */
    private boolean lacks(String path, Finding found) {
        return found.field().equals(path) && varied.get(path) == null;
    }

    /**
     * What is set on a fixture stays set while the tap and all else vary: where the result is what comes out of it, the
     * settings that do not vary are those of the set-up with nothing off.
     */
    private void hold(Document base) {
        Set<String> moved =
                wish.vary().keySet().stream().filter(SET::containsKey).collect(Collectors.toSet());
        boolean isForwards = wish.watch().keySet().stream().anyMatch(path -> path.startsWith("asSet."));
        if (!question.noun().equals("grind") || (moved.isEmpty() && !isForwards)) {
            return;
        }
        SET.forEach((path, at) -> Watched.in(base, at)
                .ifPresent(found -> given.putIfAbsent(
                        path,
                        (found.unit() == Amount.ANGLE.unit() ? Amount.ANGLE : Amount.LENGTH).text(found.value()))));
    }

    /** What is given, without what varies. */
    private Map<String, String> still() {
        Map<String, String> typed = new LinkedHashMap<>(given);
        varied.keySet().forEach(typed::remove);
        return typed;
    }

    private List<Watched> watched(Document nominal) {
        List<Watched> all = new ArrayList<>();
        wish.watch().forEach((path, typed) -> {
            Optional<Watched.Found> found = Watched.in(nominal, path);
            if (found.isEmpty()) {
                List<String> paths = WatchPaths.of(nominal);
                findings.add(new Finding(
                        "watch." + path,
                        typed,
                        "is not a figure in the answer of " + question.noun(),
                        "write one such as " + String.join(", ", Nearest.of(path, paths, NEAREST))));
                return;
            }
            Answer<Within> limits = new LimitText(path, typed, found.get().unit(), nominal.units()).read();
            findings.addAll(limits.findings());
            limits.map(within -> all.add(
                    new Watched(path, typed, found.get().unit(), found.get().value(), within)));
        });
        return all;
    }

    private static Plan plan(Entries numbers, List<Varied> laws, List<Watched> watched) {
        int samples = numbers.get(SpreadFields.SAMPLES).orElse(SpreadFields.USUAL_SAMPLES);
        int seed = numbers.get(SpreadFields.SEED).orElse(SpreadFields.USUAL_SEED);
        int rows = Math.min(samples, numbers.get(SpreadFields.ROWS).orElse(SpreadFields.USUAL_ROWS));
        return new Plan(
                seed,
                samples,
                rows,
                laws.stream().map(one -> Objects.requireNonNull(one).law()).toList(),
                watched.stream().map(Watched::within).toList());
    }
}
