// SPDX-License-Identifier: Apache-2.0
package landfall.gauge;

import landfall.quantity.Measured;
import landfall.working.Pen;
import org.jspecify.annotations.Nullable;

/**
 * A pitch diameter that was measured, with how well it is known.
 *
 * @param assumed the uncertainties of the readings were not told but taken
 */
public record MeasuredPitch(Way way, Measured measured, PitchUncertainty uncertainty, boolean assumed) {
    /** How it was measured. */
    public enum Way {
        OVER_WIRES,
        IN_V_ANVIL,
        OTHERWISE
    }

    /**
     * From what was measured; null when nothing was. A pitch diameter that was given counts as measured when something
     * lies on the bench, else it is only aimed at.
     */
    public static @Nullable MeasuredPitch of(
            Gauging gauging, GaugeWish wish, ReadingUncertainty u, boolean onBench, Pen pen) {
        var thread = gauging.callOut().thread();
        var setting = new PitchUncertainty.Setting(
                thread.pitch().mm(),
                thread.profile().flankAngle().rad(),
                gauging.wire().mm());
        ThreeWires.Measurement measured = gauging.measured();
        if (gauging.anvil() != null && wish.anvil() != null) {
            PitchUncertainty found = PitchUncertainty.inVAnvil(setting, gauging.anvil(), wish.anvil(), u, pen);
            return new MeasuredPitch(
                    Way.IN_V_ANVIL,
                    new Measured(gauging.anvil().pitchDiameter(), found.expanded()),
                    found,
                    u.assumed());
        }
        if (measured != null && wish.over() != null) {
            PitchUncertainty found = PitchUncertainty.overWires(setting, measured, u, pen);
            return new MeasuredPitch(
                    Way.OVER_WIRES, new Measured(measured.pitchDiameter(), found.expanded()), found, u.assumed());
        }
        if (measured != null && onBench) {
            PitchUncertainty found = PitchUncertainty.direct(u, pen);
            return new MeasuredPitch(
                    Way.OTHERWISE, new Measured(measured.pitchDiameter(), found.expanded()), found, u.assumed());
        }
        return null;
    }
}
