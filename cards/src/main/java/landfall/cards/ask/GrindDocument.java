// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import landfall.cards.answer.Document;
import landfall.cards.answer.Item;
import landfall.cards.answer.Unit;
import landfall.fault.Answer;
import landfall.fault.Caution;
import landfall.grind.ChamferShape;
import landfall.grind.Gap;
import landfall.grind.GrindSetup;
import landfall.grind.Holding;
import landfall.grind.Phase;
import landfall.grind.Relief;
import landfall.grind.ReliefAlong;
import landfall.grind.Setting;
import landfall.grind.Stock;
import landfall.grind.WheelDirection;
import landfall.quantity.UnitSystem;
import landfall.regrind.SharpeningsLeft;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Step;
import landfall.working.Trust;
import landfall.working.Worked;
import org.jspecify.annotations.Nullable;

/** A regrind set-up laid out as one answer, under the keys that programs read. */
final class GrindDocument {
    /** The axial rise that alone would give the fall; on straight flutes the swivel is the chamfer angle. */
    private static final Rule AXIAL_ONLY = new Rule(
            "a_only",
            "f_r/tan(κ_s)",
            "mm",
            Source.of("derived", "docs/methods/cam-and-gap.md"),
            Trust.DERIVED,
            "axial rise over the land that alone gives the fall");

    private final GrindSetup setup;
    private final @Nullable GrindRan ran;
    private final Behind behind;
    private final UnitSystem units;

    private GrindDocument(GrindSetup setup, @Nullable GrindRan ran, Behind behind, UnitSystem units) {
        this.setup = setup;
        this.ran = ran;
        this.behind = behind;
        this.units = units;
    }

    /** @param ran the set-up run numerically; null leaves that part of the answer out */
    static Document of(
            Worked<GrindSetup> worked,
            @Nullable GrindRan ran,
            Answer<SharpeningsLeft> left,
            UnitSystem units,
            @Nullable WheelDirection direction) {
        GrindSetup setup = worked.value();
        List<Step> steps = new ArrayList<>(worked.steps());
        steps.add(new Step(
                AXIAL_ONLY,
                setup.shape().fall().radial().mm()
                        / Math.tan(setup.motion().setting().swivel().rad())));
        List<Caution> cautions = new ArrayList<>(setup.assumed());
        if (ran != null) {
            cautions.addAll(ran.assumed());
        }
        cautions.addAll(setup.cautions());
        if (ran != null) {
            steps.addAll(Worked.of(ran.run()::told).steps());
            cautions.addAll(ran.run().cautions(setup));
        }
        String subject = setup.tap().callOut().normal() + ", " + setup.fixture().name();
        GrindDocument document = new GrindDocument(setup, ran, new Behind(steps), units);
        List<Item> items = document.items(left, direction);
        return new Document("grind", subject, units, items, steps, cautions);
    }

    private List<Item> items(Answer<SharpeningsLeft> left, @Nullable WheelDirection direction) {
        List<Item> items = new ArrayList<>();
        items.add(new Item.Text("callout", setup.tap().callOut().normal()));
        items.add(new Item.Text("hand", setup.tap().thread().hand().word()));
        items.add(new Item.Text("turns", setup.cuttingSense()));
        items.add(new Item.Text("fixture", setup.fixture().name()));
        Holding holding = Holding.of(setup.tap());
        items.add(Item.Group.of(
                "hold",
                new Item.Text("way", holding.way().name().toLowerCase(Locale.ROOT)),
                new Item.Text("why", holding.words())));
        GrindLists lists = new GrindLists(setup, behind, units);
        items.add(setting(setup.motion().setting()));
        items.add(gap(setup.motion().gap()));
        if (ran != null) {
            items.add(RunItems.of(ran.run(), behind));
        }
        items.add(Item.Group.of(
                "clearance",
                behind.figure("leastWheelWidth", setup.motion().clearance().leastWidth(), "w_face"),
                behind.figure("overPoint", setup.motion().clearance().overPoint(), "x_c")));
        items.add(lists.dial());
        items.add(lists.places());
        items.add(stock(setup.work().stock()));
        items.add(lists.passes());
        items.add(lists.wheel(direction));
        items.add(lists.life(left));
        items.add(relief(setup.shape()));
        items.add(fall(setup.shape()));
        items.add(rise(setup.shape()));
        items.add(Item.Group.of("land", behind.figure("angle", setup.land(), "θ_L")));
        items.add(lead(setup.shape()));
        items.add(phase(setup.motion().phase()));
        items.add(lists.procedure());
        return items;
    }

    private Item lead(ChamferShape shape) {
        return Item.Group.of(
                "lead",
                behind.figure("angleMajor", shape.lead().major(), "λ_d"),
                behind.figure("anglePitch", shape.lead().pitch(), "λ_2"),
                behind.figure("angleMinor", shape.lead().minor(), "λ_1"),
                behind.figure("axialAdvanceOverLand", shape.lead().axialAdvance(), "A"));
    }

    private Item relief(ChamferShape shape) {
        Relief relief = shape.relief();
        List<Item.Group> along = new ArrayList<>();
        for (ReliefAlong place : shape.along()) {
            along.add(Item.Group.of(
                    "place",
                    new Item.Text("at", place.at()),
                    behind.figure("radius", place.radius(), "r_x"),
                    behind.figure("static", place.ground(), "α_nx"),
                    behind.figure("loss", place.loss(), "η_x"),
                    behind.figure("working", place.working(), "α_wx")));
        }
        return Item.Group.of(
                "relief",
                behind.figure("working", relief.working(), "α_w"),
                behind.figure("loss", relief.loss(), "η"),
                behind.figure("static", relief.ground(), "α_n"),
                behind.figure("staticTransverse", relief.transverse(), "α_t"),
                behind.figure("radius", shape.midRadius(), "r"),
                new Item.Rows("along", along));
    }

    private Item fall(ChamferShape shape) {
        return Item.Group.of(
                "fall",
                behind.figure("perRadian", shape.fall().perRadian().mm(), Unit.LENGTH_PER_RADIAN, "f'"),
                behind.figure("radial", shape.fall().radial(), "f_r"),
                behind.figure("axial", shape.fall().axial(), "f_a"),
                behind.figure("square", shape.fall().square(), "f_n"));
    }

    private Item rise(ChamferShape shape) {
        double axialOnly = shape.fall().radial().mm()
                / Math.tan(setup.motion().setting().swivel().rad());
        return Item.Group.of(
                "rise",
                behind.figure("axialOnly", axialOnly, Unit.LENGTH, "a_only"),
                behind.figure("radialOnly", shape.fall().radial(), "f_r"),
                behind.figure("squareOnly", shape.fall().square(), "f_n"));
    }

    private Item setting(Setting setting) {
        List<Item> items = new ArrayList<>();
        items.add(new Item.Text("way", setting.way().words()));
        items.add(behind.figure("swivel", setting.swivel(), "κ_s"));
        if (setting.step() != null) {
            items.add(Item.Group.of(
                    "swivelStep",
                    behind.figure("swivel", setting.step().swivel(), "κ_v"),
                    behind.figure("working", setting.step().working(), "α_v")));
        }
        items.add(behind.figure("axial", setting.rises().axial(), "a"));
        items.add(behind.figure("radial", setting.rises().radial(), "b"));
        items.add(Item.Group.of(
                "overLand",
                behind.figure("axial", setting.rises().axialOverLand(), "a_L"),
                behind.figure("radial", setting.rises().radialOverLand(), "b_L")));
        List<Item.Group> ways = new ArrayList<>();
        for (Setting.Option option : setting.ways()) {
            ways.add(Item.Group.of(
                    "way",
                    new Item.Text("way", option.way().words()),
                    new Item.Flag("reached", option.reached()),
                    behind.figure("axial", option.rises().axial(), "a"),
                    behind.figure("radial", option.rises().radial(), "b"),
                    behind.figure("bySwivel", option.bySwivel(), "Δα_s"),
                    behind.figure("byDivision", option.byDivision(), "Δα_d")));
        }
        items.add(new Item.Rows("ways", ways));
        return new Item.Group("setting", items);
    }

    private Item phase(Phase phase) {
        return Item.Group.of(
                "phase",
                behind.figure("trails", phase.delta(), "δ"),
                behind.figure("bareMargin", phase.bareMargin(), "m"),
                behind.figure("edgeDrop", phase.edgeDrop(), "f_e"),
                behind.figure("dying", phase.dying(), "θ_dying"));
    }

    private Item gap(Gap gap) {
        List<Item> items = new ArrayList<>();
        items.add(behind.figure("needed", gap.needed(), "g_need"));
        items.add(behind.figure("have", gap.have(), "g_have"));
        items.add(new Item.Flag("clear", gap.clear()));
        if (gap.longestReturn() != null) {
            items.add(behind.figure("longestReturn", gap.longestReturn(), "Δ_max"));
        }
        return new Item.Group("gap", items);
    }

    private Item stock(Stock stock) {
        List<Item> items = new ArrayList<>();
        items.add(behind.figure("square", stock.square(), "c"));
        items.add(behind.figure("axial", stock.axial(), "s"));
        items.add(behind.figure("radial", stock.radial(), "b_s"));
        items.add(behind.figure("allowance", stock.allowance(), "s_0"));
        items.add(behind.figure("wholeAxial", stock.after().wholeAxial(), "s_all"));
        items.add(behind.figure("chamferLength", stock.after().chamferLength(), "l_c"));
        items.add(behind.figure("pointDiameterAfter", stock.after().pointDiameter(), "d_pa"));
        if (stock.after().overallIfEndFirst() != null) {
            items.add(behind.figure("overallIfEndFirst", stock.after().overallIfEndFirst(), "l_after"));
        }
        items.add(new Item.Flag("endFirst", stock.after().endFirst()));
        return new Item.Group("stock", items);
    }
}
