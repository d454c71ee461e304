// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import java.util.ArrayList;
import java.util.List;
import landfall.cards.answer.Document;
import landfall.cards.answer.Item;
import landfall.cards.answer.Unit;
import landfall.chip.ChipBreak;
import landfall.chip.ChipFlow;
import landfall.chip.ChipLoad;
import landfall.chip.ChipRoom;
import landfall.chip.FluteShare;
import landfall.chip.Slice;
import landfall.cut.CurvePoint;
import landfall.cut.CutForecast;
import landfall.cut.DriveEffect;
import landfall.cut.EntryTorque;
import landfall.cut.HandTurning;
import landfall.cut.MemberRules;
import landfall.cut.Pace;
import landfall.cut.Strength;
import landfall.cut.TorqueForecast;
import landfall.quantity.Band;
import landfall.quantity.UnitSystem;
import landfall.tap.Tap;
import landfall.torsion.Section;
import landfall.working.Rule;
import landfall.working.Worked;

/** A forecast of the cut laid out as one answer, under the keys that programs read. */
final class CutDocument {
    private final Tap tap;
    private final CutForecast cut;
    private final Behind behind;

    private CutDocument(Tap tap, CutForecast cut, Behind behind) {
        this.tap = tap;
        this.cut = cut;
        this.behind = behind;
    }

    static Document of(Tap tap, Worked<CutForecast> worked, UnitSystem units) {
        var steps = worked.steps();
        CutForecast cut = worked.value();
        String subject = tap.callOut().normal() + ", " + cut.wish().material().id();
        CutDocument document = new CutDocument(tap, cut, new Behind(steps));
        return new Document("cut", subject, units, document.items(), steps, cut.cautions());
    }

    private List<Item> items() {
        List<Item> items = new ArrayList<>();
        items.add(new Item.Text("callout", tap.callOut().normal()));
        items.add(new Item.Text("hand", tap.thread().hand().word()));
        items.add(new Item.Text("material", cut.wish().material().id()));
        items.add(new Item.Text("hardness", cut.wish().material().naming().hardness()));
        items.add(new Item.Text("fluid", cut.fluid()));
        items.add(chip(cut.chips().load()));
        TorqueForecast torque = cut.load().torque();
        items.add(band("torque", torque.full(), Unit.TORQUE, "T_l", "T", "T_h"));
        items.add(band("reversal", torque.reversal(), Unit.TORQUE, "T_bl", "T_b", "T_bh"));
        items.add(entry(torque));
        items.add(curve(torque));
        items.add(band("thrust", torque.thrust(), Unit.FORCE, "F_al", "F_a", "F_ah"));
        Strength strength = cut.load().strength();
        items.add(band("breaking", strength.breaking(), Unit.TORQUE, "B_l", "B_e", "B_h"));
        items.add(new Item.Text("breaksFirst", strength.governing().part().words()));
        items.add(members(strength));
        items.add(band("margin", cut.load().margin(), Unit.PURE, "m_l", "m", "m_h"));
        items.add(section(strength.section()));
        items.add(chipRoom(cut.chips()));
        ChipBreak turns = cut.chips().turns();
        if (turns != null) {
            items.add(chipBreak(turns));
        }
        items.add(bars());
        items.addAll(drive(cut.load().drive()));
        items.addAll(pace(cut.pace()));
        return items;
    }

    private Item chip(ChipLoad load) {
        List<Item> items = new ArrayList<>();
        items.add(behind.figure("thickness", load.steps().thickness(), "h"));
        items.add(behind.figure("radialStep", load.steps().radial(), "a_r"));
        items.add(new Item.Count("teeth", load.slices().size()));
        items.add(new Item.Count("starts", tap.thread().lead().starts()));
        List<Item.Group> slices = new ArrayList<>();
        for (Slice slice : load.slices()) {
            slices.add(Item.Group.of(
                    "slice",
                    new Item.Count("tooth", slice.tooth()),
                    behind.figure("area", slice.area().mm2(), Unit.AREA, "A_s" + slice.tooth()),
                    behind.figure("radius", slice.radius(), "r_s" + slice.tooth())));
        }
        items.add(new Item.Rows("slices", slices));
        items.add(behind.figure("totalArea", load.totalArea().mm2(), Unit.AREA, "A_all"));
        items.add(new Item.Text("direction", cut.chips().flow().code()));
        if (!load.shares().isEmpty()) {
            items.add(behind.figure("thickest", load.thickest(), "h_max"));
            items.add(shares(load));
        }
        return new Item.Group("chip", items);
    }

    private Item shares(ChipLoad load) {
        List<Item.Group> rows = new ArrayList<>();
        for (FluteShare share : load.shares()) {
            rows.add(Item.Group.of(
                    "share",
                    new Item.Count("flute", share.flute()),
                    behind.figure("share", share.percent(), Unit.SHARE, "q_" + share.flute()),
                    new Item.Flag("idle", share.isIdle())));
        }
        return new Item.Rows("shares", rows);
    }

    private Item entry(TorqueForecast torque) {
        List<Item.Group> rows = new ArrayList<>();
        for (EntryTorque turn : torque.entry()) {
            EntryTorque.Rules rules = EntryTorque.rules(turn.turn());
            rows.add(Item.Group.of(
                    "turn",
                    new Item.Count("turn", turn.turn()),
                    behind.figure("depth", turn.depth(), rules.depth().symbol()),
                    torque(turn.torque(), List.of(rules.low(), rules.expected(), rules.high()))));
        }
        return new Item.Rows("entry", rows);
    }

    private Item curve(TorqueForecast torque) {
        List<Item.Group> rows = new ArrayList<>();
        for (CurvePoint point : torque.curve()) {
            CurvePoint.Rules rules = point.rules();
            rows.add(Item.Group.of(
                    "point",
                    new Item.Text("phase", point.phase().code()),
                    behind.figure("depth", point.way(), rules.way().symbol()),
                    torque(point.torque(), List.of(rules.low(), rules.expected(), rules.high()))));
        }
        return new Item.Rows("torqueCurve", rows);
    }

    private Item members(Strength strength) {
        List<Item.Group> rows = new ArrayList<>();
        for (Strength.Member member : strength.members()) {
            List<Rule> rules = MemberRules.of(member.part()).torque();
            rows.add(Item.Group.of(
                    "member", new Item.Text("part", member.part().words()), torque(member.torque(), rules)));
        }
        return new Item.Rows("members", rows);
    }

    private Item section(Section section) {
        return Item.Group.of(
                "section",
                behind.figure("outer", section.outer(), "d_o"),
                behind.figure("stiffness", section.stiffness(), Unit.PURE, "j"),
                behind.figure("stress", section.stress(), Unit.PURE, "τ_1"),
                behind.figure("strength", section.strength(), Unit.PURE, "f_w"));
    }

    private Item chipRoom(CutForecast.Chips chips) {
        ChipRoom room = chips.room();
        return Item.Group.of(
                "chipRoom",
                band("clearAfterDepth", room.clearAfter(), Unit.LENGTH, "z_l", "z_c", "z_h"),
                new Item.Flag("chipsLeave", chips.flow() != ChipFlow.STAYS),
                behind.figure("fluteArea", room.flutes().mm2(), Unit.AREA, "A_f"),
                behind.figure("chipPerDepth", room.perDepth().mm2(), Unit.AREA, "V_d"));
    }

    private Item chipBreak(ChipBreak turns) {
        return Item.Group.of(
                "chipBreak",
                behind.figure("forwardTurns", turns.forward(), Unit.PURE, "n_fwd"),
                behind.figure("backTurns", turns.back(), Unit.PURE, "n_back"),
                Item.Group.of(
                        "habit",
                        behind.figure("forwardTurns", turns.habitForward(), Unit.PURE, "n_hf"),
                        behind.figure("backTurns", turns.habitBack(), Unit.PURE, "n_hb")));
    }

    private Item bars() {
        HandTurning hand = cut.load().hand();
        List<Item> items = new ArrayList<>();
        items.add(behind.figure("safe", hand.safe(), "l_safe"));
        items.add(behind.figure("needed", hand.needed(), "l_need"));
        items.add(behind.figure("breaks", hand.breaks(), "l_brk"));
        if (hand.gives() != null) {
            items.add(band("gives", hand.gives(), Unit.TORQUE, "M_f", "M_h", "M_s"));
        }
        return new Item.Group("bar", items);
    }

    private List<Item> drive(DriveEffect drive) {
        List<Item> items = new ArrayList<>();
        DriveEffect.Slip slip = drive.slip();
        if (slip != null) {
            items.add(new Item.Range(
                    "slip",
                    behind.point(slip.least().nm(), Unit.TORQUE, "M_min"),
                    behind.point(slip.most().nm(), Unit.TORQUE, "M_max"),
                    Unit.TORQUE));
        }
        if (drive.lag() != null) {
            items.add(behind.figure("feedError", drive.lag(), "e_f"));
        }
        if (drive.push() != null) {
            items.add(band("axialForce", drive.push(), Unit.FORCE, "F_el", "F_e", "F_eh"));
        }
        return items;
    }

    private List<Item> pace(Pace pace) {
        List<Item> items = new ArrayList<>();
        items.add(band("speed", pace.speed(), Unit.SPEED, "v_l", "v", "v_h"));
        items.add(behind.figure("spindle", pace.spindle().revPerMin(), Unit.TURNING, "n"));
        items.add(behind.figure("feed", tap.thread().lead().perTurn(), "L"));
        items.add(behind.figure("time", pace.time().s(), Unit.TIME, "t_all"));
        items.add(band("power", pace.power(), Unit.POWER, "P_wl", "P_w", "P_wh"));
        if (pace.overrun() != null) {
            items.add(behind.figure("overrun", pace.overrun(), "l_over"));
        }
        return items;
    }

    private Item torque(Band band, List<Rule> rules) {
        return band(
                "torque",
                band,
                Unit.TORQUE,
                rules.get(0).symbol(),
                rules.get(1).symbol(),
                rules.get(2).symbol());
    }

    private Item band(String key, Band band, Unit unit, String... symbols) {
        return new Item.BandFigure(
                key,
                behind.point(band.low(), unit, symbols[0]),
                behind.point(band.expected(), unit, symbols[1]),
                behind.point(band.high(), unit, symbols[2]),
                unit);
    }
}
