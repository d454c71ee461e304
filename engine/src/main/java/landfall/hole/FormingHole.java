// SPDX-License-Identifier: Apache-2.0
package landfall.hole;

import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.thread.ScrewThread;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;

/**
 * The hole for a forming tap.
 *
 * <p>The rule of the trade asks for major - 0.0068 P for each per cent of thread. What is pushed out of the groove is
 * raised at the crest: by balance of volume a hole under major - 0.595 P raises a full profile to the basic minor
 * diameter, the tap's root fills and the tap can jam. That is the limit never to go below. The hole must be held about
 * three times as closely as for a cutting tap.
 *
 * @param wanted the hole that the rule asks for
 * @param least the jam limit
 * @param greatest the hole for 55 per cent
 */
public record FormingHole(Length wanted, Length least, Length greatest) {
    private static final Source TRADE = Source.of("memory", "rule of the tap trade for forming taps");
    private static final Source BALANCE = Source.of("derived", "docs/methods/tap-drill.md, forming");

    private static final double JAM = 0.595;
    private static final double LEAST_SHARE = 0.55;
    public static final Rule WANTED = new Rule(
            "D_form",
            "d_0 - 0.0068*q_w*P_0",
            "mm",
            TRADE,
            Trust.PRACTICE,
            "hole that the rule for forming taps asks for");
    public static final Rule LEAST = new Rule(
            "D_jam", "d_0 - 0.595*P_0", "mm", BALANCE, Trust.DERIVED, "smallest hole: below it the tap can jam");
    public static final Rule GREATEST = new Rule(
            "D_low", "d_0 - 0.0068*55*P_0", "mm", TRADE, Trust.PRACTICE, "largest hole: 55 per cent of thread");

    /** {@code share} has been written as the wanted one. */
    static FormingHole of(ScrewThread thread, double share, Pen pen) {
        double d = thread.major().mm();
        double P = thread.pitch().mm();
        double q = 100 * share;
        return new FormingHole(
                Length.ofMm(pen.write(WANTED, d - 0.0068 * q * P)),
                Length.ofMm(pen.write(LEAST, d - JAM * P)),
                Length.ofMm(pen.write(GREATEST, d - 0.0068 * 100 * LEAST_SHARE * P)));
    }

    public Limits limits() {
        return new Limits(least, greatest);
    }
}
