// SPDX-License-Identifier: Apache-2.0
package landfall.cut;

import java.util.List;
import java.util.stream.Collectors;
import landfall.cut.Strength.Member;
import landfall.cut.Strength.Part;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;

/**
 * The printed formulas of one member of the tap: its modulus in mm³, and low, expected and high of strength and torque.
 */
public record MemberRules(Rule modulus, List<Rule> stress, List<Rule> torque) {
    private static final Source SOLVER = Source.of("derived", "docs/methods/torsion.md");
    private static final List<String> ENDS = List.of("l", "e", "h");
    private static final List<String> WORDS = List.of(", low", "", ", high");

    public MemberRules {
        stress = List.copyOf(stress);
        torque = List.copyOf(torque);
    }

    /** The rules of a member. */
    public static MemberRules of(Part part) {
        return switch (part) {
            case THREAD -> of("t", "f_w*pi*d_o^3/16", "t", part);
            case NECK -> of("n", "pi*d_n^3/16", "s", part);
            case SHANK -> of("r", "pi*d_s^3/16", "s", part);
            case SQUARE -> of("q", "0.208*a_q^3", "s", part);
        };
    }

    /** The least of the members there are: low, expected, high. */
    public static List<Rule> least(List<Member> members) {
        return List.of(least(members, 0), least(members, 1), least(members, 2));
    }

    private static Rule least(List<Member> members, int end) {
        String all = members.stream()
                .map(member -> of(member.part()).torque.get(end).symbol())
                .collect(Collectors.joining(", "));
        return new Rule(
                "B_" + ENDS.get(end),
                "min(" + all + ")",
                "N·m",
                SOLVER,
                Trust.ESTIMATE,
                "breaking torque of the weakest member" + WORDS.get(end));
    }

    private static MemberRules of(String letter, String modulus, String metal, Part part) {
        String name = part.words();
        return new MemberRules(
                new Rule("W_" + letter, modulus, "mm³", SOLVER, Trust.DERIVED, "modulus in torsion of the " + name),
                List.of(stress(metal, 0), stress(metal, 1), stress(metal, 2)),
                List.of(
                        torque(letter, metal, name, 0),
                        torque(letter, metal, name, 1),
                        torque(letter, metal, name, 2)));
    }

    private static Rule stress(String metal, int end) {
        String what = metal.equals("t") ? "the thread" : "the shank";
        return Strength.strengthRule(
                "τ_" + metal + ENDS.get(end), "shear strength of " + what + " in torsion" + WORDS.get(end));
    }

    private static Rule torque(String letter, String metal, String name, int end) {
        String formula = "τ_%s%s*W_%s/1000".formatted(metal, ENDS.get(end), letter);
        return new Rule(
                "B_" + letter + ENDS.get(end),
                formula,
                "N·m",
                SOLVER,
                Trust.ESTIMATE,
                "breaking torque of the " + name + WORDS.get(end));
    }
}
