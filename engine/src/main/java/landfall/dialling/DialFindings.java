// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

import java.util.List;
import landfall.fault.Caution;
import landfall.grind.Place;
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
 * @param corrections in the order to make them
 * @param targets what this dial should read afterwards; empty where nothing is wanted
 * @param course the fit drawn out beside the readings
 * @param cautions what these readings cannot tell, and which would
 */
public record DialFindings(
        Place place,
        FitsFound fits,
        @Nullable Against against,
        LandsFound lands,
        @Nullable ReliefFound relief,
        @Nullable Swivel swivel,
        List<Correction> corrections,
        List<Target> targets,
        FitCourse course,
        List<Caution> cautions) {

    public DialFindings {
        corrections = List.copyOf(corrections);
        targets = List.copyOf(targets);
        cautions = List.copyOf(cautions);
    }

    /** Change of the reading per radian of land angle, sign as read. */
    public Fitted slope() {
        return fits.main().slope();
    }

    /** Run-out against the reference where there is one, else as read; none where it is not told. */
    public @Nullable RunOut runOut() {
        return against != null ? against.net() : fits.main().runOut();
    }
}
