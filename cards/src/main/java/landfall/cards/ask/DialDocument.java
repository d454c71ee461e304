// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import landfall.cards.answer.Document;
import landfall.cards.answer.Item;
import landfall.cards.answer.Unit;
import landfall.cards.words.Words;
import landfall.dialling.DialFindings;
import landfall.dialling.DialFit;
import landfall.dialling.LandFound;
import landfall.dialling.LoadShare;
import landfall.dialling.Outlier;
import landfall.dialling.Phase;
import landfall.dialling.ReliefFound;
import landfall.dialling.RunOut;
import landfall.dialling.Swivel;
import landfall.quantity.Length;
import landfall.working.Rule;
import landfall.working.Step;
import landfall.working.Worked;

/** Findings of a dialling-in laid out as one answer. */
final class DialDocument {
    private final DialFindings found;
    private final Length division;
    private final DialFigures figures;

    private DialDocument(DialFindings found, Length division, DialFigures figures) {
        this.division = division;
        this.found = found;
        this.figures = figures;
    }

    static Document of(Dialled dialled) {
        Worked<DialFindings> worked = dialled.found();
        String callOut = dialled.tap().callOut().normal();
        Length division = dialled.ask().readings().resolution();
        List<Step> steps = new ArrayList<>(worked.steps());
        DialDocument document = new DialDocument(worked.value(), division, new DialFigures(steps));
        List<Item> items = document.items();
        return new Document(
                "dial",
                callOut + ", " + worked.value().place().code(),
                dialled.units(),
                items,
                steps,
                dialled.cautions());
    }

    private List<Item> items() {
        List<Item> items = new ArrayList<>();
        items.add(new Item.Text("place", found.place().code()));
        items.add(figures.slope("slope", "k", found.slope(), "slope of the reading over the land"));
        RunOut runOut = found.runOut();
        if (runOut != null) {
            items.add(figures.fitted("eccentricity", "e", runOut.eccentricity(), "eccentricity"));
            items.add(figures.fitted("direction", "φ", runOut.towards(), "direction of the high side"));
        }
        if (found.fits().phase() != null) {
            items.add(phase(found.fits().phase()));
        }
        items.add(lands());
        if (found.fits().commonZero() != null) {
            items.add(beside("commonZero", "0", found.fits().commonZero(), "all lands of one height"));
        }
        if (found.fits().without() != null) {
            items.add(new Item.Rows("outliers", outliers()));
            items.add(beside("withoutOutliers", "o", found.fits().without(), "without the suspected readings"));
        }
        if (found.relief() != null) {
            items.add(relief(found.relief()));
            items.add(asItWas(found.relief()));
        }
        if (found.swivel() != null) {
            items.add(swivel(found.swivel()));
        }
        items.addAll(new DialMend(found, division, figures).items());
        return items;
    }

    private Item phase(Phase phase) {
        return Item.Group.of(
                "phase",
                figures.fitted("begins", "t_0", phase.start(), "land angle where the rise begins"),
                figures.slope("slope", "k_b", phase.slope(), "slope from there on"));
    }

    /** Another fit of the same readings, beside the main one. */
    private Item beside(String key, String index, DialFit fit, String how) {
        List<Item> items = new ArrayList<>();
        items.add(figures.slope("slope", "k_" + index, fit.slope(), "slope, " + how));
        RunOut runOut = fit.runOut();
        if (runOut != null) {
            items.add(figures.fitted("eccentricity", "e_" + index, runOut.eccentricity(), "eccentricity, " + how));
            items.add(figures.fitted("direction", "φ_" + index, runOut.towards(), "its direction, " + how));
        }
        return new Item.Group(key, items);
    }

    private List<Item.Group> outliers() {
        List<Item.Group> rows = new ArrayList<>();
        for (Outlier outlier : found.fits().outliers()) {
            int number = rows.size() + 1;
            double deg = outlier.reading().angle().deg();
            double mm = outlier.reading().value().mm();
            rows.add(Item.Group.of(
                    "outlier",
                    new Item.Count("land", outlier.reading().land()),
                    figures.given("angle", "θ_o" + number, deg, Unit.ANGLE, "land angle of the suspected reading"),
                    figures.given("reading", "y_o" + number, mm, Unit.LENGTH, "the suspected reading"),
                    pure("distance", "d_o" + number, outlier.studentised(), "its distance from the rest, studentised"),
                    pure("limit", "d_max" + number, outlier.limit(), "one sound set in twenty has one beyond this")));
        }
        return rows;
    }

    private Item pure(String key, String symbol, double value, String means) {
        return figures.figure(key, symbol, value, Unit.PURE, means);
    }

    private Item lands() {
        List<Item.Group> rows = new ArrayList<>();
        for (LandFound land : found.lands().lands()) {
            List<Item> items = new ArrayList<>(List.of(new Item.Count("land", land.land())));
            if (land.height() != null) {
                items.add(figures.fitted("height", "z_" + land.land(), land.height(), "height of land " + land.land()));
            }
            if (land.edge() != null) {
                items.add(figures.fitted("edge", "y_" + land.land(), land.edge(), "edge of land " + land.land()));
            }
            if (land.share() != null) {
                items.add(share(land.land(), land.share()));
            }
            rows.add(new Item.Group("land", items));
        }
        return new Item.Rows("lands", rows);
    }

    private Item share(int land, LoadShare share) {
        String means = "share of tooth " + land;
        Rule percent = figures.rule(share.percent(), Unit.SHARE, "q_" + land, means);
        Rule expanded =
                figures.rule(share.uncertainty(), Unit.SHARE, "U_q_" + land, means + ": expanded uncertainty, 95 %");
        return new Item.FittedFigure(
                "share",
                new Item.Point(share.percent(), percent),
                null,
                new Item.Point(share.uncertainty(), expanded),
                Unit.SHARE);
    }

    private Item relief(ReliefFound relief) {
        return Item.Group.of(
                "relief",
                figures.fitted("working", "α_w", relief.working(), "working relief found"),
                figures.angle("static", "α_n", relief.ground(), "static relief found"),
                figures.angle("wanted", "α_wanted", relief.wanted(), "working relief that it is judged by"),
                new Item.Text("verdict", code(relief)));
    }

    /** "Set it like it was": what would grind the same again, and whether to. */
    private Item asItWas(ReliefFound relief) {
        ReliefFound.AsItWas was = relief.asItWas();
        return Item.Group.of(
                "asItWas",
                new Item.Text("verdict", Words.of("dial.verdict." + code(relief).replace(' ', '-'))),
                figures.length("axialOnly", "a_was", was.axialOnly(), "axial rise alone"),
                figures.length("radialOnly", "b_was", was.radialOnly(), "radial rise alone"),
                figures.length("squareOnly", "c_was", was.squareOnly(), "rise square to the chamfer"));
    }

    private static String code(ReliefFound relief) {
        return relief.verdict().name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private Item swivel(Swivel swivel) {
        return Item.Group.of(
                "swivel",
                figures.fitted("low", "Δκ", swivel.low(), "swivel set too low by"),
                figures.length("over", "l_κ", swivel.length(), "length of chamfer that was dialled"));
    }
}
