// SPDX-License-Identifier: Apache-2.0
package landfall.material;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import landfall.quantity.Angle;
import landfall.quantity.Speed;
import landfall.quantity.Stress;

/**
 * A material that is tapped.
 *
 * @param relief chamfer relief, static, in the plane square to the axis
 * @param shear shear strength
 */
public record WorkMaterial(
        Naming naming, WorkGroup group, CuttingFigures cutting, ReliefRange relief, Marked<Between<Stress>> shear) {
    private static final Pattern ROCKWELL_C = Pattern.compile("(\\d+)-\\d+ HRC");

    public String id() {
        return naming.id;
    }

    public List<String> names() {
        return naming.names;
    }

    /** Over 35 HRC, by the list's own words; a list that gives Brinell says no. */
    public boolean isHard() {
        Matcher rockwell = ROCKWELL_C.matcher(naming.hardness);
        return rockwell.matches() && Integer.parseInt(rockwell.group(1)) >= 35;
    }

    /** Whether a forming tap can press a thread into it: soft, and its chip does not break when it is drilled. */
    public boolean canBeFormed() {
        ChipClass chip = cutting.chip().value().kind();
        boolean flows = chip == ChipClass.STRINGY || chip == ChipClass.LONG || chip == ChipClass.MEDIUM;
        return switch (group) {
            case STEEL, STAINLESS, ALUMINIUM -> flows && !isHard();
            case COPPER, TITANIUM_NICKEL -> chip == ChipClass.STRINGY && !isHard();
            default -> false;
        };
    }

    /**
     * How it is called.
     *
     * @param id short stable name
     * @param names as it is called elsewhere
     * @param iso letter of ISO 513
     * @param hardness as the list words it
     * @param doubt what the list says against its own row; may be empty
     */
    public record Naming(String id, List<String> names, String iso, String hardness, String doubt) {
        public Naming {
            names = List.copyOf(names);
        }
    }

    /**
     * What is known of cutting it.
     *
     * @param rake of the tap's face, radial
     * @param speed of an HSS tap
     */
    public record CuttingFigures(
            Marked<CuttingPressure> pressure,
            Marked<ChipForm> chip,
            Marked<Between<Angle>> rake,
            Marked<Between<Speed>> speed,
            Marked<FluidAdvice> fluid) {}

    /**
     * A range of chamfer relief.
     *
     * @param trust of the figures, as the list marks them
     */
    public record ReliefRange(Angle least, Angle greatest, String trust) {
        public Angle middle() {
            return least.plus(greatest).times(0.5);
        }
    }
}
