// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

import java.util.List;
import landfall.fault.OutOfRange;
import landfall.quantity.Length;

/**
 * Readings along one edge of the chamfer: the table moved, the dial still and square to the table's travel.
 *
 * @param list at two places or more
 * @param resolution of the dial
 */
public record AlongChamfer(List<Spot> list, Length resolution) {
    /**
     * @param along place on the chamfer, growing from the point towards the shank
     * @param value as read, positive towards the stylus
     */
    public record Spot(Length along, Length value) {}

    public AlongChamfer {
        list = List.copyOf(list);
        if (list.stream().map(Spot::along).distinct().count() < 2 || resolution.mm() <= 0) {
            throw new OutOfRange(
                    "readings along the chamfer",
                    list.size() + " readings",
                    "at two or more places, with the dial's division",
                    "read at the point end and at the large end of one edge");
        }
    }
}
