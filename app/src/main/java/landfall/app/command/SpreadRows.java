// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import landfall.cards.spread.SpreadSetup;
import landfall.fault.Answer;
import landfall.spread.Run;
import landfall.spread.Summary;
import org.jspecify.annotations.Nullable;

/** Runs, and writes the set-ups themselves to a file on the way where one was asked for. */
final class SpreadRows {
    private SpreadRows() {}

    static Answer<Summary> run(SpreadSetup setup, @Nullable Summary from, String csv, int threads, Run.Watch watch) {
        return Answer.of(setup.run(threads).goOn(from, watch));
    }
}
