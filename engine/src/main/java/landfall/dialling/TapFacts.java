// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

import landfall.fault.OutOfRange;
import landfall.grind.ChamferRelief;
import landfall.grind.CrestFall;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.tap.Tap;
import landfall.working.Pen;

/**
 * What dialling in needs to know of the tap.
 *
 * @param flutes lands round it
 * @param lead advance in one turn
 * @param leadFelt lead as the relief feels it; on straight flutes the lead
 * @param chamfer angle of the chamfer to the axis
 * @param radius at the middle of the chamfer
 * @param land angle from edge to heel
 * @param crest how the crests of the thread fall by their own relief
 */
public record TapFacts(
        int flutes, Length lead, Length leadFelt, Angle chamfer, Length radius, Angle land, CrestFall crest) {
    public TapFacts {
        if (flutes < 1) {
            throw new OutOfRange("flutes", "" + flutes, "1 or more", "count the flutes of the tap");
        }
        if (lead.mm() <= 0 || leadFelt.mm() <= 0 || radius.mm() <= 0) {
            throw new OutOfRange(
                    "lead and radius of the tap",
                    Numbers.both(lead) + ", " + Numbers.both(radius),
                    "more than 0",
                    "take them from the tap's card");
        }
        if (chamfer.deg() <= 0 || chamfer.deg() >= 80) {
            throw new OutOfRange(
                    "chamfer angle",
                    Numbers.plain(chamfer.deg()) + " deg",
                    "over 0 and under 80 deg",
                    "give the angle between chamfer and axis, one side");
        }
        if (land.deg() <= 0 || land.deg() >= 360.0 / flutes) {
            throw new OutOfRange(
                    "land angle",
                    Numbers.plain(land.deg()) + " deg",
                    "over 0 and under " + Numbers.plain(360.0 / flutes) + " deg, one land's share of the turn",
                    "measure the land from edge to heel");
        }
    }

    /** The facts of a tap that has been judged. */
    public static TapFacts of(Tap tap) {
        return new TapFacts(
                tap.flutes().count(),
                tap.thread().lead().perTurn(),
                ChamferRelief.leadFelt(tap.thread(), tap.flutes(), Pen.NONE),
                tap.chamfer().angle(),
                ChamferRelief.midRadius(tap.thread().major(), tap.chamfer(), Pen.NONE),
                tap.landAngle(),
                CrestFall.of(tap.thread().major(), tap.cutting().relief()));
    }

    /** A tap with straight flutes and a concentric thread. */
    public static TapFacts straight(int flutes, Length lead, Angle chamfer, Length radius, Angle land) {
        return new TapFacts(flutes, lead, lead, chamfer, radius, land, CrestFall.NONE);
    }
}
