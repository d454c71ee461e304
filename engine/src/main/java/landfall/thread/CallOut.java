// SPDX-License-Identifier: Apache-2.0
package landfall.thread;

import java.util.List;
import java.util.Optional;
import landfall.fault.Caution;
import landfall.working.Pen;

/**
 * A call-out as it was read: a thread, and what its note asks for. Each family has its own.
 *
 * <p>{@code parse(normal()).equals(this)} holds for every call-out.
 */
public interface CallOut {
    ScrewThread thread();

    /** The normal form in ASCII: {@code M8x1.25-6H}, {@code 1/4-20 UNC-2B}. A class that was not given stays out. */
    String normal();

    /** The classes named in the call-out; empty when none is. */
    List<String> classes();

    /**
     * Limits of one side: of the class named, or of the usual class when none is; empty when the class names the other
     * side only.
     */
    Optional<SideLimits> limits(Side side, Pen pen);

    /** What a reader must be told about this thread: tables left blank, remembered figures, traps. */
    List<Caution> cautions();
}
