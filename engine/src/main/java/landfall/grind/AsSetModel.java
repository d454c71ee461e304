// SPDX-License-Identifier: Apache-2.0
package landfall.grind;

import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import landfall.spread.Model;
import landfall.working.Pen;

/**
 * The working relief that comes out of a fixture as it is set, for many settings of one set-up: {@link AsSet} by its
 * array form. Inputs are degrees and millimetres, as the laws of a run hold them.
 */
public final class AsSetModel implements Model {
    private final AsSetCurve curve;
    private final List<Integer> places;
    private final List<Double> still;

    /** What can be set on a fixture. */
    public enum Dial {
        SWIVEL,
        AXIAL,
        RADIAL
    }

    private AsSetModel(AsSetCurve curve, List<Integer> places, List<Double> still) {
        this.curve = curve;
        this.places = places;
        this.still = still;
    }

    /**
     * @param read what stands still; what is null is taken as the set-up asks for
     * @param inputs which setting each input of the run is
     */
    public static AsSetModel of(GrindSetup setup, AsSet.Read read, List<Dial> inputs) {
        AsSet.Dials dials = AsSet.of(setup, read, Pen.NONE).setting();
        List<Integer> places = Arrays.stream(Dial.values()).map(inputs::indexOf).toList();
        return new AsSetModel(
                AsSetCurve.of(setup),
                places,
                List.of(dials.swivel().deg(), dials.axial().mm(), dials.radial().mm()));
    }

    @Override
    public void answer(double[][] inputs, double[][] results, Consumer<String> refused) {
        int size = results[0].length;
        curve.working(column(0, inputs, size), column(1, inputs, size), column(2, inputs, size), results[0]);
        for (int result = 1; result < results.length; result++) {
            System.arraycopy(results[0], 0, results[result], 0, size);
        }
    }

    private double[] column(int dial, double[][] inputs, int size) {
        if (places.get(dial) >= 0) {
            return inputs[places.get(dial)];
        }
        double[] same = new double[size];
        Arrays.fill(same, still.get(dial));
        return same;
    }
}
