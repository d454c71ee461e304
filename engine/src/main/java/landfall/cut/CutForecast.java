// SPDX-License-Identifier: Apache-2.0
package landfall.cut;

import java.util.ArrayList;
import java.util.List;
import landfall.chip.ChipBreak;
import landfall.chip.ChipFlow;
import landfall.chip.ChipLoad;
import landfall.chip.ChipRoom;
import landfall.chip.ChipRoom.Room;
import landfall.fault.Answer;
import landfall.fault.Caution;
import landfall.fault.Finding;
import landfall.fault.OutOfRange;
import landfall.quantity.Band;
import landfall.quantity.Length;
import landfall.tap.FluteKind;
import landfall.tap.Tap;
import landfall.torsion.Outline;
import landfall.torsion.Section;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;
import landfall.working.Worked;
import org.jspecify.annotations.Nullable;

/**
 * What to expect of one tap in one hole of one material.
 *
 * @param chips what is cut, where it goes, when the flutes are full
 * @param load torque against strength
 * @param pace speed, spindle, time
 * @param cautions what was assumed, and what these figures raise
 */
public record CutForecast(CutWish wish, Chips chips, Load load, Pace pace, List<Caution> cautions) {
    private static final Source MODEL = Source.of("derived", "docs/methods/tapping-torque.md");
    public static final Rule MARGIN_LOW =
            new Rule("m_l", "B_l/T_h", "1", MODEL, Trust.ESTIMATE, "lower strength over upper torque");
    public static final Rule MARGIN = new Rule("m", "B_e/T", "1", MODEL, Trust.ESTIMATE, "strength over torque");
    public static final Rule MARGIN_HIGH =
            new Rule("m_h", "B_h/T_l", "1", MODEL, Trust.ESTIMATE, "upper strength over lower torque");

    public CutForecast {
        cautions = List.copyOf(cautions);
    }

    /** The chips; turns between chip breaks for straight flutes only. */
    public record Chips(
            ChipLoad load,
            ChipFlow flow,
            ChipRoom room,
            @Nullable ChipBreak turns) {}

    /** Torque, strength, the margin between them in pure numbers, and what hand or machine do to it. */
    public record Load(TorqueForecast torque, Strength strength, Band margin, HandTurning hand, DriveEffect drive) {}

    /** The forecast, or every reason why there is none. */
    public static Answer<Worked<CutForecast>> of(Tap tap, CutWish wish) {
        List<Finding> findings = CutRefusals.of(tap, wish);
        if (!findings.isEmpty()) {
            return Answer.refused(findings);
        }
        try {
            Outline outline = FlutedSection.outline(tap);
            Section section = Section.of(outline, tap.thread().pitchDiameter());
            return Answer.of(Worked.of(pen -> compute(tap, wish, new Solved(outline, section), pen)));
        } catch (OutOfRange e) {
            return Answer.refused(e.finding());
        }
    }

    /** The section is solved once, outside the working: its figures are steps of their own. */
    private record Solved(Outline outline, Section section) {}

    private static CutForecast compute(Tap tap, CutWish wish, Solved solved, Pen pen) {
        List<Caution> assumed = new ArrayList<>();
        ChipLoad load = ChipLoad.of(tap, wish.hole(), wish.how().evenness(), pen);
        Pressure pressure = Pressure.of(load, tap, wish.material(), pen);
        TorqueForecast torque = TorqueForecast.of(tap, wish, load, pressure, pen);
        Strength strength = Strength.of(tap, wish, solved.section, pen);
        Band breaking = strength.breaking();
        Band full = torque.full();
        Band margin = new Band(
                pen.write(MARGIN_LOW, breaking.low() / full.high()),
                pen.write(MARGIN, breaking.expected() / full.expected()),
                pen.write(MARGIN_HIGH, breaking.high() / full.low()));
        Room room = new Room(tap.thread().pitchDiameter(), solved.outline.area(), fluteLength(tap, wish, assumed));
        Band bulk = CutTable.band(
                CutTable.BULK.need(
                        wish.material().cutting().chip().value().kind().code()),
                0);
        ChipRoom chipRoom = ChipRoom.of(load, tap.thread(), room, bulk, pen);
        boolean straight = tap.flutes().kind() == FluteKind.STRAIGHT;
        ChipBreak turns = straight ? ChipBreak.of(load, tap, chipRoom, pen) : null;
        Chips chips =
                new Chips(load, ChipFlow.of(tap.flutes().kind(), tap.thread().hand()), chipRoom, turns);
        HandTurning hand = HandTurning.of(breaking, full, wish.how().driven().bar(), pen);
        Pace pace = Pace.of(tap, wish, full, turns, pen);
        Load all = new Load(torque, strength, margin, hand, DriveEffect.of(tap, wish, full, breaking, pen));
        assumed.addAll(new CutCautions(tap, wish, chips, all).all(pressure));
        assumed.addAll(new DriveCautions(tap, wish, all, pace).all());
        return new CutForecast(wish, chips, all, pace, assumed);
    }

    /** The fluid that the torque counts with: as told, or as the list advises and words it. */
    public String fluid() {
        return wish.how().fluid() == null
                ? wish.material().cutting().fluid().value().words()
                : wish.fluidUsed().code();
    }

    private static Length fluteLength(Tap tap, CutWish wish, List<Caution> assumed) {
        Length thread = tap.body().threadLength();
        if (thread != null) {
            return thread;
        }
        assumed.add(new Caution(
                "fluteLengthAssumed",
                "Thread length of the tap not told: chips are given the room of the flutes inside the hole only.",
                "l_f"));
        return wish.depth().plus(tap.thread().pitch().times(tap.chamfer().threads()));
    }
}
