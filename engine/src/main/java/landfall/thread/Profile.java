// SPDX-License-Identifier: Apache-2.0
package landfall.thread;

import landfall.quantity.Angle;

/**
 * The basic form of a thread in its axial plane. Depths are radial, as shares of the pitch.
 *
 * @param name as the standard calls it
 * @param includedAngle between the flanks
 * @param addendum from the basic major diameter to the pitch line
 * @param depth from the basic major to the basic minor diameter of the internal thread
 * @param crestFlat axial width at the basic major diameter
 * @param rootFlat axial width at the basic minor diameter, of the groove that the tap's tooth does not fill
 */
public record Profile(
        String name, Angle includedAngle, double addendum, double depth, double crestFlat, double rootFlat) {
    /** Height of the sharp triangle over the pitch at 60 degrees: sqrt(3)/2. */
    public static final double H_OVER_P = Math.sqrt(3) / 2;

    /** ISO 68-1 and the Unified basic profile: 60 degrees, H/8 off the crest, H/4 off the root. */
    public static final Profile ISO_60 =
            new Profile("60 deg", Angle.ofDeg(60), 3 * H_OVER_P / 8, 5 * H_OVER_P / 8, 1.0 / 8, 1.0 / 4);

    /** MJ and UNJ: as {@link #ISO_60}, with the internal thread cut off 5/16 H from the sharp root. */
    public static final Profile J_60 =
            new Profile("60 deg J", Angle.ofDeg(60), 3 * H_OVER_P / 8, 9 * H_OVER_P / 16, 1.0 / 8, 5.0 / 16);

    public Angle flankAngle() {
        return includedAngle.times(0.5);
    }
}
