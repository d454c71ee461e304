// SPDX-License-Identifier: Apache-2.0
package landfall.grind;

import landfall.fault.Finding;
import landfall.fault.OutOfRange;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import org.jspecify.annotations.Nullable;

/** Says what a fixture that cannot make the fall could make instead. */
final class SettingRefusal {
    private SettingRefusal() {}

    static double greatest(@Nullable Limits reach) {
        Length max = reach == null ? null : reach.max();
        return max == null ? 0 : max.mm();
    }

    private static double least(@Nullable Limits reach) {
        Length min = reach == null ? null : reach.min();
        return min == null ? 0 : min.mm();
    }

    /** @param top radial fall wanted at the top of the lobe, mm */
    static OutOfRange of(ChamferPlace place, Fixture fixture, double swivelRad, double top, double slope) {
        Cam cam = fixture.cam();
        double tangent = Math.tan(swivelRad);
        double most = greatest(cam.radial()) + greatest(cam.axial()) * tangent;
        String wanted = "a fall of %s over the whole lobe: radial rise %s, or axial rise %s"
                .formatted(mm(top), mm(top), mm(top / tangent));
        String gives = "within the fixture's reach, radial " + words(cam.radial()) + ", axial " + words(cam.axial());
        String mend = top > most
                ? "ask for a working relief of at most %.2f deg"
                                .formatted(Math.floor(
                                                workingFor(most, place, slope).deg() * 100)
                                        / 100)
                        + ", or fit a cam with more rise or a shorter rise angle"
                : "fit a cam with a smaller least rise, or ask for more working relief (%.2f deg is the least here)"
                        .formatted(Math.ceil(workingFor(leastTop(cam, tangent), place, slope)
                                                .deg()
                                        * 100)
                                / 100);
        return new OutOfRange(new Finding("working-relief", wanted, "must be " + gives, mend));
    }

    private static double leastTop(Cam cam, double tangent) {
        double radial = cam.radial() == null ? Double.POSITIVE_INFINITY : least(cam.radial());
        double axial = cam.axial() == null ? Double.POSITIVE_INFINITY : least(cam.axial()) * tangent;
        return Math.min(radial, axial);
    }

    private static Angle workingFor(double top, ChamferPlace place, double slope) {
        return ChamferRelief.working(Length.ofMm(top * slope), place.midRadius(), place.kappa(), place.leadFelt());
    }

    private static String words(@Nullable Limits reach) {
        return reach == null ? "none" : mm(least(reach)) + " to " + mm(greatest(reach));
    }

    private static String mm(double mm) {
        return Length.ofMm(mm).words();
    }
}
