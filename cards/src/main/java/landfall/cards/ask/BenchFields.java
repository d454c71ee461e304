// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import landfall.cards.form.Entries;
import landfall.cards.form.Field;
import landfall.cards.form.Kind;
import landfall.cards.form.Kinds;
import landfall.cards.form.Quantities;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.fault.OutOfRange;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.quantity.Measured;
import landfall.tap.mark.TapMark;
import landfall.verdict.OnBench;
import org.jspecify.annotations.Nullable;

/** What lies on the bench: a tap, a hole or a screw, and what was found on it beside its pitch diameter. */
final class BenchFields {
    /** What was measured. */
    enum Part {
        TAP,
        HOLE,
        SCREW
    }

    private static final double GREATEST_TURNS = 200;
    private static final Kind<TapMark> MARK = new Kind<>(
            "a mark: H3, L2, D5, ISO 2, 6H, cut thread, +.0017",
            (text, bare) -> mark(text),
            Kinds.ordered("type", "string", "minLength", 1));

    static final Field<Part> PART = Field.optional(
            "part", Kinds.<Part>choice(Kinds.ordered("tap", Part.TAP, "hole", Part.HOLE, "screw", Part.SCREW)), "tap");
    static final Field<TapMark> MARKING = Field.optional("marking", MARK, "H3").worded("gauge.marking");
    static final Field<Length> TAP_MIN = GaugeFields.length("tap-min", "0.2185 in");
    static final Field<Length> TAP_MAX = GaugeFields.length("tap-max", "0.2190 in");
    static final Field<Length> RUN_OUT =
            Field.optional("run-out", Quantities.length(0, 2), "0.02 mm").worded("gauge.run-out");
    static final Field<Integer> RINGS =
            Field.optional("rings", Kinds.count(0, 3), "1").worded("gauge.rings");
    static final Field<Length> PIN = GaugeFields.length("pin", "0.2010 in");
    static final Field<Boolean> GO = Field.optional("go", Kinds.YES_NO, "yes");
    static final Field<Double> GO_TURNS = Field.optional("go-turns", Quantities.number(0, GREATEST_TURNS), "9.5");
    static final Field<Double> NOT_GO_TURNS =
            Field.optional("not-go-turns", Quantities.number(0, GREATEST_TURNS), "1.5");
    static final Field<Length> DEPTH = GaugeFields.length("depth", "12 mm").worded("gauge.depth");
    static final Field<Length> STAND_OFF = Field.optional("standoff", Quantities.length(-50, 50), "1.5 mm");

    private BenchFields() {}

    private static Answer<TapMark> mark(String text) {
        try {
            return TapMark.read(text)
                    .map(Answer::of)
                    .orElseGet(() -> Answer.refused(new Finding(
                            "",
                            text,
                            "is no mark that is known here",
                            "write H3, L2, D5, ISO 2, 6H, cut thread or +.0017; for an X position"
                                    + " or an S in a circle give"
                                    + " tap-min and tap-max")));
        } catch (OutOfRange e) {
            return Answer.refused(e.finding());
        }
    }

    /** What only makes sense together, or only apart. */
    static List<Finding> together(Entries entries) {
        List<Finding> findings = new ArrayList<>();
        boolean own = isGiven(entries, TAP_MIN) || isGiven(entries, TAP_MAX);
        if (own && isGiven(entries, MARKING)) {
            findings.add(new Finding(
                    "marking",
                    entries.need(MARKING).words(),
                    "cannot stand beside tap-min or tap-max: each gives the tap's limits",
                    "leave the mark or the limits out"));
        }
        if (isGiven(entries, TAP_MIN)
                && isGiven(entries, TAP_MAX)
                && entries.need(TAP_MIN).mm() > entries.need(TAP_MAX).mm()) {
            findings.add(new Finding(
                    "tap-max", entries.need(TAP_MAX).words(), "is under tap-min", "look at which is the greater"));
        }
        List<Field<?>> ofTap = List.of(MARKING, TAP_MIN, TAP_MAX, RUN_OUT, RINGS, GaugeFields.FLUTES);
        List<Field<?>> ofHole = List.of(PIN, GO, GO_TURNS, NOT_GO_TURNS, DEPTH);
        Part part = part(entries);
        if (part != Part.TAP) {
            strange(entries, ofTap, "a tap", findings);
        }
        if (part != Part.HOLE) {
            strange(entries, ofHole, "a hole", findings);
        }
        if (isGiven(entries, GaugeFields.CREST) && (part == null || part == Part.HOLE)) {
            findings.add(new Finding(
                    "crest",
                    entries.need(GaugeFields.CREST).words(),
                    "is measured on a tap or a screw, and none lies on the bench",
                    "write part tap or part screw, or leave it out"));
        }
        return findings;
    }

    private static void strange(Entries entries, List<Field<?>> fields, String of, List<Finding> findings) {
        fields.stream()
                .filter(field -> isGiven(entries, field))
                .forEach(field -> findings.add(new Finding(
                        field.path(),
                        "given",
                        "is found on " + of + ", but another part lies on the bench",
                        "leave it out, or say what part it is")));
    }

    private static boolean isGiven(Entries entries, Field<?> field) {
        return entries.get(field).isPresent();
    }

    /** As told; else by what was found, which only one of them has. */
    private static @Nullable Part part(Entries entries) {
        if (isGiven(entries, PART)) {
            return entries.need(PART);
        }
        if (Stream.of(PIN, GO, GO_TURNS, NOT_GO_TURNS).anyMatch(field -> isGiven(entries, field))) {
            return Part.HOLE;
        }
        boolean tap = Stream.of(MARKING, TAP_MIN, TAP_MAX, RUN_OUT, RINGS, GaugeFields.FLUTES)
                .anyMatch(field -> isGiven(entries, field));
        return tap ? Part.TAP : null;
    }

    static OnBench bench(Entries entries) {
        Part part = part(entries);
        if (part == null) {
            return new OnBench.Nothing();
        }
        Measured crest = measured(entries, GaugeFields.CREST);
        return switch (part) {
            case TAP ->
                new OnBench.ATap(
                        tapMark(entries),
                        crest,
                        entries.get(RUN_OUT).orElse(null),
                        entries.get(RINGS).orElse(null));
            case HOLE ->
                new OnBench.AHole(
                        measured(entries, PIN),
                        new OnBench.Plugs(
                                entries.get(GO).orElse(null),
                                entries.get(GO_TURNS).orElse(null),
                                entries.get(NOT_GO_TURNS).orElse(null),
                                entries.get(DEPTH).orElse(null)));
            case SCREW -> new OnBench.AScrew(crest);
        };
    }

    private static @Nullable Measured measured(Entries entries, Field<Length> field) {
        return entries.get(field)
                .map(value -> new Measured(value, GaugeFields.ofCrest(entries)))
                .orElse(null);
    }

    private static @Nullable TapMark tapMark(Entries entries) {
        Optional<Length> min = entries.get(TAP_MIN);
        Optional<Length> max = entries.get(TAP_MAX);
        return min.isPresent() || max.isPresent()
                ? new TapMark.Own(new Limits(min.orElse(null), max.orElse(null)))
                : entries.get(MARKING).orElse(null);
    }
}
