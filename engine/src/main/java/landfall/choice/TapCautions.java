// SPDX-License-Identifier: Apache-2.0
package landfall.choice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import landfall.fault.Caution;

/** What must be said with a choice of taps. */
final class TapCautions {
    private static final List<Caution> ALWAYS = List.of(
            new Caution(
                    "shards",
                    "Broken taps are glass-hard, sharp and under stress: eye protection,"
                            + " no fingers. Swarf cuts: brush, not"
                            + " hand."),
            new Caution(
                    "practice",
                    "The ranking is common practice, not a standard: a tap on hand that has cut this well before is the"
                            + " better choice."));

    private TapCautions() {}

    static List<Caution> of(TapWish wish, Optional<Reach> reach) {
        List<Caution> cautions = new ArrayList<>();
        if (wish.place().end() == null) {
            cautions.add(new Caution("endAssumed", "Blind or through was not told: blind is taken.", ""));
        }
        if (wish.drive().byHand() == null) {
            cautions.add(new Caution("driveAssumed", "By hand or by machine was not told: a machine is taken.", ""));
        }
        if (wish.material() == null) {
            cautions.add(new Caution("materialAssumed", "No material was told: long chips are taken.", ""));
        }
        if (reach.isEmpty()) {
            cautions.add(
                    new Caution("noBlank", "No usual blank is held for this size: measure the reach of the tap.", ""));
        } else if (!reach.get().blank().read()) {
            cautions.add(new Caution(
                    "blankRemembered",
                    "The blank's lengths are from memory: measure the tap before you count on its reach.",
                    "l_r"));
        }
        cautions.addAll(ofTheTap(wish));
        cautions.addAll(wish.callOut().cautions());
        cautions.addAll(ALWAYS);
        return List.copyOf(cautions);
    }

    private static List<Caution> ofTheTap(TapWish wish) {
        List<Caution> cautions = new ArrayList<>();
        if (wish.byHand()) {
            cautions.add(new Caution(
                    "startSquare",
                    "Start square: guide block, or tap follower in a tailstock or quill."
                            + " Serial sets (ringed) are used in order"
                            + " and kept together: the first and second are undersize by design."));
        }
        switch (wish.callOut().thread().family()) {
            case ACME, STUB_ACME, TRAPEZOIDAL ->
                cautions.add(new Caution(
                        "powerThread",
                        "A trapezoidal thread takes out two to three times the metal of the coarse sharp thread of"
                                + " its diameter: a set of two or three taps, or a tandem tap that"
                                + " roughs and finishes; oil in plenty, slow, and ask"
                                + " cut for the torque.",
                        ""));
            case STI_INCH, STI_METRIC ->
                cautions.add(new Caution(
                        "insertTap",
                        "Only a tap marked STI (or EG) cuts this hole; its limit is that of the assembled thread, and a"
                                + " worn one soon makes the insert tight.",
                        ""));
            default -> {}
        }
        return cautions;
    }
}
