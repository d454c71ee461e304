// SPDX-License-Identifier: Apache-2.0
package landfall.cards.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import landfall.cards.answer.Document;
import landfall.cards.answer.Item;
import landfall.cards.answer.Unit;
import landfall.dialling.Correction;
import landfall.dialling.DialFindings;
import landfall.dialling.DialFit;
import landfall.dialling.Fitted;
import landfall.dialling.FittedAngle;
import landfall.dialling.LandFound;
import landfall.dialling.LoadShare;
import landfall.dialling.ReliefFound;
import landfall.dialling.RunOut;
import landfall.fault.Caution;
import landfall.quantity.UnitSystem;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Step;
import landfall.working.Worked;

/**
 * Findings of a dialling-in laid out as one answer. A fitted figure has no line that a pocket calculator could follow:
 * its step says so, and where the fit is described.
 */
final class DialDocument {
    private static final Source FIT = Source.of("derived", "docs/methods/dialling.md");

    private final DialFindings found;
    private final List<Step> steps;

    private DialDocument(DialFindings found, List<Step> steps) {
        this.found = found;
        this.steps = steps;
    }

    static Document of(Worked<DialFindings> worked, List<Caution> cautions, String callOut, UnitSystem units) {
        List<Step> steps = new ArrayList<>(worked.steps());
        DialDocument document = new DialDocument(worked.value(), steps);
        List<Item> items = document.items();
        return new Document("dial", callOut + ", " + worked.value().place().code(), units, items, steps, cautions);
    }

    private List<Item> items() {
        List<Item> items = new ArrayList<>();
        items.add(new Item.Text("place", found.place().code()));
        items.add(slope("slope", "k", found.slope(), "slope of the reading over the land"));
        RunOut runOut = found.runOut();
        if (runOut != null) {
            items.add(fitted("eccentricity", "e", runOut.eccentricity(), "eccentricity"));
            if (runOut.direction() != null) {
                items.add(fitted("direction", "φ", runOut.direction(), "direction of the high side"));
            }
        }
        DialFit common = found.fits().commonZero();
        if (common != null) {
            items.add(commonZero(common));
        }
        items.add(lands());
        if (found.relief() != null) {
            items.add(relief(found.relief()));
        }
        items.add(corrections());
        return items;
    }

    private Item commonZero(DialFit common) {
        List<Item> items = new ArrayList<>();
        items.add(slope("slope", "k_0", common.slope(), "slope, all lands of one height"));
        RunOut runOut = common.runOut();
        if (runOut != null) {
            items.add(fitted("eccentricity", "e_0", runOut.eccentricity(), "eccentricity, all lands of one height"));
            if (runOut.direction() != null) {
                items.add(fitted("direction", "φ_0", runOut.direction(), "its direction"));
            }
        }
        return new Item.Group("commonZero", items);
    }

    private Item lands() {
        List<Item.Group> rows = new ArrayList<>();
        for (LandFound land : found.lands().lands()) {
            List<Item> items = new ArrayList<>(List.of(new Item.Count("land", land.land())));
            if (land.height() != null) {
                items.add(fitted("height", "z_" + land.land(), land.height(), "height of land " + land.land()));
            }
            if (land.edge() != null) {
                items.add(fitted("edge", "y_" + land.land(), land.edge(), "edge of land " + land.land()));
            }
            if (land.share() != null) {
                items.add(share(land.land(), land.share()));
            }
            rows.add(new Item.Group("land", items));
        }
        return new Item.Rows("lands", rows);
    }

    private Item share(int land, LoadShare share) {
        Rule percent = rule(share.percent(), Unit.SHARE, "q_" + land, "share of tooth " + land);
        Rule expanded = rule(
                share.uncertainty(),
                Unit.SHARE,
                "U_q_" + land,
                "share of tooth " + land + ": expanded uncertainty, 95 %");
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
                fitted("working", "α_w", relief.working(), "working relief found"),
                angle("static", relief.ground().deg(), "α_n", "static relief found"),
                angle("wanted", relief.wanted().deg(), "α_wanted", "working relief that it is judged by"),
                new Item.Text(
                        "verdict",
                        relief.verdict().name().toLowerCase(Locale.ROOT).replace('_', ' ')));
    }

    private Item corrections() {
        List<Item.Group> rows = new ArrayList<>();
        int number = 0;
        for (Correction correction : found.corrections()) {
            number++;
            List<Item> items = new ArrayList<>(List.of(new Item.Text("do", correction.act())));
            if (correction.length() != null) {
                double by = correction.length().mm();
                items.add(new Item.Figure("by", by, Unit.LENGTH, rule(by, Unit.LENGTH, "by_" + number, "by how much")));
            } else if (correction.angle() != null) {
                items.add(angle("by", correction.angle().deg(), "by_" + number, "by how much"));
            }
            rows.add(new Item.Group("correction", items));
        }
        return new Item.Rows("corrections", rows);
    }

    private Item.Figure angle(String key, double deg, String symbol, String means) {
        return new Item.Figure(key, deg, Unit.ANGLE, rule(deg, Unit.ANGLE, symbol, means));
    }

    private Item fitted(String key, String symbol, Fitted fitted, String means) {
        double[] three = {
            fitted.value().mm(), fitted.standard().mm(), fitted.uncertainty().mm()
        };
        return fitted(key, symbol, three, Unit.LENGTH, means);
    }

    private Item slope(String key, String symbol, Fitted fitted, String means) {
        double[] three = {
            fitted.value().mm(), fitted.standard().mm(), fitted.uncertainty().mm()
        };
        return fitted(key, symbol, three, Unit.LENGTH_PER_RADIAN, means);
    }

    private Item fitted(String key, String symbol, FittedAngle fitted, String means) {
        double[] three = {
            fitted.value().deg(), fitted.standard().deg(), fitted.uncertainty().deg()
        };
        return fitted(key, symbol, three, Unit.ANGLE, means);
    }

    private Item fitted(String key, String symbol, double[] three, Unit unit, String means) {
        return new Item.FittedFigure(
                key,
                new Item.Point(three[0], rule(three[0], unit, symbol, means)),
                new Item.Point(three[1], rule(three[1], unit, "u_" + symbol, means + ": standard uncertainty")),
                new Item.Point(three[2], rule(three[2], unit, "U_" + symbol, means + ": expanded uncertainty, 95 %")),
                unit);
    }

    /** The rule of a step with this symbol and value; a fitted step is added where the engine wrote none. */
    private Rule rule(double held, Unit unit, String symbol, String means) {
        for (Step step : steps) {
            if (step.symbol().equals(symbol) && Behind.agrees(step, held, unit)) {
                return step.rule();
            }
        }
        Rule rule = Rule.fitted(symbol, unit.sign(UnitSystem.METRIC), FIT, means);
        steps.add(new Step(rule, held));
        return rule;
    }
}
