// SPDX-License-Identifier: Apache-2.0
package landfall.hole;

import landfall.quantity.Length;
import landfall.thread.Profile;
import landfall.thread.ScrewThread;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;

/**
 * What a share of thread is counted against. Bases in use differ by a fifth, so every answer names its own.
 *
 * <p>Share = (major - hole)/(twice the full depth). At 60 degrees the full depth is the old external one, 3/4 H =
 * 0.6495 P a side; the basic internal thread, 5/8 H, is then 83.3 %. Other forms: their own basic depth. A forming tap
 * raises the thread to claw tips, and its rule counts 0.0068 of the pitch for each per cent.
 */
public enum ShareBasis {
    FULL_DEPTH(
            "against the old full depth of 0.6495 P a side: the basic internal thread is 83.3 %",
            "2*0.75*(sqrt(3)/2)*P_0",
            1.5 * Profile.H_OVER_P,
            Source.of("machinerys-handbook-31", "p. 2155, percentages of thread"),
            Trust.HANDBOOK),
    FORMED(
            "by the rule for forming taps, 0.0068 P for each per cent: a height to the tips of the claws",
            "0.68*P_0",
            0.68,
            Source.of("memory", "rule of the tap trade for forming taps"),
            Trust.PRACTICE),
    OWN_DEPTH(
            "against the thread's own basic depth",
            "2*h_0*P_0",
            Double.NaN,
            Source.of("derived", "docs/methods/thread-engagement.md"),
            Trust.DERIVED);

    private static final Source DEFINED = Source.of("machinerys-handbook-31", "p. 2155, percentages of thread");
    static final Rule MAJOR = Rule.given("d_0", "mm", "basic major diameter");
    static final Rule PITCH = Rule.given("P_0", "mm", "pitch");
    static final Rule OWN =
            Rule.table("h_0", "1", Source.of("derived", "basic profile"), Trust.DERIVED, "basic depth over the pitch");

    private final String words;
    private final Rule twice;
    private final double overPitch;

    ShareBasis(String words, String formula, double overPitch, Source source, Trust trust) {
        this.words = words;
        this.twice = new Rule("t_full", formula, "mm", source, trust, "full depth of thread, both sides");
        this.overPitch = overPitch;
    }

    /** The basis for a thread and a kind of tap. */
    public static ShareBasis of(ScrewThread thread, boolean forming) {
        if (thread.profile().includedAngle().deg() != 60) {
            return OWN_DEPTH;
        }
        return forming ? FORMED : FULL_DEPTH;
    }

    /** As said beside every share. */
    public String words() {
        return words;
    }

    /** Full depth of both sides together; major and pitch are written with it. */
    Length twice(ScrewThread thread, Pen pen) {
        pen.write(MAJOR, thread.major().mm());
        double P = pen.write(PITCH, thread.pitch().mm());
        if (this == OWN_DEPTH) {
            double h = pen.write(OWN, thread.profile().depth());
            return Length.ofMm(pen.write(twice, 2 * h * P));
        }
        return Length.ofMm(pen.write(twice, overPitch * P));
    }

    /** The share that a hole leaves, as a fraction. */
    public double share(ScrewThread thread, Length hole) {
        return thread.major().minus(hole).over(twice(thread, Pen.NONE));
    }

    /** The hole that leaves a share: the same formula, solved for the hole. */
    public Length holeFor(ScrewThread thread, double share) {
        return thread.major().minus(twice(thread, Pen.NONE).times(share));
    }

    /** The printed formula of a drill's share, in per cent. */
    static Rule shareOf(String symbol, String hole) {
        return new Rule(
                symbol,
                "100*(d_0 - " + hole + ")/t_full",
                "%",
                DEFINED,
                Trust.HANDBOOK,
                "share of thread, by the drill");
    }
}
