// SPDX-License-Identifier: Apache-2.0
package landfall.hole;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import landfall.drill.Drill;
import landfall.drill.DrillSeries;
import landfall.fault.Answer;
import landfall.fault.Caution;
import landfall.fault.Finding;
import landfall.hole.Drilled.Against;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.quantity.UnitSystem;
import landfall.thread.CallOut;
import landfall.thread.ScrewThread;
import landfall.thread.Side;
import landfall.thread.SideLimits;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Worked;
import org.jspecify.annotations.Nullable;

/**
 * The whole answer to "which drill, how deep, and what will it hold?".
 *
 * @param minor limits of the hole for this engagement
 * @param tools what it is drilled with
 * @param depth the stack, null when no depth was told
 * @param insert where the wire insert sits; empty for other holes
 * @param strength empty for threads of other forms than 60 degrees, for wire inserts, and where a limit is not held
 * @param curve share against strength and torque
 */
public record HoleChoice(
        HoleWish wish,
        Limits minor,
        Tools tools,
        Entry entry,
        @Nullable DepthStack depth,
        Optional<InsertSeat> insert,
        Optional<Strength> strength,
        List<TradeOff> curve,
        List<Caution> cautions) {

    /**
     * The drill, and what it was chosen by.
     *
     * @param wanted share of thread, as a fraction
     * @param others two thinner and two thicker
     * @param forming null for a cutting tap
     * @param listed what lists in use name for this thread
     */
    public record Tools(
            ShareBasis basis,
            double wanted,
            Drilled drill,
            List<Drilled> others,
            @Nullable FormingHole forming,
            List<ListedDrill> listed) {}

    /** The rule of the share aimed at. */
    public Rule wantedRule() {
        return WantedShare.rule(wish);
    }

    /** The choice, or every reason why there is none. */
    public static Answer<Worked<HoleChoice>> of(HoleWish wish) {
        List<Finding> findings = HoleRefusals.of(wish);
        return findings.isEmpty() ? Answer.of(Worked.of(pen -> compute(wish, pen))) : Answer.refused(findings);
    }

    /** The drills asked for, thinnest first; those of the call-out's system when none are named. */
    static List<Drill> drills(HoleWish wish) {
        List<Drill> named = wish.tools().drills();
        if (named != null) {
            return DrillChoice.sorted(named);
        }
        UnitSystem system = wish.callOut().thread().family().system();
        return DrillSeries.all().stream()
                .filter(drill -> drill.drawer().system() == system)
                .toList();
    }

    private static HoleChoice compute(HoleWish wish, Pen pen) {
        CallOut callOut = wish.callOut();
        ScrewThread thread = callOut.thread();
        Length told = wish.depth();
        Limits minor = (told == null
                        ? callOut.limits(Side.INTERNAL, pen).map(SideLimits::minor)
                        : callOut.hole(told, pen))
                .orElseThrow();
        Tools tools = tools(wish, minor, pen);
        DepthStack depth = told == null ? null : DepthStack.of(wish, told, tools.drill, pen);
        Optional<InsertSeat> insert = InsertSeat.of(wish, depth, pen);
        Entry entry = Entry.of(thread, told, pen);
        Optional<Strength> strength = Strength.of(wish, minor, pen);
        List<TradeOff> curve = strength.filter(any -> tools.forming == null)
                .map(found -> TradeOff.of(thread, found, tools.wanted, tools.drill.share(), pen))
                .orElse(List.of());
        List<Caution> cautions = new ArrayList<>(HoleCautions.of(wish, minor, tools, depth, strength));
        cautions.addAll(PlaceCautions.of(wish, depth, insert, strength.isEmpty()));
        return new HoleChoice(wish, minor, tools, entry, depth, insert, strength, curve, cautions);
    }

    private static Tools tools(HoleWish wish, Limits minor, Pen pen) {
        ScrewThread thread = wish.callOut().thread();
        ShareBasis basis = ShareBasis.of(thread, wish.tools().forming());
        Length twice = basis.twice(thread, pen);
        double wanted = WantedShare.of(wish, pen);
        List<Drill> drills = drills(wish);
        FormingHole forming = wish.tools().forming() ? FormingHole.of(thread, wanted, pen) : null;
        Against against = new Against(thread.major(), twice, forming == null ? minor : forming.limits());
        DrillChoice choice = forming == null
                ? DrillChoice.cutting(drills, against, wanted, pen)
                : DrillChoice.forming(drills, against, wanted, forming.least(), pen)
                        .orElseThrow();
        List<ListedDrill> listed = basis == ShareBasis.FULL_DEPTH ? ListedDrill.of(wish.callOut(), pen) : List.of();
        return new Tools(basis, wanted, choice.drill(), choice.others(), forming, listed);
    }
}
