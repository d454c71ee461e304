// SPDX-License-Identifier: Apache-2.0
package landfall.app.figure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import landfall.working.Rule;
import landfall.working.Step;
import org.jspecify.annotations.Nullable;

/**
 * The steps of an answer, ready to be read: each formula as printed, then with the numbers put in. A symbol may be
 * written again, such as the angle of each dial target; a formula takes what was last written before it.
 */
public final class WorkingView {
    private static final Pattern SYMBOL = Pattern.compile("[\\p{L}_][\\p{L}\\p{N}_']*");

    private final List<Step> steps;

    public WorkingView(List<Step> working) {
        steps = List.copyOf(working);
    }

    /** All steps in order. */
    public List<StepView> all() {
        Map<String, Step> before = new LinkedHashMap<>();
        List<StepView> views = new ArrayList<>();
        for (Step step : steps) {
            views.add(view(step, before));
            before.put(step.symbol(), step);
        }
        return views;
    }

    /** The step that gave a figure, then the steps that its formula names; nothing when it left no step. */
    public List<StepView> of(Rule rule, double value) {
        Map<String, Step> before = new LinkedHashMap<>();
        for (Step step : steps) {
            if (step.rule().equals(rule) && step.value() == value) {
                return withInputs(step, before);
            }
            before.put(step.symbol(), step);
        }
        // A figure may be held in another unit than its formula is written in.
        Step last = before.get(rule.symbol());
        return last == null ? List.of() : withInputs(last, before);
    }

    private List<StepView> withInputs(Step step, Map<String, Step> before) {
        List<StepView> views = new ArrayList<>();
        views.add(view(step, before));
        for (String symbol : inputs(step, before)) {
            views.add(view(before.get(symbol), Map.of()));
        }
        return views;
    }

    private static StepView view(@Nullable Step step, Map<String, Step> before) {
        if (step == null) {
            throw new IllegalStateException("a formula names a step that is not there");
        }
        Rule rule = step.rule();
        return new StepView(
                rule.symbol(),
                rule.formula(),
                rule.isComputed() ? withNumbers(step, before) : "",
                Digits.plain(step.value()) + unit(rule.unit()),
                rule.means(),
                rule.source().words(),
                rule.trust().words());
    }

    private static String unit(String unit) {
        return switch (unit) {
            case "1" -> "";
            case "deg" -> "°";
            default -> " " + unit;
        };
    }

    private static Set<String> inputs(Step step, Map<String, Step> before) {
        Set<String> symbols = new LinkedHashSet<>();
        if (step.rule().isComputed()) {
            Matcher matcher = SYMBOL.matcher(step.rule().formula());
            while (matcher.find()) {
                if (before.containsKey(matcher.group()) && !matcher.group().equals(step.symbol())) {
                    symbols.add(matcher.group());
                }
            }
        }
        return symbols;
    }

    private static String withNumbers(Step step, Map<String, Step> before) {
        return SYMBOL.matcher(step.rule().formula()).replaceAll(match -> {
            Step input = before.get(match.group());
            return Matcher.quoteReplacement(input == null ? match.group() : number(input.value()));
        });
    }

    private static String number(double value) {
        String digits = Digits.plain(value);
        return value < 0 ? "(" + digits + ")" : digits;
    }
}
