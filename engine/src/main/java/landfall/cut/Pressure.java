// SPDX-License-Identifier: Apache-2.0
package landfall.cut;

import landfall.chip.ChipLoad;
import landfall.material.CuttingPressure;
import landfall.material.Marked;
import landfall.material.WorkMaterial;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.quantity.Stress;
import landfall.quantity.Torque;
import landfall.tap.FluteForm;
import landfall.tap.Tap;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;

/**
 * Cutting pressure after Kienzle for the chip of this tap, and the torque it makes on a sharp tap with nothing added.
 *
 * @param rake that counts: as measured at the crest, or that of a one-arc flute where the groove's centroid lies
 * @param offUsual rake less the middle of the material's range
 * @param specific force over chip area
 * @param sharp torque of all teeth in the cut
 */
record Pressure(Angle rake, Angle offUsual, Stress specific, Torque sharp) {
    private static final Source MODEL = Source.of("derived", "docs/methods/tapping-torque.md");
    private static final Source PRACTICE =
            Source.of("common-practice", "cutting pressure falls 1 to 2 % a degree of rake");
    static final Rule RAKE = Rule.given("γ", "deg", "rake of the face");
    static final Rule CORE = Rule.given("d_core", "mm", "core diameter");
    static final Rule FLUTE_RADIUS = Rule.given("r_f", "mm", "radius of the flute");
    static final Rule FLUTE_CENTRE = new Rule(
            "c_f", "d_core/2 + r_f", "mm", MODEL, Trust.DERIVED, "distance of the flute's centre from the axis");
    static final Rule RAKE_OF_ARC = new Rule(
            "γ",
            "asin((r_c^2 + r_f^2 - c_f^2)/(2*r_c*r_f))",
            "deg",
            MODEL,
            Trust.DERIVED,
            "rake of the flute's arc at the groove's centroid");
    static final Rule PER_DEGREE =
            Rule.table("s_γ", "1/deg", PRACTICE, Trust.PRACTICE, "fall of the pressure a degree of rake");
    static final Rule RAKE_FACTOR = new Rule(
            "k_γ", "1 - s_γ*(γ - γ_u)", "1", MODEL, Trust.PRACTICE, "factor for a rake that is not the usual one");
    public static final Rule SPECIFIC =
            new Rule("k_c", "kc_1/h^m_c*k_γ", "N/mm²", MODEL, Trust.ESTIMATE, "specific cutting pressure");
    public static final Rule SHARP =
            new Rule("T_s", "k_c*A_all*r_c/1000", "N·m", MODEL, Trust.ESTIMATE, "torque of the chips alone, sharp tap");

    private static final double FALL_PER_DEGREE = 0.015;

    /** The pressure on the teeth of a load whose figures have been written. */
    static Pressure of(ChipLoad load, Tap tap, WorkMaterial material, Pen pen) {
        Marked<CuttingPressure> row = material.cutting().pressure();
        double kc_1 = pen.write(
                Rule.table("kc_1", "N/mm²", row.source(), row.trust(), "cutting pressure of a chip 1 mm thick"),
                row.value().atOneMm().nPerMm2());
        double m_c = pen.write(
                Rule.table("m_c", "1", row.source(), row.trust(), "exponent of the chip thickness"),
                row.value().exponent());
        double gamma = rake(load, tap, pen);
        var usual = material.cutting().rake();
        double gamma_u = pen.write(
                Rule.table(
                        "γ_u",
                        "deg",
                        usual.source(),
                        usual.trust(),
                        "usual rake for this material, middle of its range"),
                (usual.value().least().deg() + usual.value().greatest().deg()) / 2);
        double s = pen.write(PER_DEGREE, FALL_PER_DEGREE);
        double k_gamma = pen.write(RAKE_FACTOR, 1 - s * (gamma - gamma_u));
        double h = load.steps().thickness().mm();
        double k_c = pen.write(SPECIFIC, kc_1 / Math.pow(h, m_c) * k_gamma);
        double sharp = pen.write(
                SHARP, k_c * load.totalArea().mm2() * load.groove().radius().mm() / 1000);
        return new Pressure(
                Angle.ofDeg(gamma), Angle.ofDeg(gamma - gamma_u), Stress.ofNPerMm2(k_c), Torque.ofNm(sharp));
    }

    private static double rake(ChipLoad load, Tap tap, Pen pen) {
        FluteForm form = tap.flutes().form();
        Angle rake = form.rake();
        if (rake != null) {
            return pen.write(RAKE, rake.deg());
        }
        Length core = form.core();
        Length radius = form.radius();
        if (core == null || radius == null) {
            throw new IllegalStateException("a tap without core or flute radius was let through");
        }
        double coreMm = pen.write(CORE, core.mm());
        double r_f = pen.write(FLUTE_RADIUS, radius.mm());
        double c_f = pen.write(FLUTE_CENTRE, coreMm / 2 + r_f);
        double r_c = load.groove().radius().mm();
        return pen.write(RAKE_OF_ARC, Math.toDegrees(Math.asin((r_c * r_c + r_f * r_f - c_f * c_f) / (2 * r_c * r_f))));
    }
}
