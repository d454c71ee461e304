// SPDX-License-Identifier: Apache-2.0
package landfall.thread.pipe;

import java.util.ArrayList;
import java.util.List;
import landfall.fault.Caution;
import landfall.quantity.Length;
import landfall.thread.Family;
import landfall.thread.Hand;
import landfall.thread.Lead;
import landfall.thread.ScrewThread;

/** What G and R have in common. */
final class British {
    private British() {}

    static ScrewThread thread(Family family, PipeSize size, Hand hand) {
        return new ScrewThread(
                family,
                BritishRules.WHITWORTH,
                Length.ofMm(size.major()),
                new Lead(Length.ofMm(size.pitch()), 1),
                hand);
    }

    static List<Caution> cautions(PipeSize size, String name, Caution own) {
        List<Caution> cautions = new ArrayList<>();
        cautions.add(Joints.PRESSURE);
        cautions.add(own);
        cautions.add(Joints.mixing(name));
        if (size.remembered()) {
            cautions.add(new Caution("remembered", "The basic sizes of this thread are remembered, not read.", name));
        }
        return cautions;
    }
}
