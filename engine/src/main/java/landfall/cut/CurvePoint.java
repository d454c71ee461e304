// SPDX-License-Identifier: Apache-2.0
package landfall.cut;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import landfall.cut.CutWish.Opening;
import landfall.quantity.Band;
import landfall.quantity.Length;
import landfall.tap.Tap;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;

/**
 * A point of the curve of torque over the way of the tap, counted from the first touch of its chamfer.
 *
 * <p>Straight lines lie between the points: up as the chamfer enters, on with the depth, down as the chamfer leaves a
 * through hole. In a hole that is not told to be through the last point is the start of the way back.
 *
 * @param torque in N·m
 */
public record CurvePoint(Phase phase, Length way, Band torque, Rules rules) {
    private static final Source MODEL = Source.of("derived", "docs/methods/tapping-torque.md");

    /** What the tap does. */
    public enum Phase {
        ENTERING,
        CUTTING,
        LEAVING,
        REVERSING;

        /** As written in JSON. */
        public String code() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** The rules of a point's figures. */
    public record Rules(Rule way, Rule low, Rule expected, Rule high) {}

    /** The torque fully engaged at full depth, and on reversal. */
    record Ends(Band full, Band back) {}

    static List<CurvePoint> of(Tap tap, CutWish wish, List<EntryTorque> entry, Ends ends, Pen pen) {
        List<CurvePoint> points = new ArrayList<>();
        for (EntryTorque turn : entry) {
            EntryTorque.Rules rules = EntryTorque.rules(turn.turn());
            Rules own = new Rules(rules.depth(), rules.low(), rules.expected(), rules.high());
            points.add(new CurvePoint(Phase.ENTERING, turn.depth(), turn.torque(), own));
        }
        EntryTorque entered = entry.get(entry.size() - 1);
        double d = tap.thread().major().mm();
        double depth = wish.depth().mm();
        double z = entered.depth().mm();
        if (depth > d) {
            Rules rules = rules("k1", "z_e" + entered.turn() + " + d", "T#/K_d", "one diameter deep");
            points.add(point(Phase.CUTTING, z + d, entered.torque(), rules, pen));
        }
        Rules whole = rules("k2", "z_e" + entered.turn() + " + L_d", "T#", "at full depth");
        points.add(point(Phase.CUTTING, z + depth, ends.full, whole, pen));
        if (wish.how().opening() == Opening.THROUGH) {
            leaving(tap, points, entry, ends.full, pen);
        } else {
            Rules back = rules("k3", "z_k2", "T_b#", "as it turns back");
            points.add(point(Phase.REVERSING, z + depth, ends.back, back, pen));
        }
        return points;
    }

    /** Teeth leave in the order in which they entered. */
    private static void leaving(Tap tap, List<CurvePoint> points, List<EntryTorque> entry, Band full, Pen pen) {
        double lead = tap.thread().lead().perTurn().mm();
        double from = points.get(points.size() - 1).way.mm();
        double shallow = entry.get(entry.size() - 1).torque().expected();
        for (EntryTorque turn : entry) {
            int i = turn.turn();
            double left = Math.max(0, 1 - turn.torque().expected() / shallow);
            Rules rules = rules(
                    "x" + i,
                    "z_k2 + %d*L".formatted(i),
                    "(1 - e_%d)*T#".formatted(i),
                    "turn %d of leaving".formatted(i));
            points.add(point(Phase.LEAVING, from + i * lead, full.times(left), rules, pen));
        }
    }

    private static CurvePoint point(Phase phase, double way, Band torque, Rules rules, Pen pen) {
        pen.write(rules.way, way);
        pen.write(rules.low, torque.low());
        pen.write(rules.expected, torque.expected());
        pen.write(rules.high, torque.high());
        return new CurvePoint(phase, Length.ofMm(way), torque, rules);
    }

    /** {@code torque}: # stands for the end of the symbol that is low, expected or high. */
    private static Rules rules(String mark, String way, String torque, String when) {
        return new Rules(
                new Rule("z_" + mark, way, "mm", MODEL, Trust.DERIVED, "way since first touch, " + when),
                torque("T_" + mark + "l", torque, "l", when),
                torque("T_" + mark, torque, "", when),
                torque("T_" + mark + "h", torque, "h", when));
    }

    private static Rule torque(String symbol, String formula, String end, String when) {
        String suffix = end.isEmpty() || formula.contains("T_b#") ? end : "_" + end;
        return new Rule(
                symbol, formula.replace("#", suffix), "N·m", MODEL, Trust.ESTIMATE, "torque " + when + words(end));
    }

    private static String words(String end) {
        return switch (end) {
            case "l" -> ", low";
            case "h" -> ", high";
            default -> "";
        };
    }
}
