// SPDX-License-Identifier: Apache-2.0
package landfall.symptom;

import java.util.Map;
import java.util.Optional;
import landfall.fault.Answer;
import landfall.hole.DepthStack;
import landfall.hole.Drilled;
import landfall.hole.HoleChoice;
import landfall.hole.HoleEnd;
import landfall.hole.HoleWish;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.tap.Tap;
import landfall.thread.CallOut;
import landfall.thread.Side;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Worked;
import org.jspecify.annotations.Nullable;

/**
 * What the call-out says of its hole.
 *
 * @param minor limits of the hole
 * @param drill the drill for it, from the usual drawers
 * @param lead advance in one turn
 * @param stack of depths in a blind hole, without room for chips; null when no depth was told
 */
public record HoleFacts(
        Limits minor, Drilled drill, Length lead, @Nullable DepthStack stack) {
    static final Rule LEAD = Rule.given("L_y", "mm", "lead: advance in one turn");

    /** Empty for external and taper threads; with the stack of depths when a depth is known. */
    static Optional<HoleFacts> of(CallOut callOut, Known known, Pen pen) {
        if (callOut.limits(Side.INTERNAL, Pen.NONE).isEmpty()) {
            return Optional.empty();
        }
        Tap tap = known.tap();
        HoleWish wish = HoleWish.of(callOut)
                .at(new HoleWish.Place(known.job().depth(), HoleEnd.BLIND, null))
                .with(new HoleWish.Tools(
                        null, null, tap == null ? null : tap.chamfer().threads(), null));
        if (!(HoleChoice.of(wish) instanceof Answer.Of<Worked<HoleChoice>> of)) {
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
                callOut.thread().lead().perTurn(),
                hole.value().depth()));
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
        facts.put("stack", Fact.plain(stackWords()));
    }

    private String stackWords() {
        if (stack == null) {
            return "Ask hole with the depth: thread, chamfer, room and drill point are added up there.";
        }
        return "Thread to " + stack.fullThread().words() + ", the tap's point to "
                + stack.tapPoint().words() + ": the full drill diameter must go to "
                + stack.drill().words() + " at least, more where chips stay.";
    }

    /** The hole that the drill leaves. */
    Length expected() {
        return Length.ofMm(drill.expected().expected());
    }
}
