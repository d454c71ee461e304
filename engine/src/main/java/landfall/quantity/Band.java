// SPDX-License-Identifier: Apache-2.0
package landfall.quantity;

/** An estimate: the expected figure between a low and a high one, all in one unit that the context names. */
public record Band(double low, double expected, double high) {
    public Band {
        if (!(low <= expected && expected <= high)) {
            throw new IllegalArgumentException("band is out of order: " + low + ", " + expected + ", " + high);
        }
    }

    public Band times(double factor) {
        return factor >= 0
                ? new Band(low * factor, expected * factor, high * factor)
                : new Band(high * factor, expected * factor, low * factor);
    }
}
