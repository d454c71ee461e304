// SPDX-License-Identifier: Apache-2.0
package landfall.material;

/** A range as a list gives it; a single figure has two equal ends. */
public record Between<Q extends Comparable<Q>>(Q least, Q greatest) {
    public Between {
        if (least.compareTo(greatest) > 0) {
            throw new IllegalArgumentException("range is out of order: " + least + " to " + greatest);
        }
    }
}
