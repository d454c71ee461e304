// SPDX-License-Identifier: Apache-2.0
package landfall.grind;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.quantity.UnitSystem;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;

/**
 * What the working relief of a set-up moves most with: each setting off by as much as it can be read, the point by as
 * much as it can be measured; central differences of the set-up read forwards, worst first.
 *
 * @param with what is off
 * @param by how much
 * @param relief how far the working relief moves
 */
public record Moves(String with, String by, Angle relief) {
    private static final Source NOTE = Source.of("derived", "docs/methods/spread.md");
    public static final Rule SWIVEL =
            Rule.run("m_κ", "deg", NOTE, "change of working relief for the swivel off by one step");
    public static final Rule AXIAL =
            Rule.run("m_a", "deg", NOTE, "change of working relief for the axial rise off by one division");
    public static final Rule RADIAL =
            Rule.run("m_b", "deg", NOTE, "change of working relief for the radial rise off by one division");
    public static final Rule POINT =
            Rule.run("m_p", "deg", NOTE, "change of working relief for the point diameter measured wrong");

    /** How well a caliper tells the diameter at the point of a chamfer: common practice, no source. */
    private static final Length POINT_METRIC = Length.ofMm(0.05);

    private static final Length POINT_INCH = Length.ofInch(0.002);

    /** Worst first. */
    public static List<Moves> of(GrindSetup setup, Pen pen) {
        AsSetCurve curve = AsSetCurve.of(setup);
        Setting setting = setup.motion().setting();
        double kappa = setting.swivel().deg();
        double a = setting.rises().axial().mm();
        double b = setting.rises().radial().mm();
        Angle step = setup.fixture().swivelStep() == null
                ? SettingChoice.SWIVEL_ERROR
                : setup.fixture().swivelStep();
        double h = step.deg();
        Length division = setup.motion().division();
        double q = division.mm();
        List<Moves> all = new ArrayList<>();
        all.add(new Moves(
                "the swivel", words(step), moved(SWIVEL, curve.at(kappa + h, a, b) - curve.at(kappa - h, a, b), pen)));
        if (a > 0) {
            all.add(new Moves(
                    "the axial rise over the lobe",
                    division.words(),
                    moved(AXIAL, curve.at(kappa, a + q, b) - curve.at(kappa, a - q, b), pen)));
        }
        if (b > 0) {
            all.add(new Moves(
                    "the radial rise over the lobe",
                    division.words(),
                    moved(RADIAL, curve.at(kappa, a, b + q) - curve.at(kappa, a, b - q), pen)));
        }
        all.add(point(setup, curve, pen));
        all.sort(Comparator.comparingDouble((Moves move) -> -Math.abs(move.relief.deg())));
        return List.copyOf(all);
    }

    private static Moves point(GrindSetup setup, AsSetCurve curve, Pen pen) {
        Length off = setup.tap().thread().family().system() == UnitSystem.INCH ? POINT_INCH : POINT_METRIC;
        Setting setting = setup.motion().setting();
        double kappa = setting.swivel().deg();
        double a = setting.rises().axial().mm();
        double b = setting.rises().radial().mm();
        double quarter = off.mm() / 4;
        double both = curve.onRadius(quarter).at(kappa, a, b)
                - curve.onRadius(-quarter).at(kappa, a, b);
        return new Moves("the point diameter", off.words(), moved(POINT, both, pen));
    }

    private static Angle moved(Rule rule, double both, Pen pen) {
        return Angle.ofDeg(pen.write(rule, both / 2));
    }

    private static String words(Angle angle) {
        return BigDecimal.valueOf(angle.deg())
                        .setScale(3, RoundingMode.HALF_UP)
                        .stripTrailingZeros()
                        .toPlainString()
                + " deg";
    }
}
