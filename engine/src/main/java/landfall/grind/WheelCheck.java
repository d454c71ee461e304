// SPDX-License-Identifier: Apache-2.0
package landfall.grind;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import landfall.fault.Caution;
import landfall.quantity.Speed;
import landfall.tap.TapMaterial;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;
import org.jspecify.annotations.Nullable;

/**
 * The wheel for this tap: its marking explained, its surface speed, and what speaks against it.
 *
 * @param marking null when none was given or it could not be read
 * @param surface speed at the rim; null when the spindle speed was not told
 */
public record WheelCheck(
        @Nullable WheelMarking marking, @Nullable Speed surface, List<Caution> cautions) {
    private static final Source GEOMETRY = Source.of("derived", "speed at the rim");
    static final Rule DIAMETER = Rule.given("D_w", "mm", "diameter of the wheel");
    static final Rule SPINDLE = Rule.given("n_w", "rev/min", "spindle speed");
    public static final Rule SURFACE =
            new Rule("v_w", "pi*D_w*n_w/1000", "m/min", GEOMETRY, Trust.DERIVED, "speed at the rim of the wheel");

    /** Vitrified wheels on high-speed steel, 5000 to 6500 ft/min: common practice, no source. */
    private static final double LEAST_M_PER_S = 25;

    private static final double GREATEST_M_PER_S = 33.1;

    public WheelCheck {
        cautions = List.copyOf(cautions);
    }

    static WheelCheck of(Wheel wheel, TapMaterial material, Pen pen) {
        List<Caution> cautions = new ArrayList<>();
        Optional<WheelMarking> marking =
                wheel.marking() == null ? Optional.empty() : WheelMarking.read(wheel.marking());
        if (wheel.marking() != null && marking.isEmpty()) {
            cautions.add(new Caution(
                    "wheelMarkingNotRead",
                    "The marking does not follow abrasive, grain, grade, structure, bond: look the wheel up before "
                            + "use.",
                    wheel.marking()));
        }
        marking.ifPresent(read -> suit(read, material, cautions));
        if (wheel.markedSpeed() == null) {
            cautions.add(new Caution(
                    "wheelSpeedNotMarked",
                    "The wheel's marked speed was not given: read it off the wheel before mounting."));
        }
        return new WheelCheck(marking.orElse(null), surface(wheel, cautions, pen), cautions);
    }

    private static @Nullable Speed surface(Wheel wheel, List<Caution> cautions, Pen pen) {
        if (wheel.spindle() == null) {
            cautions.add(new Caution(
                    "spindleNotTold", "The spindle speed was not given, so the speed at the rim is not known."));
            return null;
        }
        double D = pen.write(DIAMETER, wheel.diameter().mm());
        double n = pen.write(SPINDLE, wheel.spindle().revPerMin());
        Speed surface = Speed.ofMPerMin(pen.write(SURFACE, Math.PI * D * n / 1000));
        if (surface.mPerS() < LEAST_M_PER_S || surface.mPerS() > GREATEST_M_PER_S) {
            cautions.add(new Caution(
                    "wheelSpeedUnusual",
                    "Common practice is 25 to 33 m/s (5000 to 6500 ft/min) at the rim for vitrified wheels; never raise"
                            + " the spindle past the wheel's mark to get there.",
                    "v_w"));
        }
        return surface;
    }

    private static void suit(WheelMarking marking, TapMaterial material, List<Caution> cautions) {
        boolean steel = material != TapMaterial.CARBIDE;
        if (steel && marking.abrasive() == WheelMarking.Abrasive.SILICON_CARBIDE) {
            cautions.add(new Caution(
                    "wheelNotForSteel",
                    "Silicon carbide wears fast and burns high-speed steel: use aluminium oxide.",
                    "C"));
        }
        if (steel && marking.abrasive() == WheelMarking.Abrasive.DIAMOND) {
            cautions.add(
                    new Caution("wheelNotForSteel", "Diamond is for carbide only: use aluminium oxide or CBN.", "D"));
        }
        if (marking.abrasive() == WheelMarking.Abrasive.ALUMINIUM_OXIDE
                && (marking.grain() < 46 || marking.grain() > 120 || marking.grade() < 'G' || marking.grade() > 'L')) {
            cautions.add(new Caution(
                    "wheelGradeUnusual",
                    "Common practice for the chamfer is grain 60 to 100, grade H to K: a harder or finer wheel burns, a"
                            + " softer or coarser one loses its form.",
                    marking.grain() + " " + marking.grade()));
        }
    }
}
