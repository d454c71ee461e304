// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import landfall.envelope.ChamferGround;
import landfall.envelope.Errors;
import landfall.envelope.GrindRun;
import landfall.grind.GrindSetup;

/** A set-up with what was told to be amiss in chucking, cam and wheel: what pictures, bodies and paper are made of. */
public record GrindTrial(GrindSetup setup, Errors errors) {
    /** The run of it. */
    public GrindRun run() {
        return GrindRun.of(setup, errors);
    }

    /** The whole chamfer that it leaves. */
    public ChamferGround ground() {
        return ChamferGround.of(setup, errors);
    }
}
