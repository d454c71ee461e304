// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import java.util.List;
import landfall.envelope.GrindRun;
import landfall.fault.Caution;

/** A numerical run, and what it took for granted. */
record GrindRan(GrindRun run, List<Caution> assumed) {}
