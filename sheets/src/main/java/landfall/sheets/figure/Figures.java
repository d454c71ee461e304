// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.figure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import landfall.quantity.Angle;
import landfall.quantity.Area;
import landfall.quantity.Length;
import landfall.quantity.Rounding;
import landfall.quantity.Speed;
import landfall.quantity.UnitSystem;

/** Writes quantities in one system of units, the other beside it where asked. */
public record Figures(UnitSystem units) {
    private static final String MINUS = "\u2212";
    private static final String DIAMETER = "\u00d8";

    public boolean isInch() {
        return units == UnitSystem.INCH;
    }

    public String unit() {
        return isInch() ? "in" : "mm";
    }

    public Figures other() {
        return new Figures(isInch() ? UnitSystem.METRIC : UnitSystem.INCH);
    }

    /** Without its unit: inch to four places, metric to three. */
    public String bare(Length length) {
        return isInch() ? number(length.inch(), 4) : number(length.mm(), 3);
    }

    public String length(Length length) {
        return bare(length) + " " + unit();
    }

    /** A length of which a tenth of a millimetre is enough. */
    public String coarse(Length length) {
        return coarseBare(length) + " " + unit();
    }

    /** As {@link #coarse} without its unit. */
    public String coarseBare(Length length) {
        return isInch() ? number(length.inch(), 3) : number(length.mm(), 1);
    }

    /** Of a chip: metric to three places, inch to five. */
    public String area(Area area) {
        return isInch() ? number(area.inch2(), 5) + " in\u00b2" : number(area.mm2(), 3) + " mm\u00b2";
    }

    public String diameter(Length length) {
        return DIAMETER + bare(length);
    }

    /** A diameter as marked on a wheel: no more places than it has, with its unit. */
    public String plainDiameter(Length length) {
        return DIAMETER + plain(isInch() ? length.inch() : length.mm(), 3) + " " + unit();
    }

    /** With a sign unless it rounds to nothing. */
    public String signed(Length length) {
        String bare = bare(length);
        return bare.startsWith(MINUS) || isNought(bare) ? bare : "+" + bare;
    }

    private static boolean isNought(String bare) {
        return bare.chars().noneMatch(c -> c >= '1' && c <= '9');
    }

    public String angle(Angle angle) {
        return number(angle.deg(), 1) + "\u00b0";
    }

    /** An angle to a hundredth, for what is told but not set. */
    public String fineAngle(Angle angle) {
        return number(angle.deg(), 2) + "\u00b0";
    }

    /** To a hundredth without trailing zeros: what a swivel is set to. */
    public String plainAngle(Angle angle) {
        return plain(angle.deg(), 2) + "\u00b0";
    }

    public String speed(Speed speed) {
        return isInch() ? number(speed.ftPerMin(), 0) + " ft/min" : number(speed.mPerS(), 1) + " m/s";
    }

    /** Rounded half away from zero to so many places; a true minus; never minus nought. */
    public static String number(double value, int places) {
        BigDecimal rounded = Rounding.decimal(value).setScale(places, RoundingMode.HALF_UP);
        String text = rounded.abs().toPlainString();
        return rounded.signum() < 0 ? MINUS + text : text;
    }

    /** An estimate: so many significant digits, never more places than they need; whole above that. */
    public static String significant(double value, int digits) {
        if (value == 0) {
            return "0";
        }
        int whole = (int) Math.floor(Math.log10(Math.abs(value)) + 1e-12) + 1;
        return number(value, Math.max(0, digits - whole));
    }

    /** As {@link #number} without trailing zeros. */
    public static String plain(double value, int places) {
        String text = number(value, places);
        if (text.indexOf('.') < 0) {
            return text;
        }
        return text.replaceAll("0+$", "").replaceAll("\\.$", "");
    }
}
