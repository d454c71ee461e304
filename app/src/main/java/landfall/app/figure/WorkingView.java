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

/** The steps of an answer, ready to be read: each formula as printed, then with the numbers put in. */
public final class WorkingView {
    private static final Pattern SYMBOL = Pattern.compile("[\\p{L}_][\\p{L}\\p{N}_']*");

    private final Map<String, Step> steps = new LinkedHashMap<>();

    public WorkingView(List<Step> working) {
        working.forEach(step -> steps.put(step.symbol(), step));
    }

    /** All steps in order. */
    public List<StepView> all() {
        return steps.values().stream().map(this::view).toList();
    }

    /** The step of a rule, then the steps that its formula names; nothing when the rule left no step. */
    public List<StepView> of(Rule rule) {
        Step step = steps.get(rule.symbol());
        if (step == null) {
            return List.of();
        }
        List<StepView> views = new ArrayList<>();
        views.add(view(step));
        inputs(step).forEach(symbol -> views.add(view(steps.get(symbol))));
        return views;
    }

    private StepView view(Step step) {
        Rule rule = step.rule();
        String result = Digits.plain(step.value()) + (rule.unit().equals("1") ? "" : " " + rule.unit());
        return new StepView(
                rule.symbol(),
                rule.formula(),
                rule.isComputed() ? withNumbers(step) : "",
                result,
                rule.means(),
                rule.source().words(),
                rule.trust().words());
    }

    private Set<String> inputs(Step step) {
        Set<String> symbols = new LinkedHashSet<>();
        if (step.rule().isComputed()) {
            Matcher matcher = SYMBOL.matcher(step.rule().formula());
            while (matcher.find()) {
                if (isInput(matcher.group(), step)) {
                    symbols.add(matcher.group());
                }
            }
        }
        return symbols;
    }

    private boolean isInput(String symbol, Step step) {
        return steps.containsKey(symbol) && !symbol.equals(step.symbol());
    }

    private String withNumbers(Step step) {
        return SYMBOL.matcher(step.rule().formula()).replaceAll(match -> {
            String symbol = match.group();
            return Matcher.quoteReplacement(isInput(symbol, step) ? number(steps.get(symbol).value()) : symbol);
        });
    }

    private static String number(double value) {
        String digits = Digits.plain(value);
        return value < 0 ? "(" + digits + ")" : digits;
    }
}
