// SPDX-License-Identifier: Apache-2.0
package landfall.symptom;

import java.util.Map;
import java.util.Optional;
import landfall.chip.ChipFlow;
import landfall.material.WorkMaterial;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.tap.FluteKind;
import landfall.tap.Tap;
import landfall.tap.Wear;
import landfall.thread.ScrewThread;
import landfall.thread.Side;
import landfall.thread.SideLimits;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;
import org.jspecify.annotations.Nullable;

/**
 * What the tap's own card says.
 *
 * @param chip thickness of a full chip, square to the chamfer edge
 * @param backTurn turn back that shears the root of the chip: the gap from heel to the next edge, in turns
 */
public record TapFacts(Length chip, double backTurn) {
    private static final Source CHIP = Source.of("derived", "docs/methods/chip-slices.md");
    private static final Source GAP = Source.of("derived", "docs/methods/symptoms.md, turning back");

    static final Rule PITCH = Rule.given("P_y", "mm", "pitch");
    static final Rule STARTS = Rule.given("k_y", "1", "starts");
    static final Rule FLUTES = Rule.given("N_y", "1", "flutes");
    static final Rule CHAMFER = Rule.given("κ_y", "deg", "chamfer angle");
    static final Rule LAND = Rule.given("θ_y", "deg", "land angle, edge to heel");
    static final Rule THICKNESS =
            new Rule("h_y", "k_y*P_y/N_y*sin(κ_y)", "mm", CHIP, Trust.DERIVED, "thickness of a full chip");
    static final Rule BACK_TURN = new Rule(
            "B_y",
            "1/N_y - θ_y/360",
            "1",
            GAP,
            Trust.DERIVED,
            "turn back that brings the heel ahead to the chip's root");

    private static final double THIN = 0.015;
    private static final double THIN_HARDENING = 0.025;
    private static final double THICK = 0.15;
    private static final double THICK_HARD = 0.10;

    static TapFacts of(Tap tap, Pen pen) {
        double P = pen.write(PITCH, tap.thread().pitch().mm());
        double k = pen.write(STARTS, tap.thread().lead().starts());
        double N = pen.write(FLUTES, tap.flutes().count());
        double kappa = pen.write(CHAMFER, tap.chamfer().angle().deg());
        double land = pen.write(LAND, tap.landAngle().deg());
        double h = pen.write(THICKNESS, k * P / N * Math.sin(Math.toRadians(kappa)));
        return new TapFacts(Length.ofMm(h), pen.write(BACK_TURN, 1 / N - land / 360));
    }

    void tell(Tap tap, @Nullable WorkMaterial material, Map<String, Fact> facts) {
        boolean hardens = material != null && material.group().hardensUnderTheTool();
        boolean hard = material != null && material.isHard();
        String said = "A full chip of this tap is " + chip.words();
        double thin = hardens ? THIN_HARDENING : THIN;
        facts.put(
                "chip-thin",
                chip.mm() < thin
                        ? Fact.up(said + ", under %.3f mm: it rubs.".formatted(thin))
                        : Fact.down(said + ": thick enough."));
        double thick = hard ? THICK_HARD : THICK;
        facts.put(
                "chip-thick",
                chip.mm() > thick
                        ? Fact.up(said + ", over %.2f mm.".formatted(thick))
                        : Fact.down(said + ": not too thick."));
        facts.put(
                "gap",
                Fact.plain("The heel of the land ahead comes to the chip's root after %.2f turns back."
                        .formatted(backTurn)));
        flutes(tap, facts);
        Length due = Wear.DUE.land(tap.thread(), Pen.NONE);
        facts.put(
                "wear",
                Fact.plain("A tap of this size is due at a wear land of " + due.words() + " (common practice)."));
        rake(tap, material, facts);
        limits(tap, facts);
    }

    private static void flutes(Tap tap, Map<String, Fact> facts) {
        ChipFlow flow = ChipFlow.of(tap.flutes().kind(), tap.thread().hand());
        if (tap.flutes().kind() != FluteKind.FORMING) {
            facts.put(
                    "chips-pack",
                    flow == ChipFlow.STAYS
                            ? Fact.up("Straight flutes keep their chips.")
                            : Fact.down(
                                    "These flutes lead their chips " + (flow == ChipFlow.BACK ? "back." : "ahead.")));
        }
        if (tap.flutes().kind() == FluteKind.SPIRAL_POINT) {
            facts.put("kind", Fact.up("This is a spiral point: it is turned back only when it is through."));
        } else {
            facts.put("kind", Fact.down("This tap is no spiral point."));
        }
    }

    private static void rake(Tap tap, @Nullable WorkMaterial material, Map<String, Fact> facts) {
        Angle rake = tap.flutes().form().rake();
        if (rake == null || material == null) {
            return;
        }
        var range = material.cutting().rake().value();
        String said = "Rake %.1f deg; for %s %.0f to %.0f deg (common practice)."
                .formatted(
                        rake.deg(),
                        material.id(),
                        range.least().deg(),
                        range.greatest().deg());
        boolean within = rake.compareTo(range.least()) >= 0 && rake.compareTo(range.greatest()) <= 0;
        facts.put("rake", within ? Fact.down(said) : Fact.up(said));
    }

    /** The tap's own limits held against those of the hole. */
    private static void limits(Tap tap, Map<String, Fact> facts) {
        Limits own = tap.pitch().limit();
        Optional<SideLimits> hole = tap.callOut().limits(Side.INTERNAL, Pen.NONE);
        ScrewThread thread = tap.thread();
        if (own == null || hole.isEmpty()) {
            return;
        }
        Length least = hole.get().pitch().min();
        Length most = hole.get().pitch().max();
        if (least == null || most == null) {
            return;
        }
        if (own.max() != null) {
            double share = own.max().minus(least).over(most.minus(least));
            String said = "The tap's greatest pitch diameter stands at %.0f %% of the hole's tolerance."
                    .formatted(100 * share);
            facts.put("limit-high", share > 0.6 ? Fact.up(said) : Fact.down(said));
        }
        if (own.min() != null) {
            String said =
                    "The tap's least pitch diameter is " + own.min().words() + ", the hole's " + least.words() + ".";
            boolean under = own.min().mm() < thread.pitchDiameter().mm() - 1e-9;
            facts.put("limit-low", under ? Fact.up(said) : Fact.plain(said));
        }
    }
}
