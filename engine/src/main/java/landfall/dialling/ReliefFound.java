// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

import landfall.quantity.Angle;
import landfall.quantity.Length;

/**
 * The relief found on the tap, and how it will work.
 *
 * @param fall radially, per radian of land angle
 * @param working relief left when the tap advances, square to the edge at the middle of the chamfer
 * @param ground static relief, square to the edge
 * @param wanted working relief that it is judged by
 * @param asItWas rises over the land that would grind the same again
 * @param verdict whether to set it like it was
 */
public record ReliefFound(
        Length fall, FittedAngle working, Angle ground, Angle wanted, AsItWas asItWas, Verdict verdict) {
    /**
     * What a fixture would have to rise over the land to grind the relief that is on the tap, by one slide alone.
     *
     * @param axialOnly along the axis
     * @param radialOnly square to the axis
     * @param squareOnly square to the chamfer
     */
    public record AsItWas(Length axialOnly, Length radialOnly, Length squareOnly) {}

    /** Common practice knows relief to two degrees, no better. */
    static final double PRACTICE_DEG = 2;

    /** What becomes of a tap that is ground like that again. */
    public enum Verdict {
        /** No working relief: the heel rubs on the cut. */
        RUBS,
        /** The land begins to fall only behind a bare margin, which rubs; the figures are of the fall behind it. */
        BARE_MARGIN,
        /** Nothing or little; these readings cannot tell rubbing from cutting. */
        MAY_RUB,
        /** More than two degrees under what is wanted. */
        LITTLE,
        /** Within two degrees of what is wanted. */
        SOUND,
        /** More than two degrees over what is wanted: a weak edge that chatters and chips. */
        MUCH
    }

    static Verdict judge(FittedAngle working, Angle wanted, boolean bareMargin) {
        double value = working.value().deg();
        double uncertainty = working.uncertainty().deg();
        if (value + uncertainty < 0) {
            return Verdict.RUBS;
        }
        if (bareMargin) {
            return Verdict.BARE_MARGIN;
        }
        if (value - uncertainty < 0) {
            return Verdict.MAY_RUB;
        }
        if (value < wanted.deg() - PRACTICE_DEG) {
            return Verdict.LITTLE;
        }
        return value <= wanted.deg() + PRACTICE_DEG ? Verdict.SOUND : Verdict.MUCH;
    }

    /**
     * Working relief wanted when nothing else is asked, common practice: 6 degrees, 8 for chamfers over 20 degrees, 5
     * under 5.5.
     */
    static Angle usual(Angle chamfer) {
        if (chamfer.deg() > 20) {
            return Angle.ofDeg(8);
        }
        return Angle.ofDeg(chamfer.deg() < 5.5 ? 5 : 6);
    }
}
