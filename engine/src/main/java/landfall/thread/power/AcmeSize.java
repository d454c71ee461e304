// SPDX-License-Identifier: Apache-2.0
package landfall.thread.power;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import landfall.quantity.Length;
import landfall.thread.Table;
import landfall.thread.scan.Cursor;
import landfall.thread.scan.InchHead;
import landfall.thread.scan.Numerals;

/** Diameter, pitch (both in 1e-8 in) and starts of an Acme thread. */
public record AcmeSize(long diameter, long pitch, int starts) {
    private static final List<AcmeSize> SERIES =
            Table.rows("acme-series").stream().map(AcmeSize::of).toList();
    private static final Set<AcmeSize> STANDARD = SERIES.stream().collect(Collectors.toUnmodifiableSet());

    private static AcmeSize of(List<String> row) {
        return new AcmeSize(
                Numerals.mixed(new Cursor(row.get(0))), InchHead.pitchOf(Numerals.decimal(new Cursor(row.get(1)))), 1);
    }

    static List<AcmeSize> standard() {
        return SERIES;
    }

    boolean isStandard() {
        return STANDARD.contains(new AcmeSize(diameter, pitch, 1));
    }

    double inches() {
        return (double) diameter / Numerals.ONE;
    }

    private long threadsPerInch() {
        long exact = Numerals.ONE * Numerals.ONE / pitch;
        long grain = Numerals.ONE / 1000;
        long rounded = (exact + grain / 2) / grain * grain;
        return rounded > 0 && InchHead.pitchOf(rounded) == pitch ? rounded : 0;
    }

    Length pitchLength() {
        long n = threadsPerInch();
        return n == 0
                ? Length.ofInch((double) pitch / Numerals.ONE)
                : Length.ofMm(Length.MM_PER_INCH * Numerals.ONE / n);
    }

    /** {@code 1/2-10}, or {@code 1.0000-0.2P-0.4L} with several starts. */
    String label() {
        long n = threadsPerInch();
        if (starts == 1 && n != 0) {
            String fraction = Numerals.asFraction(diameter);
            return (fraction.isEmpty() ? Numerals.atLeast(diameter, 4) : fraction) + "-" + Numerals.plain(n);
        }
        String single = Numerals.atLeast(diameter, 4) + "-" + Numerals.plain(pitch) + "P";
        return starts == 1 ? single : single + "-" + Numerals.plain(pitch * starts) + "L";
    }
}
