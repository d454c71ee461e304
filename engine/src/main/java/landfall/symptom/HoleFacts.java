// SPDX-License-Identifier: Apache-2.0
package landfall.symptom;

import java.util.Map;
import java.util.Optional;
import landfall.fault.Answer;
import landfall.hole.Drilled;
import landfall.hole.HoleChoice;
import landfall.hole.HoleWish;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.thread.CallOut;
import landfall.thread.Side;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Worked;

/**
 * What the call-out says of its hole.
 *
 * @param minor limits of the hole
 * @param drill the drill for it, from the usual drawers
 * @param lead advance in one turn
 */
public record HoleFacts(Limits minor, Drilled drill, Length lead) {
    static final Rule LEAD = Rule.given("L_y", "mm", "lead: advance in one turn");

    /** Empty for external and taper threads. */
    static Optional<HoleFacts> of(CallOut callOut, Pen pen) {
        if (callOut.limits(Side.INTERNAL, Pen.NONE).isEmpty()) {
            return Optional.empty();
        }
        if (!(HoleChoice.of(HoleWish.of(callOut)) instanceof Answer.Of<Worked<HoleChoice>> of)) {
            return Optional.empty();
        }
        Worked<HoleChoice> hole = of.value();
        if (pen != Pen.NONE) {
            hole.steps().forEach(step -> pen.write(step.rule(), step.value()));
        }
        pen.write(LEAD, callOut.thread().lead().perTurn().mm());
        return Optional.of(new HoleFacts(
                hole.value().minor(),
                hole.value().tools().drill(),
                callOut.thread().lead().perTurn()));
    }

    void tell(Map<String, Fact> facts) {
        Length least = minor.min();
        Length most = minor.max();
        facts.put(
                "drill",
                Fact.plain("The hole wants %s to %s; drill %s leaves %.0f %% of thread."
                        .formatted(
                                least == null ? "any size" : least.words(),
                                most == null ? "no limit held" : most.words(),
                                drill.drill().called(),
                                100 * drill.share())));
        facts.put("lead", Fact.plain("One turn must advance " + lead.words() + "."));
        facts.put(
                "stack",
                Fact.plain("Ask hole with the depth: thread, chamfer, room and drill point are added up there."));
    }
}
