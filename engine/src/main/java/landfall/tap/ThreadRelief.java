// SPDX-License-Identifier: Apache-2.0
package landfall.tap;

import landfall.quantity.Angle;

/**
 * Relief of the thread form behind the cutting edge: the crest and the flanks fall towards the heel.
 *
 * @param slope angle of that fall, tangent against radial line; 0 when concentric
 * @param margin land angle behind the edge that stays concentric
 */
public record ThreadRelief(Kind kind, Angle slope, Angle margin) {
    /** The three forms of ASME B94.9. */
    public enum Kind {
        CONCENTRIC("concentric"),
        ECCENTRIC("eccentric"),
        CON_ECCENTRIC("con-eccentric");

        private final String code;

        Kind(String code) {
            this.code = code;
        }

        public String code() {
            return code;
        }
    }

    public static final ThreadRelief NONE = new ThreadRelief(Kind.CONCENTRIC, Angle.ZERO, Angle.ZERO);
}
