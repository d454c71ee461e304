// SPDX-License-Identifier: Apache-2.0
package landfall.regrind;

import java.util.List;
import landfall.fault.Caution;
import landfall.grind.Relief;
import landfall.grind.Stock;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.tap.FluteKind;
import landfall.tap.Tap;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Trust;

/** Each way by itself: whether it mends this damage, and what it takes. */
final class Ways {
    static final Rule TORN =
            Rule.given("g_torn", "mm", "length of spoilt full threads from the large end of the chamfer");
    static final Rule NOSE = Rule.given("g_nose", "mm", "length from the point to whole lands");
    static final Rule CUT_TORN = new Rule(
            "s_cut",
            "l_c + g_torn",
            "mm",
            Counts.GEOMETRY,
            Trust.DERIVED,
            "length to cut off: chamfer and spoilt threads");
    static final Rule CUT_NOSE =
            new Rule("s_cut", "g_nose", "mm", Counts.GEOMETRY, Trust.DERIVED, "length to cut off: the broken nose");
    static final Rule CUT_BOTH =
            new Rule("s_cut", "max(l_c + g_torn, g_nose)", "mm", Counts.GEOMETRY, Trust.DERIVED, "length to cut off");
    static final Rule CUT_ALL =
            new Rule("s_off", "s_cut + s_0", "mm", Counts.GEOMETRY, Trust.DERIVED, "thread length lost by cutting off");
    static final Rule FACE_WEAR = Rule.given("w_flank", "mm", "wear on the flanks of the full threads, from the edge");
    static final Rule FACE_EACH = new Rule(
            "d_f",
            "max(w_wear, w_flank)/(1 - tan(α_w)*tan(γ_0))/(d/2)*180/pi",
            "deg",
            Counts.GEOMETRY,
            Trust.DERIVED,
            "angle of land to take off the face");

    static final Rule REACH = Rule.given("l_sp", "mm", "length of the spiral point from the tap's end");
    static final Rule REACH_LEFT = new Rule(
            "l_past",
            "l_sp - l_c - s_all",
            "mm",
            Counts.GEOMETRY,
            Trust.DERIVED,
            "reach of the spiral point past the new chamfer");

    /** What is decided on. */
    record On(Tap tap, Damage damage, Circumstances around) {}

    private final Tap tap;
    private final Damage damage;
    private final Circumstances around;
    private final Stock stock;
    private final Margins margins;
    private final List<Caution> cautions;
    private final Pen pen;

    Ways(On on, Stock stock, Margins margins, List<Caution> cautions, Pen pen) {
        this.tap = on.tap();
        this.damage = on.damage();
        this.around = on.around();
        this.stock = stock;
        this.margins = margins;
        this.cautions = cautions;
        this.pen = pen;
    }

    Choice chamfer() {
        if (damage.torn() != null) {
            return Choice.barred(Way.CHAMFER, "spoilt teeth of the full thread would stand in the new chamfer");
        }
        if (damage.nose() != null) {
            return Choice.barred(Way.CHAMFER, "the nose is broken: square the end first");
        }
        if (damage.flank() != null) {
            return Choice.barred(
                    Way.CHAMFER, "the flanks of the full threads are worn, and the chamfer does not mend them");
        }
        if (!pointReaches()) {
            return Choice.barred(
                    Way.CHAMFER,
                    "the spiral point would no longer reach two threads past the chamfer: grind the point first");
        }
        return byLength(Way.CHAMFER, stock.after().wholeAxial().mm(), "takes off wear land and chips of the chamfer");
    }

    /** A spiral point must reach two threads past the chamfer when it has been ground back. */
    private boolean pointReaches() {
        Length reach = around.reach();
        if (reach == null || tap.flutes().kind() != FluteKind.SPIRAL_POINT) {
            return true;
        }
        double past = pen.write(REACH, reach.mm())
                - stock.after().chamferLength().mm()
                - stock.after().wholeAxial().mm();
        return pen.write(REACH_LEFT, past) >= 2 * tap.thread().pitch().mm();
    }

    /** The last resort: right only where nothing else is open. */
    Choice scrap(boolean right) {
        Choice.Cost whole = new Choice.Cost(null, around.worth());
        return right
                ? new Choice(
                        Way.SCRAP, null, null, whole, null, "no other way mends the tap and leaves what it must keep")
                : new Choice(
                        Way.SCRAP, null, null, whole, "another way mends the tap and leaves what it must keep", "");
    }

    Choice cutOff() {
        Length torn = damage.torn();
        Length nose = damage.nose();
        double chamfer = stock.after().chamferLength().mm();
        double cut;
        if (torn != null && nose != null) {
            double g = pen.write(TORN, torn.mm());
            cut = pen.write(CUT_BOTH, Math.max(chamfer + g, pen.write(NOSE, nose.mm())));
        } else if (torn != null) {
            cut = pen.write(CUT_TORN, chamfer + pen.write(TORN, torn.mm()));
        } else if (nose != null) {
            cut = pen.write(CUT_NOSE, pen.write(NOSE, nose.mm()));
        } else if (damage.flank() != null) {
            return Choice.barred(Way.CUT_OFF, "how far up the thread the flanks are worn is not told");
        } else {
            return Choice.barred(Way.CUT_OFF, "nothing to cut off: the end and the full threads are whole");
        }
        double lost = pen.write(CUT_ALL, cut + stock.allowance().mm());
        return byLength(Way.CUT_OFF, lost, "cuts away what is broken and grinds the chamfer anew behind it");
    }

    Choice face(Relief relief) {
        if (tap.flutes().kind() != FluteKind.STRAIGHT) {
            return Choice.barred(Way.FACE, "the faces of these flutes are not ground on a straight slide");
        }
        if (damage.chip() != null || damage.torn() != null || damage.nose() != null) {
            return Choice.barred(Way.FACE, "broken-out metal reaches further back than a face is ground");
        }
        double w = damage.wear().land(tap.thread(), Pen.NONE).mm();
        Length flank = damage.flank();
        double wide = Math.max(w, flank == null ? 0 : flank.mm());
        if (wide == 0) {
            return Choice.barred(Way.FACE, "nothing is worn");
        }
        double gamma = FaceLife.rake(tap, cautions, pen);
        double tangents = Math.tan(relief.working().rad()) * Math.tan(Math.toRadians(gamma));
        double angle =
                Math.toDegrees(wide / (1 - tangents) / (tap.thread().major().mm() / 2));
        if (flank == null) {
            pen.write(FaceLife.EACH, angle);
        } else {
            pen.write(FACE_WEAR, flank.mm());
            pen.write(FACE_EACH, angle);
        }
        String barred = angle > margins.landDeg() ? "leaves less land than the tap must keep" : null;
        return new Choice(
                Way.FACE,
                null,
                Angle.ofDeg(angle),
                cost(Way.FACE, angle, margins.landDeg()),
                barred,
                "takes off wear of the chamfer and of the full threads alike");
    }

    private Choice byLength(Way way, double lost, String why) {
        Double have = margins.thread();
        String barred = have != null && lost > have ? "leaves less thread than the tap must keep" : null;
        return new Choice(
                way, Length.ofMm(lost), null, have == null ? Choice.Cost.UNKNOWN : cost(way, lost, have), barred, why);
    }

    private Choice.Cost cost(Way way, double lost, double have) {
        return have > 0 ? MetalCost.of(way, lost / have, around.worth(), pen) : Choice.Cost.UNKNOWN;
    }
}
