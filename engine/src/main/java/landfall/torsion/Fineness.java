// SPDX-License-Identifier: Apache-2.0
package landfall.torsion;

import java.util.ArrayList;
import java.util.List;

/**
 * How finely an outline is divided.
 *
 * @param rule Gauss points of a panel
 * @param panelsPerRadius panels on a straight edge as long as the section's radius
 * @param halvings of the panel at a corner, each towards the corner
 */
record Fineness(GaussRule rule, double panelsPerRadius, int halvings) {
    /** To 0.01 % on the sections of taps; docs/methods/torsion.md shows the convergence. */
    static final Fineness USUAL = new Fineness(new GaussRule(7), 1.6, 4);

    static Fineness of(int points, double panelsPerRadius, int halvings) {
        return new Fineness(new GaussRule(points), panelsPerRadius, halvings);
    }

    /** One panel turns at most this far. */
    private static final double TURN = Math.toRadians(50);

    /** Ends of the panels of an edge, t from 0 to 1. */
    List<Double> ends(Edge edge, double radius, boolean cornerAtStart, boolean cornerAtEnd) {
        double wanted = Math.max(panelsPerRadius * edge.length() / radius, edge.turn() * panelsPerRadius / 1.6 / TURN);
        int panels = Math.max((int) Math.ceil(wanted), cornerAtStart && cornerAtEnd ? 2 : 1);
        List<Double> ends = new ArrayList<>();
        ends.add(0.0);
        if (cornerAtStart) {
            for (int i = halvings; i >= 1; i--) {
                ends.add(Math.pow(0.5, i) / panels);
            }
        }
        for (int i = 1; i < panels; i++) {
            ends.add((double) i / panels);
        }
        if (cornerAtEnd) {
            for (int i = 1; i <= halvings; i++) {
                ends.add(1 - Math.pow(0.5, i) / panels);
            }
        }
        ends.add(1.0);
        return ends;
    }
}
