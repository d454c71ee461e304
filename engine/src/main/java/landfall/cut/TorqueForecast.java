// SPDX-License-Identifier: Apache-2.0
package landfall.cut;

import java.util.List;
import landfall.chip.ChipLoad;
import landfall.material.CuttingFluid;
import landfall.material.WorkGroup;
import landfall.quantity.Band;
import landfall.quantity.Stress;
import landfall.tap.FluteKind;
import landfall.tap.Tap;
import landfall.tap.Wear;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;

/**
 * Torque as a band: docs/methods/tapping-torque.md. All bands in N·m, thrust in N.
 *
 * @param specific cutting pressure on the teeth
 * @param full all teeth of the chamfer in the cut
 * @param reversal starting back, chips shearing cleanly
 * @param thrust along the axis that the chamfer asks for
 * @param entry how it grows as the chamfer enters
 * @param curve the same over the whole way in and back
 */
public record TorqueForecast(
        Stress specific, Band full, Band reversal, Band thrust, List<EntryTorque> entry, List<CurvePoint> curve) {
    private static final Source MODEL = Source.of("derived", "docs/methods/tapping-torque.md");
    private static final Source REMEMBERED = Source.of("memory", "");
    static final Rule BY_GROUP =
            Rule.table("K_m", "1", MODEL, Trust.ESTIMATE, "factor of the group of materials, fitted");
    static final Rule BAND = Rule.table("b", "1", MODEL, Trust.ESTIMATE, "the band is times and over this");
    static final Rule BY_KIND = Rule.table("K_k", "1", MODEL, Trust.ESTIMATE, "factor of the kind of tap");
    static final Rule WEAR_DUE = Rule.table(
            "w_due",
            "mm",
            Source.of("common-practice", "wear land at which a tap is due"),
            Trust.PRACTICE,
            "wear land at which a tap of this size is due");
    static final Rule BY_WEAR = estimate(
            "K_w",
            "if(w_wear <= w_due, 1 + 0.5*w_wear/w_due, 1.5 + 2*(w_wear/w_due - 1))",
            "1",
            "factor of wear: 1 fresh, 1.5 due, 2.5 spent");
    static final Rule DEPTH = Rule.given("L_d", "mm", "depth of full thread");
    static final Rule DEPTH_SHARE =
            Rule.table("s_d", "1", MODEL, Trust.ESTIMATE, "growth for each diameter of depth beyond the first");
    static final Rule BY_DEPTH = estimate("K_d", "1 + s_d*max(0, L_d/d - 1)", "1", "factor of depth");
    public static final Rule FULL = estimate("T", "T_s*K_m*K_k*K_f*K_w*K_d", "N·m", "torque, fully engaged");
    public static final Rule LOW = estimate("T_l", "T/b", "N·m", "torque, fully engaged, low");
    public static final Rule HIGH = estimate("T_h", "T*b", "N·m", "torque, fully engaged, high");
    public static final Rule BACK_LOW = remembered("T_bl", "0.1*T_l", "N·m", "torque on reversal, low");
    public static final Rule BACK = remembered("T_b", "0.2*T", "N·m", "torque on reversal");
    public static final Rule BACK_HIGH = remembered("T_bh", "0.3*T_h", "N·m", "torque on reversal, high");
    public static final Rule THRUST_LOW =
            remembered("F_al", "0.3*1000*T_l/r_c*sin(κ)", "N", "thrust of the chamfer, low");
    public static final Rule THRUST = remembered("F_a", "0.5*1000*T/r_c*sin(κ)", "N", "thrust of the chamfer");
    public static final Rule THRUST_HIGH =
            remembered("F_ah", "0.7*1000*T_h/r_c*sin(κ)", "N", "thrust of the chamfer, high");

    private static final double SPIRAL_POINT_FACTOR = 0.8;

    public TorqueForecast {
        entry = List.copyOf(entry);
        curve = List.copyOf(curve);
    }

    static TorqueForecast of(Tap tap, CutWish wish, ChipLoad load, Pressure pressure, Pen pen) {
        WorkGroup group = wish.material().group();
        List<String> calibration = CutTable.CALIBRATION.need(group.code());
        double K_m = pen.write(BY_GROUP, CutTable.number(calibration, 0));
        double b = pen.write(BAND, CutTable.number(calibration, 1));
        double K_k = pen.write(BY_KIND, tap.flutes().kind() == FluteKind.SPIRAL_POINT ? SPIRAL_POINT_FACTOR : 1);
        double K_f = fluid(group, wish.fluidUsed(), pen);
        double K_w = wear(tap, wish.wearUsed(), pen);
        double K_d = depth(tap, wish, pen);
        double T = pen.write(FULL, pressure.sharp().nm() * K_m * K_k * K_f * K_w * K_d);
        Band full = new Band(pen.write(LOW, T / b), T, pen.write(HIGH, T * b));
        Band back = new Band(
                pen.write(BACK_LOW, 0.1 * full.low()),
                pen.write(BACK, 0.2 * T),
                pen.write(BACK_HIGH, 0.3 * full.high()));
        double perNm = 1000
                / load.groove().radius().mm()
                * Math.sin(load.steps().chamfer().rad());
        Band thrust = new Band(
                pen.write(THRUST_LOW, 0.3 * full.low() * perNm),
                pen.write(THRUST, 0.5 * T * perNm),
                pen.write(THRUST_HIGH, 0.7 * full.high() * perNm));
        List<EntryTorque> entry = EntryTorque.of(load, tap, full.times(1 / K_d), pen);
        List<CurvePoint> curve = CurvePoint.of(tap, wish, entry, new CurvePoint.Ends(full, back), pen);
        return new TorqueForecast(pressure.specific(), full, back, thrust, entry, curve);
    }

    private static double fluid(WorkGroup group, CuttingFluid fluid, Pen pen) {
        List<String> cells = CutTable.FLUIDS.row(group.code(), fluid.code()).orElse(List.of("1", "derived"));
        return pen.write(fluidRule(cells.get(1)), Double.parseDouble(cells.get(0)));
    }

    private static Rule fluidRule(String key) {
        Source source = switch (key) {
            case "thesis-m3-6061" -> Source.of("thesis-m3-6061", "M3 taps, oil is 1");
            case "memory" -> Source.of("memory", "torque by cutting fluid");
            default -> MODEL;
        };
        return Rule.table("K_f", "1", source, Trust.ESTIMATE, "factor of the cutting fluid; 1 as calibrated");
    }

    private static double wear(Tap tap, Wear wear, Pen pen) {
        double width = wear.land(tap.thread(), pen).mm();
        double due = Wear.DUE.land(tap.thread(), Pen.NONE).mm();
        if (wear.measured() != null) {
            pen.write(WEAR_DUE, due);
        }
        return pen.write(BY_WEAR, WearFactor.at(width / due));
    }

    private static double depth(Tap tap, CutWish wish, Pen pen) {
        double L_d = pen.write(DEPTH, wish.depth().mm());
        double s_d = pen.write(DEPTH_SHARE, tap.flutes().kind().isSpiral() ? 0.05 : 0.1);
        return pen.write(
                BY_DEPTH, 1 + s_d * Math.max(0, L_d / tap.thread().major().mm() - 1));
    }

    private static Rule estimate(String symbol, String formula, String unit, String means) {
        return new Rule(symbol, formula, unit, MODEL, Trust.ESTIMATE, means);
    }

    private static Rule remembered(String symbol, String formula, String unit, String means) {
        return new Rule(symbol, formula, unit, REMEMBERED, Trust.ESTIMATE, means);
    }
}
