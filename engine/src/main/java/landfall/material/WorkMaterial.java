// SPDX-License-Identifier: Apache-2.0
package landfall.material;

import java.util.List;
import landfall.quantity.Angle;

/**
 * A material that is tapped.
 *
 * @param id short stable name
 * @param names as it is called elsewhere
 * @param relief chamfer relief, static, in the plane square to the axis
 */
public record WorkMaterial(String id, List<String> names, ReliefRange relief) {
    public WorkMaterial {
        names = List.copyOf(names);
    }

    /**
     * A range of chamfer relief.
     *
     * @param trust of the figures, as the list marks them
     */
    public record ReliefRange(Angle least, Angle greatest, String trust) {
        public Angle middle() {
            return least.plus(greatest).times(0.5);
        }
    }
}
