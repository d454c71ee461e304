// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.paper;

import java.util.ArrayList;
import java.util.List;
import landfall.envelope.GrindRun;
import landfall.grind.DialTarget;
import landfall.grind.Gap;
import landfall.grind.GrindSetup;
import landfall.grind.Place;
import landfall.grind.Relief;
import landfall.grind.Setting;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.sheets.dial.DialRow;
import landfall.sheets.dial.Letters;
import landfall.sheets.draw.Ink;
import landfall.sheets.draw.Mark;
import landfall.sheets.figure.Figures;
import landfall.sheets.grind.Sketches;
import landfall.sheets.paper.SheetContent.Heading;
import landfall.sheets.paper.SheetContent.Key;
import landfall.sheets.paper.SheetContent.Row;
import landfall.sheets.paper.SheetContent.Verdict;
import landfall.tap.Chamfer;
import landfall.tap.Tap;

/** Puts a set-up into the words and figures of its sheet: first page. {@link WorkWords} does the second. */
final class SetupWords {
    /** Letter is shorter than A4 by three rows. */
    private static final int MOST_ROWS_A4 = 12;

    private static final int MOST_ROWS_LETTER = 9;

    private final GrindSetup setup;
    private final GrindRun run;
    private final SheetOrder order;
    private final Figures figures;

    SetupWords(GrindSetup setup, GrindRun run, SheetOrder order) {
        this.setup = setup;
        this.run = run;
        this.order = order;
        this.figures = new Figures(order.units());
    }

    SheetContent content() {
        SheetContent.Keys keys = new SheetContent.Keys(keys(), verdict());
        return new SheetContent(heading(), keys, pictures(), readings(), new WorkWords(setup, run, figures).work());
    }

    private Heading heading() {
        Tap tap = setup.tap();
        Chamfer chamfer = tap.chamfer();
        String words = "%d flutes, %s, %s hand. Chamfer %s, %s threads, point %s. Land %s."
                .formatted(
                        tap.flutes().count(),
                        tap.flutes().kind().code(),
                        tap.thread().hand().word(),
                        figures.plainAngle(chamfer.angle()),
                        Figures.number(chamfer.threads(), 1),
                        figures.diameter(chamfer.pointDiameter()) + " " + figures.unit(),
                        figures.angle(setup.land()));
        String fixture = "%s, cam with %d lobes"
                .formatted(setup.fixture().name(), setup.fixture().cam().lobes());
        return new Heading(tap.callOut().normal(), words, fixture);
    }

    private List<Key> keys() {
        Setting setting = setup.motion().setting();
        Setting.Rises rises = setting.rises();
        Relief relief = setup.shape().relief();
        return List.of(
                swivel(setting),
                rise("Axial rise, whole lobe", rises.axial(), rises.axialOverLand()),
                rise("Radial rise, whole lobe", rises.radial(), rises.radialOverLand()),
                new Key(
                        "Working relief, square",
                        figures.angle(relief.working()),
                        List.of(
                                "static " + figures.fineAngle(relief.ground()) + ", loss "
                                        + figures.fineAngle(relief.loss()),
                                "static transverse " + figures.fineAngle(relief.transverse()))),
                stock());
    }

    /** What the swivel's graduation can be set to; the exact angle and what the step costs under it. */
    private Key swivel(Setting setting) {
        Setting.SwivelStep step = setting.step();
        List<String> under = new ArrayList<>();
        Angle shown = step == null ? setting.swivel() : step.swivel();
        under.add("exact " + figures.fineAngle(setting.swivel()));
        if (step != null) {
            under.add("leaves " + figures.fineAngle(step.working()) + " working");
        }
        return new Key("Swivel", figures.plainAngle(shown), under);
    }

    private Key rise(String name, Length whole, Length overLand) {
        if (whole.mm() == 0) {
            return new Key(name, "0", List.of("this slide stays locked"));
        }
        return new Key(
                name,
                figures.length(whole),
                List.of(
                        "over the land " + figures.bare(overLand),
                        figures.other().length(whole)));
    }

    private Key stock() {
        var stock = setup.work().stock();
        return new Key(
                "Clean-up, square",
                figures.length(stock.square()),
                List.of("axial " + figures.bare(stock.axial()), "radial " + figures.bare(stock.radial())));
    }

    private SheetContent.Pictures pictures() {
        Sketches sketches = new Sketches(setup, figures, "sketch");
        DialRow dials = new DialRow(setup);
        return new SheetContent.Pictures(
                sketches.end(Ink.PAPER),
                sketches.chamfer(Ink.PAPER),
                sketches.heel(Ink.PAPER),
                sketches.fall(Ink.PAPER),
                new SheetContent.Dials(dials.words(), dials.draw("dial", Ink.PAPER)));
    }

    private SheetContent.Readings readings() {
        List<String> heads = new ArrayList<>();
        List<String> notes = new ArrayList<>();
        for (Place place : Place.values()) {
            heads.add(Letters.of(place) + " " + place.code().replace('-', ' '));
            notes.add("%s %s (%s)".formatted(Letters.of(place), place.stands(), place.sign()));
        }
        List<Row> rows = new ArrayList<>();
        List<DialTarget> targets = setup.motion().dial();
        List<Angle> all = targets.stream().map(DialTarget::land).distinct().toList();
        int step = step(all.size());
        List<Angle> angles = every(step, all);
        for (Angle angle : angles) {
            List<String> readings = new ArrayList<>();
            for (Place place : Place.values()) {
                readings.add(figures.signed(reading(targets, place, angle)));
            }
            rows.add(new Row(name(angle, angles), readings));
        }
        String unit = figures.unit() + (step > 1 ? ", one angle in " + step : "");
        return new SheetContent.Readings(unit, heads, rows, setup.tap().flutes().count(), notes);
    }

    /** One angle in so many: the rows of a wide land would push the sheet to a third page. */
    private int step(int angles) {
        int most = order.paper() == PaperSize.A4 ? MOST_ROWS_A4 : MOST_ROWS_LETTER;
        int step = 1;
        while ((angles - 2) / step + 2 > most) {
            step++;
        }
        return step;
    }

    private static List<Angle> every(int step, List<Angle> all) {
        List<Angle> kept = new ArrayList<>();
        for (int i = 0; i < all.size() - 1; i += step) {
            kept.add(all.get(i));
        }
        kept.add(all.get(all.size() - 1));
        return kept;
    }

    private String name(Angle angle, List<Angle> angles) {
        String shown = Figures.plain(angle.deg(), 1) + "\u00b0";
        if (angle.equals(angles.get(0))) {
            return "edge " + shown;
        }
        return angle.equals(angles.get(angles.size() - 1)) ? "heel " + shown : shown;
    }

    private static Length reading(List<DialTarget> targets, Place place, Angle angle) {
        return targets.stream()
                .filter(target -> target.place() == place && target.land().equals(angle))
                .findFirst()
                .orElseThrow()
                .reading();
    }

    private Verdict verdict() {
        Gap gap = setup.motion().gap();
        Angle longest = gap.longestReturn();
        String why = "From the end of the rise to the next edge there are %s; the cam's return and the wheel need %s."
                .formatted(figures.angle(gap.have()), figures.angle(gap.needed()));
        String room = longest == null
                ? " No return is short enough."
                : " Longest return that clears: " + figures.angle(longest) + ".";
        return gap.clear()
                ? new Verdict(Mark.GO, "GAP CLEAR.", why + room)
                : new Verdict(Mark.NOT_GO, "GAP NOT CLEAR: do not grind with this cam.", why + room);
    }
}
