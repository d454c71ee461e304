// SPDX-License-Identifier: Apache-2.0
package landfall.choice;

import landfall.quantity.Length;
import landfall.quantity.UnitSystem;
import landfall.tap.FluteKind;
import landfall.thread.ScrewThread;

/** Usual number of flutes by size and kind: from memory, common practice. */
final class FluteCount {
    private static final Length NUMBER_2 = Length.ofInch(0.086);
    private static final Length NUMBER_8 = Length.ofInch(0.164);
    private static final Length INCH = Length.ofInch(1);
    private static final double TWELVE = 12;
    private static final double THIRTY = 30;

    private FluteCount() {}

    static int of(ScrewThread thread, FluteKind kind) {
        Length major = thread.major();
        return switch (kind) {
            case FORMING -> 0;
            case SPIRAL_POINT -> major.compareTo(NUMBER_2) < 0 ? 2 : 3;
            case SPIRAL_RIGHT, SPIRAL_LEFT -> major.compareTo(NUMBER_2) < 0 ? 2 : major.mm() <= TWELVE ? 3 : 4;
            case STRAIGHT -> thread.family().system() == UnitSystem.INCH ? inch(thread) : metric(major);
        };
    }

    private static int inch(ScrewThread thread) {
        Length major = thread.major();
        if (major.compareTo(NUMBER_2) < 0) {
            return 2;
        }
        if (major.compareTo(NUMBER_8) < 0) {
            return 3;
        }
        boolean fine = thread.pitch().inch() <= 1.0 / 12 + 1e-9;
        return major.compareTo(INCH) > 0 && fine ? 6 : 4;
    }

    private static int metric(Length major) {
        if (major.mm() < 2) {
            return 2;
        }
        return major.mm() < TWELVE ? 3 : major.mm() <= THIRTY ? 4 : 5;
    }
}
