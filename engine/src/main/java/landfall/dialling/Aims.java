// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

import java.util.ArrayList;
import java.util.List;
import landfall.grind.Place;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;
import org.jspecify.annotations.Nullable;

/**
 * The slope that a dial should show in each place when the wanted rises are set.
 *
 * <p>End a'; shank b'; crest b' less the fall of the crest by its own relief, behind its margin; flank a' - L/2pi;
 * chamfer at rest -cos kap (a' tan kap_s + b'), or without a fixture -r tan of the static relief that is wanted;
 * chamfer at work the rise upwards less the fall of the chamfer as found, or nothing: it then follows the relief that
 * is on the tap. Which form each part has is the {@link Course}'s.
 */
final class Aims {
    private static final double STEP_DEG = 5;
    private static final Source TARGETS = Source.of("derived", "docs/methods/dial-targets.md");
    static final Rule AXIAL = Rule.given("a'_w", "mm/rad", "axial rise wanted, per radian of the cam");
    static final Rule RADIAL = Rule.given("b'_w", "mm/rad", "radial rise wanted, per radian of the cam");
    static final Rule SWIVEL = Rule.given("κ_s", "deg", "swivel as set; the chamfer angle on straight flutes");
    static final Rule CREST = Rule.given("g_c", "mm/rad", "fall of the crest by its own relief, per radian");
    static final Rule FOUND = Rule.given("f'_n", "mm/rad", "fall of the chamfer as found, square to it, per radian");

    private Aims() {}

    /** Wanted slope in mm per radian; null where nothing tells it. */
    static @Nullable Double slope(DialAsk ask, @Nullable ReliefFound relief, Pen pen) {
        TapFacts tap = ask.tap();
        Place place = ask.readings().place();
        Aim aim = ask.beside().aim();
        if (place == Place.CHAMFER_WORKING && (aim == null || aim.found() == null)) {
            if (aim != null) {
                pen.write(SWIVEL, aim.set(tap.chamfer()).deg());
            }
            return pen.write(rule("0"), 0);
        }
        if (aim == null) {
            return relief == null ? null : byRelief(tap, relief, pen);
        }
        pen.write(AXIAL, aim.axial().mm());
        pen.write(RADIAL, aim.radial().mm());
        double square = aim.squareFall(tap.chamfer());
        return switch (place) {
            case END -> pen.write(rule("a'_w"), aim.axial().mm());
            case SHANK -> pen.write(rule("b'_w"), aim.radial().mm());
            case CREST -> crest(aim, tap, pen);
            case FLANK ->
                pen.write(rule("a'_w - L/(2*pi)"), aim.axial().mm() - tap.lead().mm() / (2 * Math.PI));
            case CHAMFER_STILL -> {
                pen.write(SWIVEL, aim.set(tap.chamfer()).deg());
                yield pen.write(rule("-cos(κ)*(a'_w*tan(κ_s) + b'_w)"), -square);
            }
            case CHAMFER_WORKING -> {
                Length found = aim.found();
                pen.write(SWIVEL, aim.set(tap.chamfer()).deg());
                double fall = pen.write(FOUND, found == null ? square : found.mm());
                yield pen.write(rule("cos(κ)*(a'_w*tan(κ_s) + b'_w) - f'_n"), square - fall);
            }
        };
    }

    private static double crest(Aim aim, TapFacts tap, Pen pen) {
        double fall = pen.write(CREST, tap.crest().perRadian().mm());
        return pen.write(rule("b'_w - g_c"), aim.radial().mm() - fall);
    }

    /** Without a fixture the chamfer at rest is still held against the relief that is wanted. */
    private static double byRelief(TapFacts tap, ReliefFound relief, Pen pen) {
        double loss = relief.ground().deg() - relief.working().value().deg();
        double ground = relief.wanted().rad() + Math.toRadians(loss);
        return pen.write(rule("-r*tan(α_wanted + η)"), -tap.radius().mm() * Math.tan(ground));
    }

    private static Rule rule(String formula) {
        return new Rule(
                "k_w", formula, "mm/rad", TARGETS, Trust.DERIVED, "slope that the dial should show in this place");
    }

    /** Readings from edge to heel every five degrees. */
    static List<Target> targets(double slope, Course course, Angle land) {
        List<Target> targets = new ArrayList<>();
        for (double deg = 0; deg < land.deg() - 1e-9; deg += STEP_DEG) {
            targets.add(target(slope, course, Angle.ofDeg(deg)));
        }
        targets.add(target(slope, course, land));
        return targets;
    }

    private static Target target(double slope, Course course, Angle land) {
        return new Target(land, Length.ofMm(course.read(slope, land)));
    }
}
