// SPDX-License-Identifier: Apache-2.0
package landfall.grind;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import landfall.fault.Finding;
import landfall.tap.FluteKind;
import landfall.tap.Tap;
import landfall.tap.TapMaterial;

/** What cannot be relieved here, every reason at once. */
final class GrindRefusals {
    private GrindRefusals() {}

    static List<Finding> of(Tap tap, Fixture fixture) {
        List<Finding> findings = new ArrayList<>();
        kind(tap, findings);
        wheel(tap, fixture, findings);
        findings.addAll(cam(tap, fixture.cam().lobes(), fixture.cam().lobe()));
        return findings;
    }

    private static void kind(Tap tap, List<Finding> findings) {
        if (tap.flutes().kind() == FluteKind.FORMING) {
            findings.add(new Finding(
                    "flutes.kind",
                    "forming",
                    "has no cutting edge: there is nothing to relieve",
                    "retire a worn forming tap; its lobes need the maker's form"));
        }
        if (tap.make().interrupted()) {
            findings.add(new Finding(
                    "interrupted",
                    "yes",
                    "cannot be set here: every second tooth is away, so the load on the next one is not known",
                    "send it to a grinder with the tap's own cam, or set it by its old relief under a loupe"));
        }
    }

    private static void wheel(Tap tap, Fixture fixture, List<Finding> findings) {
        if (tap.make().material() != TapMaterial.CARBIDE) {
            return;
        }
        String marking = fixture.wheel().marking();
        Optional<WheelMarking> read = marking == null ? Optional.empty() : WheelMarking.read(marking);
        if (read.isEmpty() || read.get().abrasive() != WheelMarking.Abrasive.DIAMOND) {
            findings.add(new Finding(
                    "wheel.marking",
                    marking == null ? "left out" : marking,
                    "must be a diamond wheel for a carbide tap",
                    "mount a diamond wheel with dust extraction, or send the tap out"));
        }
    }

    /** What does not fit between a tap and a cam. */
    static List<Finding> cam(Tap tap, int lobes, Lobe lobe) {
        List<Finding> findings = new ArrayList<>();
        int flutes = tap.flutes().count();
        if (lobes != flutes) {
            findings.add(new Finding(
                    "cam.lobes",
                    Integer.toString(lobes),
                    "must be the number of flutes, " + flutes,
                    "fit the cam with %d lobes, or check the flutes on the tap's card".formatted(flutes)));
        }
        double end = lobe.riseStart().deg() + lobe.riseAngle().deg();
        double land = tap.landAngle().deg();
        if (end < land - 1e-9) {
            findings.add(new Finding(
                    "cam.riseAngle",
                    "%.2f deg from a start at %.2f deg"
                            .formatted(lobe.riseAngle().deg(), lobe.riseStart().deg()),
                    "must reach the heel, at %.2f deg of land".formatted(land),
                    "fit a cam with a longer rise, start the rise later, or measure the land again"));
        }
        return findings;
    }
}
