// SPDX-License-Identifier: Apache-2.0
package landfall.thread.unified;

import java.util.ArrayList;
import java.util.List;
import landfall.fault.Caution;
import landfall.thread.scan.Numerals;

/** What a reader of Unified limits must be told. */
final class UnifiedCautions {
    private static final long LARGEST_TABULATED = 6 * Numerals.ONE;
    private static final long QUARTER_INCH = Numerals.ONE / 4;

    private UnifiedCautions() {}

    static List<Caution> of(UnifiedCallOut callOut) {
        List<Caution> cautions = new ArrayList<>();
        UnifiedSize size = callOut.size();
        Series series = callOut.form().series();
        String name = callOut.normal();
        if (series == Series.UNS) {
            cautions.add(new Caution(
                    "specialThread",
                    "Not a standard pair of diameter and pitch: state the limits of size on the drawing; taps and "
                            + "gauges are made to order.",
                    name));
        }
        if (size.major() > LARGEST_TABULATED
                || callOut.hasClass(UnifiedClass::isLoose)
                        && (series != Series.UNC && series != Series.UNF || size.major() < QUARTER_INCH)) {
            cautions.add(new Caution(
                    "notTabulated",
                    "The standard tabulates no such class and size; these limits are by its formula.",
                    name));
        }
        if (size.starts() > 1) {
            cautions.add(new Caution(
                    "multiStartTolerance",
                    "Several starts: the tolerance is computed on the pitch, not the lead. Some users open it;"
                            + " agree it "
                            + "on the drawing.",
                    size.starts() + " starts"));
        }
        if (callOut.form().root().isJ()) {
            ofJ(name, cautions);
        }
        engagement(callOut, cautions);
        return List.copyOf(cautions);
    }

    private static void ofJ(String name, List<Caution> cautions) {
        cautions.add(new Caution(
                "minorToleranceNotHeld",
                "The rule for the greatest minor diameter of a UNJ hole is not held: take it from the "
                        + "drawing. The rest "
                        + "of UNJ is remembered.",
                name));
        cautions.add(new Caution(
                "mixing",
                "An ordinary UN tap cuts a UNJ hole; only the drilled hole is larger. A UNJ screw may "
                        + "foul a UN nut whose "
                        + "minor diameter is near its least.",
                name));
    }

    private static void engagement(UnifiedCallOut callOut, List<Caution> cautions) {
        long engagement = callOut.note().engagement();
        if (engagement == 0) {
            return;
        }
        long pitches = engagement / callOut.size().pitch();
        boolean ordinary =
                pitches >= 5 && pitches < 15 || engagement * 2 <= callOut.size().major() * 3;
        cautions.add(new Caution(
                ordinary ? "engagementStated" : "engagementUnusual",
                ordinary
                        ? "Tolerances are computed for the stated length of engagement. Over this length "
                                + "the standard "
                                + "tolerances may be used too."
                        : "Tolerances are computed for the stated length of engagement; it lies outside the"
                                + " lengths that "
                                + "standard tolerances serve, so the limits must stand on the drawing.",
                "LE " + Numerals.plain(engagement) + " in"));
    }
}
