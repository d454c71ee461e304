// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import landfall.cards.form.Nearest;
import landfall.fault.Answer;
import landfall.fault.Finding;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/**
 * The options and words of one command, and what was written for them. Every mistake is found at once; an unknown
 * option is refused with the nearest known one.
 */
final class Options {
    private final String noun;
    private final CommandSpec spec;
    private int words;

    Options(String noun) {
        this.noun = noun;
        this.spec = CommandSpec.create().name("landfall " + noun);
        flag("json").flag("help", "-h");
    }

    /** An option with a text after it. */
    Options text(String name) {
        spec.addOption(
                OptionSpec.builder("--" + name).type(String.class).arity("1").build());
        return this;
    }

    /** An option that may be written several times, with a text after it each time. */
    Options texts(String name) {
        spec.addOption(OptionSpec.builder("--" + name)
                .type(List.class)
                .auxiliaryTypes(String.class)
                .arity("1")
                .build());
        return this;
    }

    /** An option that stands for yes by itself and may be given a text. */
    Options yes(String name) {
        spec.addOption(OptionSpec.builder("--" + name)
                .type(String.class)
                .arity("0..1")
                .fallbackValue("yes")
                .build());
        return this;
    }

    Options flag(String name, String... others) {
        List<String> names = new ArrayList<>(List.of(others));
        names.add("--" + name);
        spec.addOption(OptionSpec.builder(names.toArray(String[]::new))
                .type(boolean.class)
                .arity("0")
                .build());
        return this;
    }

    /** A word by its place: the first call takes the first word. */
    Options word(String label) {
        spec.addPositional(PositionalParamSpec.builder()
                .index(String.valueOf(words++))
                .type(String.class)
                .arity("0..1")
                .paramLabel(label)
                .build());
        return this;
    }

    /** An option whose text is one of a few. */
    Options choice(String name, List<String> texts) {
        spec.addOption(OptionSpec.builder("--" + name)
                .type(String.class)
                .arity("1")
                .completionCandidates(texts)
                .build());
        return this;
    }

    /** As the parsing library has it. */
    CommandSpec spec() {
        return spec;
    }

    /** What was written. */
    Answer<Written> read(List<String> args) {
        CommandLine line = new CommandLine(spec);
        line.setExpandAtFiles(false);
        line.setInterpolateVariables(false);
        line.setUnmatchedArgumentsAllowed(true);
        line.setUnmatchedOptionsArePositionalParams(false);
        spec.parser().collectErrors(true);
        ParseResult parsed = line.parseArgs(args.toArray(String[]::new));
        List<Finding> findings = new ArrayList<>();
        findings.addAll(unknown(parsed.unmatched()));
        parsed.errors().forEach(error -> findings.addAll(mistake(error)));
        return findings.isEmpty() ? Answer.of(new Written(parsed)) : Answer.refused(findings);
    }

    private List<Finding> unknown(List<String> unmatched) {
        List<Finding> options = unmatched.stream()
                .filter(Options::isOption)
                .map(this::unknownOption)
                .toList();
        if (!options.isEmpty()) {
            return options;
        }
        return unmatched.stream()
                .map(word -> new Finding(
                        noun,
                        word,
                        "is one word too many",
                        "leave it out, or put quotation marks round words that belong together"))
                .toList();
    }

    private Finding unknownOption(String option) {
        String name = option.replaceFirst("=.*", "");
        return new Finding(
                name,
                option,
                "is not an option of " + noun,
                "did you mean " + Nearest.of(name, names()) + "? All of them: landfall help " + noun);
    }

    private List<Finding> mistake(Exception error) {
        if (error instanceof CommandLine.MissingParameterException missing) {
            return missing.getMissing().stream()
                    .map(arg -> name(arg))
                    .map(name -> new Finding(name, "", "needs a value after it", "write " + name + " and the value"))
                    .toList();
        }
        if (error instanceof CommandLine.OverwrittenOptionException twice) {
            String name = name(twice.getOverwritten());
            return List.of(new Finding(name, "twice", "can be given once", "leave one of them out"));
        }
        if (error instanceof CommandLine.UnmatchedArgumentException) {
            return List.of();
        }
        return List.of(new Finding(noun, "", String.valueOf(error.getMessage()), "see landfall help " + noun));
    }

    private static String name(CommandLine.Model.ArgSpec arg) {
        return arg instanceof OptionSpec option ? option.longestName() : arg.paramLabel();
    }

    private static boolean isOption(String word) {
        return word.startsWith("-") && word.length() > 1;
    }

    private SortedSet<String> names() {
        return new TreeSet<>(
                spec.options().stream().map(OptionSpec::longestName).toList());
    }

    /** What a person wrote, by the names given above. */
    record Written(ParseResult parsed) {
        boolean has(String name) {
            return parsed.hasMatchedOption("--" + name);
        }

        Optional<String> text(String name) {
            return Optional.ofNullable(parsed.matchedOptionValue("--" + name, null));
        }

        List<String> texts(String name) {
            return parsed.matchedOptionValue("--" + name, List.of());
        }

        Optional<String> word(int place) {
            return Optional.ofNullable(parsed.matchedPositionalValue(place, null));
        }
    }
}
