// SPDX-License-Identifier: Apache-2.0
package landfall.grind;

import java.util.List;
import landfall.fault.Caution;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.tap.Tap;
import landfall.working.Pen;

/**
 * The form to grind on the chamfer, whatever the fixture: relief at its middle and along it, and the fall that gives
 * it.
 *
 * @param lead lead angles, advance over the land
 */
public record ChamferShape(LeadAngle lead, ChamferPlace place, Relief relief, List<ReliefAlong> along, Fall fall) {
    public ChamferShape {
        along = List.copyOf(along);
    }

    /** The form for a tap and a wish; what was not told and taken instead is added to {@code assumed}. */
    public static ChamferShape of(Tap tap, GrindWish wish, List<Caution> assumed, Pen pen) {
        Angle land = tap.cutting().land().angle(tap.thread().major(), tap.flutes(), pen);
        LeadAngle lead = LeadAngle.of(tap.thread(), land, pen);
        ChamferPlace place = ChamferPlace.of(tap, land, pen);
        Angle loss = ChamferRelief.loss(place.midRadius(), place.kappa(), place.leadFelt(), pen);
        Angle working = ReliefWanted.of(wish, place, loss, assumed, pen);
        Relief relief = ChamferRelief.forWorking(working, loss, place.kappa(), pen);
        Fall fall = ChamferRelief.fall(relief, place.midRadius(), place.kappa(), land, pen);
        return new ChamferShape(lead, place, relief, ReliefAlong.of(place, fall.perRadian(), pen), fall);
    }

    /** Angle of the land, edge to heel. */
    public Angle land() {
        return place.land();
    }

    /** Radius at the middle of the chamfer. */
    public Length midRadius() {
        return place.midRadius();
    }
}
