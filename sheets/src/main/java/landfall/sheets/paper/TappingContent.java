// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.paper;

import java.util.List;
import landfall.sheets.draw.Drawing;
import landfall.sheets.paper.SheetContent.Cautions;
import landfall.sheets.paper.SheetContent.Fact;
import landfall.sheets.paper.SheetContent.Heading;
import landfall.sheets.paper.SheetContent.Keys;
import landfall.sheets.paper.SheetContent.Tick;

/**
 * What a tapping sheet says: already rounded, already in words.
 *
 * @param heading the call-out, the tap, the material
 * @param keys drill, spindle, feed, torque, margin; and whether the tap holds
 * @param pictures the sketches
 * @param facts torque, chips, speed, how it is turned, what was assumed
 * @param work steps in order, and cautions
 * @param working the figures that the sheet rests on
 */
record TappingContent(Heading heading, Keys keys, Pictures pictures, List<Fact> facts, Work work, List<Line> working) {
    /** The drawings. */
    record Pictures(Drawing hole, Drawing torque, Drawing slices, Drawing section) {}

    /** What is done, in order, and what to beware of. */
    record Work(List<Tick> steps, Cautions cautions) {}

    /** One figure of the working: what it is, its formula, its value with unit, where it comes from. */
    record Line(String means, String formula, String value, String source) {}
}
