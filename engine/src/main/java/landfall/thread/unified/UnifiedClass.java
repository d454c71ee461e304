// SPDX-License-Identifier: Apache-2.0
package landfall.thread.unified;

import java.util.Optional;
import landfall.thread.Side;

/** Classes of fit: 1 loose, 2 general, 3 close; A outside, B inside. */
public enum UnifiedClass {
    A1("1A", Side.EXTERNAL, 1500),
    A2("2A", Side.EXTERNAL, 1000),
    A3("3A", Side.EXTERNAL, 750),
    B1("1B", Side.INTERNAL, 1950),
    B2("2B", Side.INTERNAL, 1300),
    B3("3B", Side.INTERNAL, 975);

    private final String code;
    private final Side side;
    private final int thousandths;

    UnifiedClass(String code, Side side, int thousandths) {
        this.code = code;
        this.side = side;
        this.thousandths = thousandths;
    }

    public String code() {
        return code;
    }

    public Side side() {
        return side;
    }

    /** The pitch diameter tolerance as thousandths of that of class 2A. */
    int thousandths() {
        return thousandths;
    }

    boolean isClose() {
        return this == A3 || this == B3;
    }

    boolean isLoose() {
        return this == A1 || this == B1;
    }

    /** The class of a digit and a letter as typed in capitals; empty when there is none. */
    public static Optional<UnifiedClass> of(char digit, char letter) {
        for (UnifiedClass each : values()) {
            if (each.code.charAt(0) == digit && each.code.charAt(1) == letter) {
                return Optional.of(each);
            }
        }
        return Optional.empty();
    }
}
