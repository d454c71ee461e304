// SPDX-License-Identifier: Apache-2.0
package landfall.cut;

import java.util.ArrayList;
import java.util.List;
import landfall.chip.ChipLoad;
import landfall.chip.Slice;
import landfall.quantity.Band;
import landfall.quantity.Length;
import landfall.tap.Tap;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;

/**
 * Torque while the chamfer enters, turn by turn. What depth adds later (factor K_d) is not in it yet.
 *
 * @param turn turns since the first touch
 * @param depth of the chamfer by then
 * @param torque in N·m
 */
public record EntryTorque(int turn, Length depth, Band torque) {
    private static final Source MODEL = Source.of("derived", "docs/methods/tapping-torque.md");

    /** Rules of one turn's figures. */
    public record Rules(Rule depth, Rule low, Rule expected, Rule high) {}

    /** {@code shallow}: the full torque before depth adds to it. */
    static List<EntryTorque> of(ChipLoad load, Tap tap, Band shallow, Pen pen) {
        double perTurn =
                tap.thread().lead().perTurn().mm() / load.steps().spacing().mm();
        double whole = load.groove().area().mm2() * load.groove().radius().mm();
        List<EntryTorque> entry = new ArrayList<>();
        double moment = 0;
        int turn = 0;
        StringBuilder formula = new StringBuilder();
        for (Slice slice : load.slices()) {
            moment += slice.area().mm2() * slice.radius().mm();
            formula.append(formula.isEmpty() ? "" : " + ")
                    .append("A_s%d*r_s%d".formatted(slice.tooth(), slice.tooth()));
            boolean last = slice.tooth() == load.slices().size();
            if (last || slice.tooth() + 1 > (turn + 1) * perTurn + 1e-9) {
                turn++;
                entry.add(row(turn, new Share(formula.toString(), moment / whole), tap, shallow, pen));
            }
        }
        return entry;
    }

    /** Of the whole moment, with the formula of its teeth. */
    private record Share(String teeth, double value) {}

    private static EntryTorque row(int turn, Share share, Tap tap, Band shallow, Pen pen) {
        Rule reached = new Rule(
                "e_" + turn,
                "(%s)/(A_1*r_c)".formatted(share.teeth),
                "1",
                MODEL,
                Trust.DERIVED,
                "share of the torque after turn " + turn);
        double e = pen.write(reached, share.value);
        Rules rules = rules(turn);
        double depth =
                pen.write(rules.depth, turn * tap.thread().lead().perTurn().mm());
        Band torque = new Band(
                pen.write(rules.low, e * shallow.low()),
                pen.write(rules.expected, e * shallow.expected()),
                pen.write(rules.high, e * shallow.high()));
        return new EntryTorque(turn, Length.ofMm(depth), torque);
    }

    /** The rules of a turn: unique symbols, one formula. */
    public static Rules rules(int turn) {
        return new Rules(
                new Rule("z_e" + turn, turn + "*L", "mm", MODEL, Trust.DERIVED, "way since first touch, turn " + turn),
                torque("T_el" + turn, "e_" + turn + "*T_l/K_d", turn),
                torque("T_e" + turn, "e_" + turn + "*T/K_d", turn),
                torque("T_eh" + turn, "e_" + turn + "*T_h/K_d", turn));
    }

    private static Rule torque(String symbol, String formula, int turn) {
        return new Rule(symbol, formula, "N·m", MODEL, Trust.ESTIMATE, "torque after turn " + turn);
    }
}
