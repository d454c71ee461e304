// SPDX-License-Identifier: Apache-2.0
package landfall.choice;

import java.util.List;
import landfall.chip.ChipFlow;
import landfall.tap.FluteKind;

/**
 * One kind of tap for the hole, with what speaks for it and what against.
 *
 * @param flutes right-handed: the engine knows no hand
 * @param flow where the chips go
 * @param count usual number of flutes; 0 for a forming tap
 * @param points that the ranking gave
 * @param words of body and skin: thread relief and surface
 */
public record TapChoice(
        FluteKind flutes,
        ChamferForm chamfer,
        ChipFlow flow,
        int count,
        int points,
        Words words,
        List<String> reasons,
        List<String> cautions) {

    /** What to look for on the tap. */
    public record Words(String threadRelief, String surface) {}
}
