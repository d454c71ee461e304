// SPDX-License-Identifier: Apache-2.0
package landfall.choice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import landfall.chip.ChipFlow;
import landfall.fault.Answer;
import landfall.fault.Caution;
import landfall.fault.Finding;
import landfall.quantity.Length;
import landfall.tap.FluteKind;
import landfall.thread.CallOut;
import landfall.thread.Hand;
import landfall.thread.Side;
import landfall.working.Pen;
import landfall.working.Worked;

/**
 * The whole answer to "which tap, and will it reach?".
 *
 * @param choices best first
 * @param limit of pitch diameter to look for
 * @param angles of the face and behind the chamfer, for the material
 * @param reach of a usual blank; empty where none is held
 */
public record TapAdvice(
        TapWish wish,
        List<TapChoice> choices,
        TapLimit limit,
        Optional<ToolAngles> angles,
        Optional<Reach> reach,
        List<Caution> cautions) {

    /** The advice, or why there is none. */
    public static Answer<Worked<TapAdvice>> of(TapWish wish) {
        CallOut callOut = wish.callOut();
        if (callOut.taper(Pen.NONE).isPresent()) {
            return refused(
                    callOut,
                    "is a taper thread: its whole body cuts, and one tap is made for it",
                    "take the tap of that pipe thread, and give it the larger torque of a taper tap");
        }
        if (callOut.limits(Side.INTERNAL, Pen.NONE).isEmpty()) {
            return refused(
                    callOut, "names the external thread only", "give the class of the hole, or leave the class out");
        }
        return Answer.of(Worked.of(pen -> compute(wish, pen)));
    }

    private static Answer<Worked<TapAdvice>> refused(CallOut callOut, String why, String mend) {
        return Answer.refused(new Finding("thread", callOut.normal(), why, mend));
    }

    private static TapAdvice compute(TapWish wish, Pen pen) {
        List<TapChoice> choices = new ArrayList<>();
        for (FluteKind kind : FluteKind.values()) {
            if (kind != FluteKind.FORMING
                    || wish.callOut().thread().profile().includedAngle().deg() == 60) {
                choices.add(choice(wish, kind));
            }
        }
        choices.sort(Comparator.comparingInt(TapChoice::points).reversed());
        Optional<Reach> reach = Reach.of(wish.callOut().thread(), wish.byHand(), pen);
        TapLimit limit = TapLimit.of(wish.callOut(), pen);
        Optional<ToolAngles> angles = Optional.ofNullable(wish.material()).map(found -> ToolAngles.of(found, pen));
        return new TapAdvice(
                wish,
                choices.stream().map(choice -> reached(choice, wish, reach)).toList(),
                limit,
                angles,
                reach,
                TapCautions.of(wish, reach));
    }

    private static TapChoice choice(TapWish wish, FluteKind kind) {
        Weighing weighing = new Weighing(wish, kind);
        return new TapChoice(
                kind,
                Lead.of(wish, kind),
                ChipFlow.of(kind, Hand.RIGHT),
                FluteCount.of(wish.callOut().thread(), kind),
                weighing.points(),
                Lead.words(wish, kind),
                weighing.reasons(),
                weighing.cautions());
    }

    /** The same choice with a word where the usual blank is too short for it. */
    private static TapChoice reached(TapChoice choice, TapWish wish, Optional<Reach> reach) {
        Length depth = wish.place().depth();
        if (depth == null || reach.isEmpty()) {
            return choice;
        }
        Length needed = depth.plus(
                wish.callOut().thread().pitch().times(choice.chamfer().usual()));
        if (needed.compareTo(reach.get().depth()) <= 0) {
            return choice;
        }
        List<String> cautions = new ArrayList<>(choice.cautions());
        cautions.add("Its point must go " + needed.words() + " deep, a usual tap reaches "
                + reach.get().depth().words() + ": take a long one.");
        return new TapChoice(
                choice.flutes(),
                choice.chamfer(),
                choice.flow(),
                choice.count(),
                choice.points(),
                choice.words(),
                choice.reasons(),
                List.copyOf(cautions));
    }
}
