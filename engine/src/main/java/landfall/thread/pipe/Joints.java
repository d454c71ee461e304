// SPDX-License-Identifier: Apache-2.0
package landfall.thread.pipe;

import landfall.fault.Caution;

/** Cautions that every pipe thread carries. */
final class Joints {
    static final Caution PRESSURE = new Caution(
            "pressureJoint",
            "Threads that hold gas, steam, fuel, oxygen, refrigerant or pressure are under the local code, "
                    + "and in many places "
                    + "only a licensed person may make them. A gauge that fits proves no joint; the "
                    + "pressure test does.");

    private Joints() {}

    static Caution mixing(String name) {
        return new Caution(
                "mixing",
                "NPT is 60 degrees, G and R are 55, and their diameters differ: at 1/2 and 3/4 both have 14 "
                        + "an inch, so they start "
                        + "together and then leak. Never an NPT tap for a G or R hole, nor the other way round.",
                name);
    }
}
