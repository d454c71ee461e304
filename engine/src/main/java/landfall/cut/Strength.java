// SPDX-License-Identifier: Apache-2.0
package landfall.cut;

import java.util.ArrayList;
import java.util.List;
import landfall.quantity.Band;
import landfall.tap.Tap;
import landfall.torsion.Section;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;

/**
 * What breaks the tap: the least of its members in torsion, each as a band in N·m.
 *
 * @param section of the thread, clipped to the basic pitch diameter
 * @param members thread first, then those of neck and shank that are known
 * @param breaking the least of them
 * @param list of blanks that an unmeasured shank was taken from; empty when it was measured, or when none is held
 */
public record Strength(Section section, List<Member> members, Band breaking, String list) {
    private static final Source SOLVER = Source.of("derived", "docs/methods/torsion.md");
    private static final Source REMEMBERED = Source.of("memory", "shear strength of hardened taps in torsion");
    public static final Rule OUTER =
            Rule.given("d_o", "mm", "diameter that the section is cut from: basic pitch diameter");
    public static final Rule STIFFNESS = solved("j", "stiffness against the solid circle");
    public static final Rule STRESS = solved("τ_1", "peak stress for one twist against the solid circle");
    public static final Rule RATIO =
            new Rule("f_w", "j/τ_1", "1", SOLVER, Trust.DERIVED, "strength against the solid circle");

    public Strength {
        members = List.copyOf(members);
    }

    /** What can break. */
    public enum Part {
        THREAD("thread"),
        NECK("neck"),
        SHANK("round shank"),
        SQUARE("square");

        private final String words;

        Part(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** One member and its breaking torque in N·m. */
    public record Member(Part part, Band torque) {}

    /** The member that breaks first, by the expected figures. */
    public Member governing() {
        return members.stream()
                .min((a, b) -> Double.compare(a.torque.expected(), b.torque.expected()))
                .orElseThrow();
    }

    static Strength of(Tap tap, CutWish wish, Section section, Pen pen) {
        double d_o = pen.write(OUTER, section.outer().mm());
        double j = pen.write(STIFFNESS, section.stiffness());
        double tau = pen.write(STRESS, section.stress());
        double f = pen.write(RATIO, j / tau);
        List<String> row = CutTable.TAP_STRENGTH.need(tap.make().material().code());
        List<Member> members = new ArrayList<>();
        members.add(member(Part.THREAD, CutTable.band(row, 0), f * Math.PI * Math.pow(d_o, 3) / 16, pen));
        ShankSizes sizes = ShankSizes.of(tap, wish, pen);
        Band shank = CutTable.band(row, 3);
        if (sizes.neck() != null) {
            members.add(member(Part.NECK, shank, Math.PI * Math.pow(sizes.neck().mm(), 3) / 16, pen));
        }
        if (sizes.shank() != null) {
            members.add(
                    member(Part.SHANK, shank, Math.PI * Math.pow(sizes.shank().mm(), 3) / 16, pen));
        }
        if (sizes.square() != null) {
            members.add(
                    member(Part.SQUARE, shank, 0.208 * Math.pow(sizes.square().mm(), 3), pen));
        }
        return new Strength(section, members, least(members, pen), sizes.list());
    }

    private static Member member(Part part, Band strength, double modulus, Pen pen) {
        MemberRules rules = MemberRules.of(part);
        pen.write(rules.modulus(), modulus);
        double low = pen.write(rules.stress().get(0), strength.low());
        double usual = pen.write(rules.stress().get(1), strength.expected());
        double high = pen.write(rules.stress().get(2), strength.high());
        return new Member(
                part,
                new Band(
                        pen.write(rules.torque().get(0), low * modulus / 1000),
                        pen.write(rules.torque().get(1), usual * modulus / 1000),
                        pen.write(rules.torque().get(2), high * modulus / 1000)));
    }

    private static Band least(List<Member> members, Pen pen) {
        List<Rule> rules = MemberRules.least(members);
        return new Band(
                pen.write(
                        rules.get(0),
                        members.stream().mapToDouble(m -> m.torque.low()).min().orElseThrow()),
                pen.write(
                        rules.get(1),
                        members.stream()
                                .mapToDouble(m -> m.torque.expected())
                                .min()
                                .orElseThrow()),
                pen.write(
                        rules.get(2),
                        members.stream().mapToDouble(m -> m.torque.high()).min().orElseThrow()));
    }

    private static Rule solved(String symbol, String means) {
        return Rule.table(symbol, "1", SOLVER, Trust.DERIVED, means);
    }

    static Rule strengthRule(String symbol, String means) {
        return Rule.table(symbol, "N/mm²", REMEMBERED, Trust.ESTIMATE, means);
    }
}
