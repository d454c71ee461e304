// SPDX-License-Identifier: Apache-2.0
package landfall.identity;

import landfall.quantity.Length;
import landfall.thread.CallOut;
import landfall.thread.Hand;

/**
 * What the tap may be.
 *
 * @param name its call-out, with the hand that was seen
 * @param score share of all there is, this and {@code other} summing to 1
 * @param overNominal how far the crest stands over the basic major diameter
 */
public record Candidate(CallOut callOut, String name, double score, Length overNominal, String why) {
    /** Named with what was seen of its helix and its own call-out does not say. */
    Candidate wound(int starts, Hand hand) {
        boolean said = callOut.thread().lead().starts() == starts;
        String full = name + (said ? "" : ", " + starts + " starts") + (hand == Hand.LEFT ? "-LH" : "");
        return new Candidate(callOut, full, score, overNominal, why);
    }
}
