// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import landfall.cards.form.Entries;
import landfall.cards.form.Field;
import landfall.cards.form.Kinds;
import landfall.cards.form.Quantities;
import landfall.fault.Finding;
import landfall.gauge.GaugeWish;
import landfall.gauge.ReadingUncertainty;
import landfall.gauge.VAnvil;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import org.jspecify.annotations.Nullable;

/** What is read over wires or in a V-anvil, and how well. */
final class GaugeFields {
    private static final double GREATEST_MM = 500;
    private static final double POOREST_MM = 2;
    static final Field<Length> WIRE = length("wire", "0.0289 in");
    static final Field<Length> PITCH_DIAMETER = length("pitch-diameter", "0.2190 in");
    static final Field<Length> OVER = length("over", "0.2625 in");
    static final Field<Integer> FLUTES = Field.optional("flutes", Kinds.count(2, 16), "3");
    static final Field<Length> READING = length("reading", "10.2 mm");
    static final Field<Length> HEIGHT = length("height", "15.3 mm");
    static final Field<Length> CREST = length("crest", "10.05 mm");
    static final Field<Boolean> BEARING =
            Field.optional("bearing", Kinds.<Boolean>choice(Kinds.ordered("crests", false, "wires", true)), "crests");
    static final Field<Length> UNCERTAINTY = within("uncertainty", "0.004 mm").worded("gauge.uncertainty");
    static final Field<Length> WIRE_UNCERTAINTY = within("wire-uncertainty", "0.0005 mm");
    static final Field<Length> CREST_UNCERTAINTY = within("crest-uncertainty", "0.005 mm");
    static final Field<Angle> ANGLE_UNCERTAINTY =
            Field.optional("angle-uncertainty", Quantities.angle(0, 10), "0.25 deg");

    private GaugeFields() {}

    static Field<Length> length(String path, String example) {
        return Field.optional(path, Quantities.length(0, GREATEST_MM), example);
    }

    private static Field<Length> within(String path, String example) {
        return Field.optional(path, Quantities.length(0, POOREST_MM), example);
    }

    /** What only makes sense together, or only apart. */
    static List<Finding> together(Entries entries) {
        List<Finding> findings = new ArrayList<>();
        if (entries.get(OVER).isPresent() && entries.get(PITCH_DIAMETER).isPresent()) {
            findings.add(new Finding(
                    "over",
                    entries.need(OVER).words(),
                    "cannot stand beside pitch-diameter: each gives the other",
                    "leave one of the two out"));
        }
        boolean reading = entries.get(READING).isPresent();
        boolean height = entries.get(HEIGHT).isPresent();
        if (reading && height) {
            findings.add(new Finding(
                    "height",
                    entries.need(HEIGHT).words(),
                    "cannot stand beside reading: one scale or the other",
                    "give reading for a scale in diameters, height for a plain one"));
        }
        boolean flutes = entries.get(FLUTES).isPresent();
        boolean bears = entries.get(CREST).isPresent() || onWires(entries);
        if ((reading || height || flutes) && !((reading || height) && flutes && bears)) {
            findings.add(new Finding(
                    "reading",
                    "flutes, reading or height, and crest: not all of them",
                    "must be given together for a tap in a V-anvil",
                    "give flutes, reading and crest (or bearing wires instead of crest), or none of them"));
        }
        return findings;
    }

    private static boolean onWires(Entries entries) {
        return entries.get(BEARING).orElse(false);
    }

    static GaugeWish wish(Entries entries) {
        return new GaugeWish(
                entries.get(WIRE).orElse(null),
                entries.get(PITCH_DIAMETER).orElse(null),
                entries.get(OVER).orElse(null),
                anvil(entries));
    }

    private static GaugeWish.@Nullable InVAnvil anvil(Entries entries) {
        if (entries.get(FLUTES).isEmpty()) {
            return null;
        }
        VAnvil.Reading reading = entries.get(READING)
                .map(scale -> new VAnvil.Reading(scale, false))
                .orElseGet(() -> new VAnvil.Reading(entries.need(HEIGHT), true));
        return new GaugeWish.InVAnvil(entries.need(FLUTES), reading, onWires(entries) ? null : entries.need(CREST));
    }

    /** As told, with what a shop may take for what was not; null when nothing was told. */
    static @Nullable ReadingUncertainty uncertainty(Entries entries) {
        boolean told = Stream.of(UNCERTAINTY, WIRE_UNCERTAINTY, CREST_UNCERTAINTY, ANGLE_UNCERTAINTY)
                .anyMatch(field -> entries.get(field).isPresent());
        if (!told) {
            return null;
        }
        ReadingUncertainty usual = ReadingUncertainty.USUAL;
        return new ReadingUncertainty(
                entries.get(UNCERTAINTY).orElse(usual.reading()),
                entries.get(WIRE_UNCERTAINTY).orElse(usual.wire()),
                entries.get(CREST_UNCERTAINTY).orElse(usual.crest()),
                entries.get(ANGLE_UNCERTAINTY).orElse(usual.flank()),
                entries.get(UNCERTAINTY).isEmpty());
    }

    /** Of the diameter over the crests, or of a pin: that of the crest, else of the reading, else the usual one. */
    static Length ofCrest(Entries entries) {
        return entries.get(CREST_UNCERTAINTY)
                .or(() -> entries.get(UNCERTAINTY))
                .orElse(ReadingUncertainty.USUAL.crest());
    }
}
