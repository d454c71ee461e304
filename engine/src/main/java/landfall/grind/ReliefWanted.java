// SPDX-License-Identifier: Apache-2.0
package landfall.grind;

import java.util.List;
import landfall.fault.Caution;
import landfall.material.WorkMaterial;
import landfall.quantity.Angle;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;

/** Which working relief to grind: as asked for, by the material that is cut, or the usual one for the chamfer. */
final class ReliefWanted {
    private static final Source PRACTICE = Source.of("common-practice", "chamfer relief");
    static final Rule GIVEN = Rule.given("α_w", "deg", "working relief wanted, square to the edge");
    static final Rule USUAL = Rule.table(
            "α_w", "deg", PRACTICE, Trust.PRACTICE, "usual working relief for this chamfer, square to the edge");
    static final Rule FOR_MATERIAL = Rule.table(
            "α_tm", "deg", PRACTICE, Trust.PRACTICE, "middle of the material's range, static, square to the axis");
    static final Rule FROM_MATERIAL = new Rule(
            "α_w",
            "atan(tan(α_tm)*cos(κ)) - η",
            "deg",
            Source.of("derived", "docs/methods/chamfer-relief.md"),
            Trust.PRACTICE,
            "working relief that leaves, square to the edge");

    private static final double STEEP_DEG = 20;
    private static final double LONG_DEG = 5.5;

    private ReliefWanted() {}

    static Angle of(GrindWish wish, ChamferPlace place, Angle loss, List<Caution> assumed, Pen pen) {
        if (wish.workingRelief() != null) {
            return Angle.ofDeg(pen.write(GIVEN, wish.workingRelief().deg()));
        }
        if (wish.cuts() != null) {
            return forMaterial(wish.cuts(), place, loss, assumed, pen);
        }
        double kappa = place.kappa().deg();
        double usual = kappa > STEEP_DEG ? 8 : kappa < LONG_DEG ? 5 : 6;
        assumed.add(new Caution(
                "reliefAssumed",
                "Working relief not told: %.0f deg taken, common practice for a chamfer of %.1f deg."
                        .formatted(usual, kappa),
                "α_w"));
        return Angle.ofDeg(pen.write(USUAL, usual));
    }

    private static Angle forMaterial(
            WorkMaterial material, ChamferPlace place, Angle loss, List<Caution> assumed, Pen pen) {
        double transverse = pen.write(FOR_MATERIAL, material.relief().middle().deg());
        double ground = Math.atan(
                Math.tan(Math.toRadians(transverse)) * Math.cos(place.kappa().rad()));
        double working = pen.write(FROM_MATERIAL, Math.toDegrees(ground) - loss.deg());
        assumed.add(new Caution(
                "reliefByMaterial",
                ("Relief by the material %s: %.0f to %.0f deg static, square to the axis,"
                                + " common practice (2 deg either way).")
                        .formatted(
                                material.id(),
                                material.relief().least().deg(),
                                material.relief().greatest().deg()),
                "α_w"));
        return Angle.ofDeg(working);
    }
}
