// SPDX-License-Identifier: Apache-2.0
package landfall.cut;

import java.util.ArrayList;
import java.util.List;
import landfall.cut.CutForecast.Load;
import landfall.cut.CutWish.Grip;
import landfall.cut.CutWish.Opening;
import landfall.cut.Driven.Drive;
import landfall.cut.Driven.Holder;
import landfall.fault.Caution;
import landfall.quantity.Length;
import landfall.tap.FluteKind;
import landfall.tap.Tap;

/** What must be said of the way the tap is turned: by hand, drill press, lathe or mill, and by the holder. */
final class DriveCautions {
    private static final double LAG_THAT_SHAVES_MM = 0.02;

    private final Tap tap;
    private final CutWish wish;
    private final Load load;
    private final Pace pace;
    private final Driven driven;
    private final List<Caution> cautions = new ArrayList<>();

    DriveCautions(Tap tap, CutWish wish, Load load, Pace pace) {
        this.tap = tap;
        this.wish = wish;
        this.load = load;
        this.pace = pace;
        this.driven = wish.how().driven();
    }

    List<Caution> all() {
        if (driven.by() != null) {
            machine(driven.by());
        }
        if (driven.holder() != null) {
            holder(driven.holder());
        }
        slip();
        feed();
        spindle();
        runOn();
        grip();
        return cautions;
    }

    private void add(String code, String text, String raisedBy) {
        cautions.add(new Caution(code, text, raisedBy));
    }

    private void machine(Drive drive) {
        switch (drive) {
            case HAND -> byHand();
            case DRILL_PRESS ->
                add(
                        "drillPress",
                        "Drill press: reversing head or floating holder with a slip set under the breaking torque; the"
                                + " quill only follows. Set the depth stop to thread and chamfer together.",
                        "B_l");
            case LATHE ->
                add(
                        "lathe",
                        "Lathe: tap follower or floating holder in the tailstock, left free to follow; lowest speed, or"
                                + " the chuck pulled round by hand; stop short of the bottom and turn back by hand.",
                        "");
            case MILL ->
                add(
                        "mill",
                        "Mill: the feed is the lead each turn, both ways; a holder with float"
                                + " unless the spindle is held"
                                + " to the feed. A feed off by 1 %% is %.2f mm over this depth."
                                        .formatted(0.01 * wish.depth().mm()),
                        "L");
        }
    }

    private void byHand() {
        add(
                "byHand",
                "By hand: countersink, start square in a guide block or under a spindle with the power off, look from"
                        + " two sides after two turns; bar by the tap's size; both hands, no side pull.",
                "l_safe");
        if (tap.flutes().kind() == FluteKind.SPIRAL_RIGHT || tap.flutes().kind() == FluteKind.SPIRAL_LEFT) {
            add(
                    "spiralByHand",
                    "A spiral flute pulls itself in and does not break its chip: guide it all the way.",
                    "");
        }
        add(
                "handNoSpeed",
                "Speed, spindle and power are of a machine; the time is of a hand at about 20 turns a minute.",
                "t_all");
        Length bar = driven.bar();
        if (bar == null) {
            return;
        }
        if (bar.compareTo(load.hand().breaks()) >= 0) {
            add(
                    "barCanBreakTheTap",
                    "Two firm hands on this bar can break the tap: take one well under "
                            + load.hand().breaks().words() + ", or turn with the fingers only.",
                    "M_h");
        }
        if (bar.compareTo(load.hand().needed()) < 0) {
            add(
                    "barTooShort",
                    "Two firm hands on this bar may not turn the tap: "
                            + load.hand().needed().words() + " is needed for the upper torque.",
                    "M_h");
        }
    }

    private void holder(Holder holder) {
        switch (holder) {
            case RIGID ->
                add(
                        "rigidHolder",
                        "A rigid holder passes every difference between feed and lead on to the flanks: only where the"
                                + " spindle is truly held to the feed.",
                        "L");
            case FLOAT ->
                add(
                        "floatHolder",
                        "Float: set the feed 2 to 5 % under the lead on the way in (common practice), never over it;"
                                + " the holder must have that much pull-out. A stiff or heavy float still shaves.",
                        "L");
            case SYNCHRONISED ->
                add(
                        "synchronisedHolder",
                        "Held to the feed: feed is the lead exactly; a little float still takes up pitch error and the"
                                + " lag at reversal.",
                        "L");
            case REVERSING_HEAD ->
                add(
                        "reversingHead",
                        "Reversing head: its arm must rest against a stop before the spindle starts; it runs out faster"
                                + " than in; never stop the spindle in the hole.",
                        "");
            case SLIP ->
                add("slipHolder", "Slip: try the setting on a spare tap or a torque wrench before the first hole.", "");
        }
    }

    private void slip() {
        if (DriveEffect.slips(driven) && load.drive().slip() == null) {
            add(
                    "noRoomForSlip",
                    "No setting of a slip both turns this tap and saves it: the upper torque is over three quarters of"
                            + " the lower breaking torque.",
                    "m_l");
        }
    }

    private void feed() {
        Length lag = load.drive().lag();
        if (lag == null) {
            return;
        }
        boolean floats = driven.holder() != null && driven.holder().floats();
        if (floats && lag.mm() > 0) {
            add("feedOverLead", "The feed is over the lead: a float is pushed shut and the tap with it.", "e_f");
        } else if (floats) {
            add("floatTravel", "The float must give %.2f mm of pull-out over this depth.".formatted(-lag.mm()), "e_f");
        } else if (Math.abs(lag.mm()) > LAG_THAT_SHAVES_MM) {
            add(
                    "feedShaves",
                    "Feed and lead part by %.2f mm over this depth: without a float that is shaved off one flank."
                            .formatted(Math.abs(lag.mm())),
                    "e_f");
        }
    }

    private void spindle() {
        Boolean horizontal = driven.horizontal();
        if (horizontal == null || wish.how().opening() != Opening.BLIND || driven.byHand()) {
            return;
        }
        if (horizontal) {
            add("horizontal", "Horizontal: chips lie along the lower side of the hole; wash them out.", "");
        } else {
            add(
                    "vertical",
                    "Vertical: loose chips fall back onto the bottom of a blind hole; blow or wash it out.",
                    "");
        }
    }

    private void runOn() {
        Length overrun = pace.overrun();
        double pitch = tap.thread().pitch().mm();
        if (overrun != null && overrun.mm() > Math.max(1, pitch)) {
            add(
                    "runsOnFar",
                    "The spindle may run on %.1f mm after its stop: more than the usual room below a tap. Stop earlier,"
                                    .formatted(overrun.mm())
                            + " slower, or drill deeper.",
                    "l_over");
        }
    }

    private void grip() {
        if (wish.how().holding().grip() == Grip.CHUCK) {
            add(
                    "chuckSlips",
                    "A drill chuck holds the round by friction: it may slip before the tap breaks, and marks the shank."
                            + " Never count on it.",
                    "");
        } else if (wish.how().holding().grip() == Grip.COLLET) {
            add("colletSlips", "A collet without a square holds by friction: keep shank and collet dry and clean.", "");
        }
    }
}
