// SPDX-License-Identifier: Apache-2.0
package landfall.app.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import landfall.cards.spread.SpreadCsv;
import landfall.cards.spread.SpreadSetup;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.spread.Run;
import landfall.spread.Summary;
import org.jspecify.annotations.Nullable;

/** Runs, and writes the set-ups themselves to a file on the way where one was asked for. */
final class SpreadRows {
    private SpreadRows() {}

    /** @param csv name of the file; empty for none. Going on adds to the file that the stopped run had begun. */
    static Answer<Summary> run(SpreadSetup setup, @Nullable Summary from, String csv, int threads, Run.Watch watch) {
        if (csv.isEmpty()) {
            return Answer.of(setup.run(threads).goOn(from, watch));
        }
        long before = from == null ? 0 : from.samples();
        try (SpreadCsv rows = SpreadCsv.open(setup, Path.of(csv), before)) {
            return Answer.of(setup.run(threads).goOn(from, new Run.Watch() {
                @Override
                public boolean isStopped() {
                    return watch.isStopped();
                }

                @Override
                public void sofar(Summary summary) {
                    watch.sofar(summary);
                }

                @Override
                public void rows(long first, double[][] inputs, double[][] results) {
                    rows.write(first, inputs, results);
                }
            }));
        } catch (IOException | UncheckedIOException | InvalidPathException e) {
            return Answer.refused(new Finding(
                    "--csv",
                    csv,
                    "cannot be written: " + e.getMessage(),
                    "name a file in a folder that is there and can be written to; to go on, the one that was begun"));
        }
    }
}
