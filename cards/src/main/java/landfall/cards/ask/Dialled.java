// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import java.util.List;
import landfall.dialling.DialAsk;
import landfall.dialling.DialFindings;
import landfall.fault.Caution;
import landfall.quantity.UnitSystem;
import landfall.tap.Tap;
import landfall.working.Worked;

/**
 * A set of readings, answered: for pictures and for paper.
 *
 * @param ask what the engine was asked
 * @param found with its working
 * @param cautions of the findings, and what was assumed
 */
public record Dialled(Tap tap, DialAsk ask, Worked<DialFindings> found, List<Caution> cautions, UnitSystem units) {
    public Dialled {
        cautions = List.copyOf(cautions);
    }
}
