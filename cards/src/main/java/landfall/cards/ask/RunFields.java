// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import landfall.cards.entry.AngleEntry;
import landfall.cards.form.Entries;
import landfall.cards.form.Field;
import landfall.cards.form.Form;
import landfall.cards.form.Kind;
import landfall.cards.form.Kinds;
import landfall.cards.form.Quantities;
import landfall.envelope.ChamferGround;
import landfall.envelope.Errors;
import landfall.envelope.WheelFace;
import landfall.fault.Answer;
import landfall.fault.Caution;
import landfall.fault.Finding;
import landfall.grind.GrindSetup;
import landfall.quantity.Angle;
import landfall.quantity.Length;

/** What is not as it should be in chucking, cam and wheel, as far as a person has measured it. All may be left out. */
final class RunFields {
    private static final Kind<List<Angle>> ANGLES = new Kind<>(
            "one angle for each lobe: 0.1 deg, 0, -0.05 deg",
            (text, bare) -> angles(text),
            Kinds.ordered("type", "string", "description", "one angle for each lobe: 0.1 deg, 0, -0.05 deg"));

    static final Field<Length> RUN_OUT =
            Field.optional("run-out", Quantities.length(0, 1), "0.02 mm").worded("grind.run-out");
    static final Field<Angle> HIGH = Field.optional("run-out-high", Quantities.angle(-360, 360), "90 deg");
    static final Field<List<Angle>> LOBES = Field.optional("lobe-errors", ANGLES, "0.1 deg, 0, -0.05 deg");
    static final Field<Length> HEIGHT = Field.optional("wheel-height", Quantities.length(-50, 50), "1 mm");
    static final Field<Angle> FACE = Field.optional("wheel-face", Quantities.angle(-5, 5), "0.25 deg");
    static final Field<Length> HOLLOW = Field.optional("wheel-hollow", Quantities.length(-0.5, 0.5), "0.01 mm");
    static final Field<Length> WORN = Field.optional("wheel-wear", Quantities.length(0, 0.5), "0.002 mm");

    static final Form FORM = Form.of("run", RUN_OUT, HIGH, LOBES, HEIGHT, FACE, HOLLOW, WORN);

    private static final String LEAST_ANGLE = "give one angle for each lobe, in the order of the lands";

    private RunFields() {}

    private static Answer<List<Angle>> angles(String text) {
        List<Angle> all = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        for (String part : text.strip().split("\\s*;\\s*|,\\s+|(?<=deg),")) {
            Answer<Angle> one = AngleEntry.read(part);
            findings.addAll(one.findings());
            if (one instanceof Answer.Of<Angle> of) {
                all.add(of.value());
                if (Math.abs(of.value().deg()) > 10) {
                    findings.add(new Finding("", part, "must be from -10 to 10 deg", LEAST_ANGLE));
                }
            }
        }
        return findings.isEmpty() ? Answer.of(all) : Answer.refused(findings);
    }

    /** The errors of a set-up, or what does not fit it. */
    static Answer<Errors> errors(Entries entries, GrindSetup setup) {
        List<Finding> findings = new ArrayList<>();
        List<Angle> lobes = entries.get(LOBES).orElse(List.of());
        int flutes = setup.tap().flutes().count();
        if (!lobes.isEmpty() && lobes.size() != flutes) {
            findings.add(new Finding(
                    LOBES.path(),
                    entries.typed(LOBES),
                    "must be %d angles, one a lobe".formatted(flutes),
                    LEAST_ANGLE));
        }
        Length height = entries.get(HEIGHT).orElse(Length.ZERO);
        double most = setup.fixture().wheel().radius().mm() / 4;
        if (Math.abs(height.mm()) > most) {
            findings.add(new Finding(
                    HEIGHT.path(),
                    entries.typed(HEIGHT),
                    "must be at most a quarter of the wheel's radius, "
                            + Length.ofMm(most).words(),
                    "measure from the height of the tap's axis to that of the wheel's"));
        }
        if (entries.has(HIGH) && !entries.has(RUN_OUT)) {
            findings.add(new Finding(
                    HIGH.path(),
                    entries.typed(HIGH),
                    "says where a run-out is high, and none is given",
                    "give run-out, as the dial swings, or leave this out"));
        }
        return findings.isEmpty()
                ? Answer.of(new Errors(
                        entries.get(RUN_OUT).orElse(Length.ZERO).times(0.5),
                        entries.get(HIGH).orElse(Angle.ZERO),
                        lobes,
                        height,
                        face(entries, setup)))
                : Answer.refused(findings);
    }

    /** A face dressed at an angle touches with the end that is larger; the other lacks what the angle is worth. */
    private static WheelFace face(Entries entries, GrindSetup setup) {
        double along = ChamferGround.lengthOf(setup).mm()
                / Math.cos(setup.motion().setting().swivel().rad());
        double lacks = along * Math.tan(entries.get(FACE).orElse(Angle.ZERO).rad());
        return new WheelFace(
                Length.ofMm(Math.max(0, lacks)),
                Length.ofMm(Math.max(0, -lacks)),
                entries.get(HOLLOW).orElse(Length.ZERO),
                entries.get(WORN).orElse(Length.ZERO));
    }

    /** What the run took for granted, because nothing was told of it. */
    static List<Caution> assumed(Entries entries) {
        Map<Field<?>, String> granted = new LinkedHashMap<>();
        granted.put(RUN_OUT, "the thread runs true to the spindle");
        granted.put(LOBES, "the lobes stand evenly round");
        granted.put(HEIGHT, "the wheel's centre is level with the tap's");
        granted.put(FACE, "its face is dressed along the chamfer");
        granted.put(HOLLOW, "the face is neither hollow nor round");
        granted.put(WORN, "the wheel does not wear from land to land");
        List<String> left = granted.entrySet().stream()
                .filter(entry -> !entries.has(entry.getKey()))
                .map(Map.Entry::getValue)
                .toList();
        List<Caution> all = new ArrayList<>();
        if (!left.isEmpty()) {
            all.add(new Caution(
                    "runAssumed",
                    "Taken for granted in the run, as nothing else was told: %s.".formatted(String.join("; ", left)),
                    "κ_run"));
        }
        if (entries.has(RUN_OUT) && !entries.has(HIGH)) {
            all.add(new Caution(
                    "highSideAssumed", "Where the run-out is high was not told: at the edge of land 1 taken.", "e_i"));
        }
        return all;
    }
}
