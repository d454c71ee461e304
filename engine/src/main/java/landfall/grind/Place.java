// SPDX-License-Identifier: Apache-2.0
package landfall.grind;

/** Where a dial stands, which settles what it reads. */
public enum Place {
    END("end", "on the end of the tap or spindle, on the axis", "+ towards the point"),
    SHANK(
            "shank",
            "on the shank or arbor, square to the axis, in the plane of the radial rise",
            "+ towards the stylus"),
    FLANK("flank", "on a thread flank, along the axis, stylus square to the radial rise", "+ towards the point"),
    CREST("crest", "on the crests, flat anvil over two or more of them", "+ towards the stylus"),
    CHAMFER_STILL("chamfer-still", "square to the chamfer, cam at rest", "+ towards the stylus"),
    CHAMFER_WORKING(
            "chamfer-working", "square to the chamfer, cam at work, in the wheel's place", "+ towards the stylus");

    private final String code;
    private final String stands;
    private final String sign;

    Place(String code, String stands, String sign) {
        this.code = code;
        this.stands = stands;
        this.sign = sign;
    }

    public String code() {
        return code;
    }

    /** Where the dial stands, in words. */
    public String stands() {
        return stands;
    }

    /** Which way a reading counts as positive. */
    public String sign() {
        return sign;
    }
}
