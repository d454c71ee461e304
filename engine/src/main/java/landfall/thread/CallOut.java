// SPDX-License-Identifier: Apache-2.0
package landfall.thread;

import java.util.List;
import java.util.Optional;
import landfall.fault.Caution;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.working.Pen;

/**
 * A call-out as it was read: a thread, and what its note asks for. Each family has its own.
 *
 * <p>{@code CallOuts.read(normal())} gives an equal call-out, for every call-out.
 */
public interface CallOut {
    ScrewThread thread();

    /**
     * The normal form in ASCII, such as {@code M8x1.25-6H} or {@code 1/4-20 UNC-2B}. A class that was not given stays
     * out.
     */
    String normal();

    /** The classes named in the call-out; empty when none is. */
    List<String> classes();

    /**
     * Limits of one side: of the class named, or of the usual class when none is; empty when the class names the other
     * side only.
     */
    Optional<SideLimits> limits(Side side, Pen pen);

    /** The same with a choice of rounding; families with one rule of rounding have one answer. */
    default Optional<SideLimits> limits(Side side, MinorRounding rounding, Pen pen) {
        return limits(side, pen);
    }

    /**
     * The same call-out as if it named no class, so that both sides have limits; itself in families without classes.
     */
    default CallOut withoutClass() {
        return this;
    }

    /**
     * The limits that a hole tapped over so long an engagement should keep: those of the minor diameter, moved where
     * the family's standard moves them. Empty when the class names the external side only.
     */
    default Optional<Limits> hole(Length engagement, Pen pen) {
        return limits(Side.INTERNAL, pen).map(SideLimits::minor);
    }

    /** What a standard states of the external thread beside its limits; empty in most families. */
    default Optional<ExternalExtras> externalExtras(Pen pen) {
        return Optional.empty();
    }

    /** Gauge planes and turns of a taper thread; empty in parallel families. */
    default Optional<Taper> taper(Pen pen) {
        return Optional.empty();
    }

    /** How much may be cut off crest and root each, where the standard states it; empty in most families. */
    default Optional<Limits> truncation(Pen pen) {
        return Optional.empty();
    }

    /** What a reader must be told about this thread: tables left blank, remembered figures, traps. */
    List<Caution> cautions();
}
