// SPDX-License-Identifier: Apache-2.0
package landfall.quantity;

/** An area. Held in square millimetres. */
public record Area(double mm2) implements Comparable<Area> {
    public Area {
        if (!Double.isFinite(mm2)) {
            throw new IllegalArgumentException("area is not a finite number: " + mm2);
        }
    }

    public static Area ofMm2(double mm2) {
        return new Area(mm2);
    }

    public double inch2() {
        return mm2 / (Length.MM_PER_INCH * Length.MM_PER_INCH);
    }

    @Override
    public int compareTo(Area other) {
        return Double.compare(mm2, other.mm2);
    }
}
