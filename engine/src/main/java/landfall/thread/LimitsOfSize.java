// SPDX-License-Identifier: Apache-2.0
package landfall.thread;

import java.util.List;
import java.util.Optional;
import landfall.fault.Caution;
import landfall.quantity.Limits;
import landfall.working.Pen;
import landfall.working.Worked;

/**
 * What a call-out allows: the whole answer to "what does this note on the drawing mean?".
 *
 * <p>Family, hand, pitch, starts and lead stand in {@code callOut.thread()}. A side is empty when the call-out's class
 * names the other one; a taper thread has {@code taper} and no sides.
 *
 * @param truncation of crest and root each, where the standard states it
 * @param fit with the side that is not named taken in its usual class; empty where a family has limits of one side only
 */
public record LimitsOfSize(
        CallOut callOut,
        Optional<SideLimits> internal,
        Optional<SideLimits> external,
        Optional<ExternalExtras> extras,
        Optional<Taper> taper,
        Optional<Limits> truncation,
        Optional<Fit> fit) {

    public static LimitsOfSize of(CallOut callOut, Pen pen) {
        return of(callOut, MinorRounding.CURRENT, pen);
    }

    public static LimitsOfSize of(CallOut callOut, MinorRounding rounding, Pen pen) {
        Optional<SideLimits> external = callOut.limits(Side.EXTERNAL, rounding, pen);
        Optional<SideLimits> internal = callOut.limits(Side.INTERNAL, rounding, pen);
        Optional<ExternalExtras> extras = external.isPresent() ? callOut.externalExtras(pen) : Optional.empty();
        return new LimitsOfSize(
                callOut,
                internal,
                external,
                extras,
                callOut.taper(pen),
                callOut.truncation(pen),
                Fit.of(callOut, rounding, pen));
    }

    /** The answer with its working. */
    public static Worked<LimitsOfSize> worked(CallOut callOut, MinorRounding rounding) {
        return Worked.of(pen -> of(callOut, rounding, pen));
    }

    public List<Caution> cautions() {
        return callOut.cautions();
    }
}
