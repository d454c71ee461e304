// SPDX-License-Identifier: Apache-2.0
package landfall.chip;

import landfall.quantity.Area;
import landfall.quantity.Band;
import landfall.quantity.Length;
import landfall.thread.ScrewThread;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;

/**
 * How deep a tap goes before the chips fill its flutes, if none of them leaves: docs/methods/chip-room.md.
 *
 * @param flutes area of all flutes inside the basic pitch diameter
 * @param perDepth solid chip for a unit of depth: mm³ a mm
 * @param bulk of the chips in the flute over their solid volume
 * @param clearAfter depth in mm after which the flutes are full
 */
public record ChipRoom(Area flutes, Area perDepth, Band bulk, Band clearAfter) {
    private static final Source GEOMETRY = Source.of("derived", "docs/methods/chip-room.md");
    private static final Source REMEMBERED = Source.of("memory", "bulk of chips pressed together in a flute");
    static final Rule OUTER = Rule.given("d_o", "mm", "diameter that the section is cut from");
    static final Rule SECTION = Rule.table(
            "A_sec", "mm²", GEOMETRY, Trust.DERIVED, "area of the tap's section inside it, along its outline");
    public static final Rule FLUTES = derived("A_f", "pi*d_o^2/4 - A_sec", "mm²", "area of all flutes inside it");
    static final Rule FLUTE_LENGTH =
            Rule.given("l_f", "mm", "length of the flutes: of the thread, or of what is in the hole");
    public static final Rule PER_DEPTH = derived("V_d", "2*pi*r_c*A_all/L", "mm²", "solid chip of one unit of depth");
    static final Rule BULK_LOW = Rule.table("β_l", "1", REMEMBERED, Trust.ESTIMATE, "bulk over solid chip, least");
    static final Rule BULK = Rule.table("β_c", "1", REMEMBERED, Trust.ESTIMATE, "bulk over solid chip");
    static final Rule BULK_HIGH = Rule.table("β_h", "1", REMEMBERED, Trust.ESTIMATE, "bulk over solid chip, greatest");
    public static final Rule CLEAR_LOW = estimate("z_l", "A_f*l_f/(V_d*β_h)", "depth that fills the flutes, least");
    public static final Rule CLEAR = estimate("z_c", "A_f*l_f/(V_d*β_c)", "depth that fills the flutes");
    public static final Rule CLEAR_HIGH = estimate("z_h", "A_f*l_f/(V_d*β_l)", "depth that fills the flutes, greatest");

    /** Where the chips are kept: the tap's section, and how long the flutes are. */
    public record Room(Length outer, Area section, Length fluteLength) {}

    /** The room for the chips of a load, which bulk so many times their solid volume. */
    public static ChipRoom of(ChipLoad load, ScrewThread thread, Room room, Band bulk, Pen pen) {
        double d_o = pen.write(OUTER, room.outer().mm());
        double section = pen.write(SECTION, room.section().mm2());
        double flutes = pen.write(FLUTES, Math.PI * d_o * d_o / 4 - section);
        double l_f = pen.write(FLUTE_LENGTH, room.fluteLength().mm());
        double lead = thread.lead().perTurn().mm();
        double perDepth = pen.write(
                PER_DEPTH,
                2 * Math.PI * load.groove().radius().mm() * load.totalArea().mm2() / lead);
        double least = pen.write(BULK_LOW, bulk.low());
        double usual = pen.write(BULK, bulk.expected());
        double greatest = pen.write(BULK_HIGH, bulk.high());
        Band depth = new Band(
                pen.write(CLEAR_LOW, flutes * l_f / (perDepth * greatest)),
                pen.write(CLEAR, flutes * l_f / (perDepth * usual)),
                pen.write(CLEAR_HIGH, flutes * l_f / (perDepth * least)));
        return new ChipRoom(Area.ofMm2(flutes), Area.ofMm2(perDepth), bulk, depth);
    }

    private static Rule derived(String symbol, String formula, String unit, String means) {
        return new Rule(symbol, formula, unit, GEOMETRY, Trust.DERIVED, means);
    }

    private static Rule estimate(String symbol, String formula, String means) {
        return new Rule(symbol, formula, "mm", GEOMETRY, Trust.ESTIMATE, means);
    }
}
