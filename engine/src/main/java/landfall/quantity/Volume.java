// SPDX-License-Identifier: Apache-2.0
package landfall.quantity;

/** A volume, held in cubic millimetres. */
public record Volume(double mm3) {
    public Volume {
        if (!Double.isFinite(mm3)) {
            throw new IllegalArgumentException("volume is not a finite number: " + mm3);
        }
    }

    public static Volume ofMm3(double mm3) {
        return new Volume(mm3);
    }
}
