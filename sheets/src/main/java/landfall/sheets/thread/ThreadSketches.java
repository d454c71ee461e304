// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.thread;

import java.util.ArrayList;
import java.util.List;
import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Ink;
import landfall.sheets.figure.Figures;
import landfall.thread.LimitsOfSize;

/**
 * The sketches of one thread, those that its family has. Ids begin with a prefix, so that a page can hold the sketches
 * of two threads.
 */
public record ThreadSketches(LimitsOfSize limits, Figures figures, String prefix) {

    public List<Drawing> all(Ink ink) {
        List<Drawing> all = new ArrayList<>();
        all.add(new FormView(limits, figures).draw(prefix + "-form", ink));
        if (limits.internal().isPresent() || limits.external().isPresent()) {
            all.add(new LimitsView(limits, figures).draw(prefix + "-limits", ink));
        }
        if (limits.taper().isPresent()) {
            all.add(new TaperView(limits, figures).draw(prefix + "-taper", ink));
        } else {
            all.add(new ScrewView(limits, figures).draw(prefix + "-screw", ink));
        }
        return all;
    }
}
