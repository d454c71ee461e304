// SPDX-License-Identifier: Apache-2.0
package landfall.cards.spread;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import landfall.cards.ask.GrindAsk;
import landfall.fault.Answer;
import landfall.grind.AsSet;
import landfall.grind.AsSetModel;
import landfall.grind.GrindSetup;
import landfall.spread.Model;
import landfall.working.Worked;

/**
 * Set-ups whose watched result is a closed form of what varies: the working relief that comes out of a fixture as it is
 * set. Gives what the asker gives, to 1e-12; a block with a setting that the asker would refuse is left to it.
 */
final class ClosedForm implements Model {
    private static final String WORKING = "asSet.working";
    /** In the order of {@link AsSetModel.Dial}. */
    private static final List<String> SET =
            List.of(GrindAsk.SWIVEL.path(), GrindAsk.AXIAL.path(), GrindAsk.RADIAL.path());

    private final SpreadSetup setup;
    private final Model closed;

    private ClosedForm(SpreadSetup setup, Model closed) {
        this.setup = setup;
        this.closed = closed;
    }

    static Optional<Model> of(SpreadSetup setup) {
        boolean ofTheSetting = setup.wish().question().equals("grind")
                && setup.varied().stream().allMatch(varied -> SET.contains(varied.path()))
                && setup.watched().stream().allMatch(watched -> watched.path().equals(WORKING));
        if (!ofTheSetting) {
            return Optional.empty();
        }
        Answer<Worked<GrindSetup>> made = new GrindAsk().setup(setup.given());
        Answer<AsSet.Read> still = GrindAsk.read(setup.given());
        if (!(made instanceof Answer.Of<Worked<GrindSetup>> of) || !(still instanceof Answer.Of<AsSet.Read> read)) {
            return Optional.empty();
        }
        List<AsSetModel.Dial> inputs = setup.varied().stream()
                .map(varied -> AsSetModel.Dial.values()[SET.indexOf(varied.path())])
                .toList();
        return Optional.of(new ClosedForm(setup, AsSetModel.of(of.value().value(), read.value(), inputs)));
    }

    @Override
    public void answer(double[][] inputs, double[][] results, Consumer<String> refused) {
        boolean all = true;
        for (int input = 0; input < inputs.length; input++) {
            String path = setup.varied().get(input).path();
            double least = path.equals(SET.get(0)) ? GrindAsk.LEAST_SWIVEL : 0;
            double most = path.equals(SET.get(0)) ? GrindAsk.GREATEST_SWIVEL : GrindAsk.GREATEST_RISE;
            for (double value : inputs[input]) {
                all &= least <= value && value <= most;
            }
        }
        (all ? closed : setup.asked()).answer(inputs, results, refused);
    }
}
