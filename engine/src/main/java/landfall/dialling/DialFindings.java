// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

import java.util.List;
import landfall.fault.Caution;
import landfall.grind.Place;
import landfall.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * What the readings tell, and what to do about it.
 *
 * @param place where the dial stood
 * @param fits the fit and what stands beside it
 * @param against run-out less the reference; none without reference readings
 * @param lands height, edge and share of each
 * @param relief found on the tap; only from a dial on the chamfer at rest
 * @param swivel its error; only from readings along the chamfer
 * @param course the fit drawn out beside the readings
 * @param mend what to turn, and what the dial then reads
 * @param cautions what these readings cannot tell, and which would
 */
public record DialFindings(
        Place place,
        FitsFound fits,
        @Nullable Against against,
        LandsFound lands,
        @Nullable ReliefFound relief,
        @Nullable Swivel swivel,
        FitCourse course,
        Mend mend,
        List<Caution> cautions) {

    /**
     * What to turn, and what the dial then reads.
     *
     * @param corrections in the order to make them
     * @param wanted slope that this dial should show, per radian; none where nothing tells it
     * @param targets what this dial should read from edge to heel, zero at the edge; empty without a wanted slope
     * @param foreseen what it shows now and after each correction
     */
    public record Mend(
            List<Correction> corrections, @Nullable Length wanted, List<Target> targets, List<Foreseen> foreseen) {
        static final Mend NONE = new Mend(List.of(), null, List.of(), List.of());

        public Mend {
            corrections = List.copyOf(corrections);
            targets = List.copyOf(targets);
            foreseen = List.copyOf(foreseen);
        }
    }

    public DialFindings {
        cautions = List.copyOf(cautions);
    }

    public List<Correction> corrections() {
        return mend.corrections();
    }

    public List<Target> targets() {
        return mend.targets();
    }

    /** Change of the reading per radian of land angle, sign as read. */
    public Fitted slope() {
        return fits.main().slope();
    }

    /** Run-out against the reference where there is one, else as read; none where it is not told. */
    public @Nullable RunOut runOut() {
        return against != null ? against.net() : fits.main().runOut();
    }

    DialFindings with(Mend more) {
        return new DialFindings(place, fits, against, lands, relief, swivel, course, more, cautions);
    }

    DialFindings with(List<Caution> more) {
        return new DialFindings(place, fits, against, lands, relief, swivel, course, mend, more);
    }
}
