// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

import java.util.Arrays;
import java.util.List;
import landfall.grind.CamProfile;
import landfall.quantity.Angle;

/**
 * The columns of the model: constant, slope, E, F, then the heights of all lands read but the last, whose height is
 * minus their sum.
 */
final class LandModel {
    final Terms terms;
    final int flutes;
    final int[] lands;
    final double[][] rows;
    final Design design;
    private final CamProfile cam;

    LandModel(Readings readings, CamProfile cam, Terms terms) {
        this.terms = terms;
        this.cam = cam;
        flutes = readings.flutes();
        lands = readings.lands();
        List<Reading> list = readings.list();
        rows = new double[list.size()][];
        for (int i = 0; i < rows.length; i++) {
            rows[i] = row(list.get(i));
        }
        design = new Design(rows);
    }

    int size() {
        return 1 + (terms.slope ? 1 : 0) + (terms.runOut ? 2 : 0) + (terms.heights ? lands.length - 1 : 0);
    }

    private double[] row(Reading reading) {
        double[] row = surface(reading.land(), reading.angle());
        row[0] = 1;
        return row;
    }

    /** Weights of the surface's height above the mean of the lands at a place: all terms but the constant. */
    double[] surface(int land, Angle angle) {
        double[] row = new double[size()];
        if (terms.slope) {
            row[1] = cam.at(angle);
        }
        if (terms.runOut) {
            double round = Math.toRadians(360.0 * (land - 1) / flutes) + angle.rad();
            row[firstOfRunOut()] = Math.cos(round);
            row[firstOfRunOut() + 1] = Math.sin(round);
        }
        if (terms.heights) {
            add(row, land);
        }
        return row;
    }

    /** Weights of the edge of a land above the mean of the lands. */
    double[] edge(int land) {
        double[] row = surface(land, Angle.ZERO);
        if (terms.slope) {
            row[1] = 0;
        }
        return row;
    }

    double[] slope() {
        return unit(1);
    }

    double[] cosine() {
        return unit(firstOfRunOut());
    }

    double[] sine() {
        return unit(firstOfRunOut() + 1);
    }

    double[] height(int land) {
        double[] row = new double[size()];
        add(row, land);
        return row;
    }

    private int firstOfRunOut() {
        return terms.slope ? 2 : 1;
    }

    private double[] unit(int at) {
        double[] row = new double[size()];
        row[at] = 1;
        return row;
    }

    private void add(double[] row, int land) {
        int first = firstOfRunOut() + (terms.runOut ? 2 : 0);
        int at = Arrays.binarySearch(lands, land);
        if (at < lands.length - 1) {
            row[first + at] += 1;
        } else {
            for (int j = 0; j < lands.length - 1; j++) {
                row[first + j] -= 1;
            }
        }
    }
}
