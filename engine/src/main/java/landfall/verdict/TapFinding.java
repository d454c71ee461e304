// SPDX-License-Identifier: Apache-2.0
package landfall.verdict;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import landfall.fault.Caution;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.quantity.Measured;
import landfall.tap.mark.TapZone;
import landfall.thread.CallOut;
import landfall.thread.Side;
import landfall.thread.SideLimits;
import landfall.verdict.Found.OfTap;
import landfall.verdict.Found.Worn;
import landfall.working.Pen;
import org.jspecify.annotations.Nullable;

/** The verdict on a tap: in its own limits, worn, and what hole it will cut. */
final class TapFinding {
    private final CallOut callOut;
    private final OnBench.ATap tap;
    private final @Nullable Measured pitch;
    private final Pen pen;
    private final List<Judged> judged = new ArrayList<>();
    private final List<Caution> cautions = new ArrayList<>();

    TapFinding(CallOut callOut, OnBench.ATap tap, @Nullable Measured pitch, Pen pen) {
        this.callOut = callOut;
        this.tap = tap;
        this.pitch = pitch;
        this.pen = pen;
    }

    Found found() {
        TapZone zone = tap.mark() == null ? null : TapZone.of(tap.mark(), callOut, pen);
        Verdict inLimits = null;
        Worn worn = null;
        if (zone != null) {
            cautions.addAll(zone.cautions());
            against("pitch diameter of the tap", pitch, zone.pitch());
            against("major diameter of the tap", tap.crest(), zone.major());
            inLimits = judged.stream().map(Judged::verdict).reduce(Verdict::and).orElse(null);
            worn = worn();
        }
        CutHole hole = hole();
        Verdict verdict = hole != null ? hole.verdict() : inLimits;
        handSet(worn);
        return new Found("tap", verdict, judged, new OfTap(zone, inLimits, worn, hole), null, cautions);
    }

    private void against(String what, @Nullable Measured found, Limits limits) {
        if (found != null && (limits.min() != null || limits.max() != null)) {
            judged.add(Judged.of(what, found, limits, pen));
        }
    }

    /**
     * Worn is under the least: of the pitch diameter, or of the crests. The first taps of a hand set are so by design,
     * so an undersize tap is not called worn before its rings are known.
     */
    private @Nullable Worn worn() {
        Worn under = judged.stream()
                .map(each -> worn(
                        Optional.ofNullable(each.measured()).orElseThrow(),
                        each.limits().min()))
                .max(Worn::compareTo)
                .orElse(null);
        if (under == null || under == Worn.NO || isLast()) {
            return under;
        }
        return tap.rings() == null ? Worn.PERHAPS : Worn.BY_DESIGN;
    }

    /** No rings, or three: a tap by itself, or the last of a hand set. */
    private boolean isLast() {
        Integer rings = tap.rings();
        return rings != null && (rings == 0 || rings == 3);
    }

    private static Worn worn(Measured found, @Nullable Length least) {
        return switch (Verdict.atLeast(found, least)) {
            case GO -> Worn.NO;
            case BORDERLINE -> Worn.PERHAPS;
            case NOT_GO -> Worn.YES;
        };
    }

    private @Nullable CutHole hole() {
        Optional<SideLimits> product = callOut.limits(Side.INTERNAL, Pen.NONE);
        if (pitch == null || product.isEmpty()) {
            return null;
        }
        cautions.add(new Caution(
                "holeIsAnEstimate",
                "What the tap cuts lies between its own size (held stiffly, in iron and brass) and"
                        + " that and the run-out of"
                        + " its chamfer (floating). Thin walls and springy metals close in and may"
                        + " come out under it: gauge"
                        + " the first hole.",
                "E_h"));
        return CutHole.of(
                pitch, callOut.thread().major(), tap.runOut(), product.get().pitch(), pen);
    }

    private void handSet(@Nullable Worn worn) {
        Integer rings = tap.rings();
        if (worn == null || worn == Worn.NO || isLast()) {
            return;
        }
        cautions.add(
                rings == null
                        ? new Caution(
                                "ringsNotTold",
                                "Under its limits. The first and second taps of a hand set are so"
                                        + " by design: look for rings"
                                        + " round the shank before calling it worn.",
                                "rings")
                        : new Caution(
                                "handSet",
                                ("With %d ring%s it is not the last of a hand set: it is undersize"
                                                        + " by design, and only the")
                                                .formatted(rings, rings == 1 ? "" : "s")
                                        + " last tap makes the size.",
                                "rings"));
    }
}
