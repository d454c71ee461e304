// SPDX-License-Identifier: Apache-2.0
package landfall.tap;

import landfall.fault.OutOfRange;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.thread.CallOut;
import landfall.thread.ScrewThread;
import landfall.working.Pen;

/** A tap, judged: its chamfer and lands close, and what is left open is null. */
public record Tap(CallOut callOut, Cutting cutting, Body body, PitchZone pitch, Make make) {
    /** A land typed beside a one-arc flute may part from it by this much. */
    private static final double LAND_AGREEMENT_DEG = 0.5;

    public Tap {
        ScrewThread thread = callOut.thread();
        cutting.chamfer().resolve(thread, Pen.NONE);
        Angle land = cutting.land().angle(thread.major(), cutting.flutes(), Pen.NONE);
        FluteForm form = cutting.flutes().form();
        judge(form, thread);
        if (form.rake() == null && form.core() != null && form.radius() != null) {
            Angle left = new Land.LeftByFlute().angle(thread.major(), cutting.flutes(), Pen.NONE);
            if (Math.abs(left.deg() - land.deg()) > LAND_AGREEMENT_DEG) {
                throw new OutOfRange(
                        "land",
                        "%.2f deg".formatted(land.deg()),
                        "%.2f deg, as core and flute radius leave it (within 0.5 deg)".formatted(left.deg()),
                        "measure again, leave the land out, or give the rake");
            }
        }
    }

    private static void judge(FluteForm form, ScrewThread thread) {
        Length core = form.core();
        if (core != null && core.mm() >= thread.pitchDiameter().mm()) {
            throw new OutOfRange(
                    "flutes.core",
                    core.words(),
                    "under the basic pitch diameter, " + thread.pitchDiameter().words(),
                    "measure the core across the flute floors");
        }
        Length radius = form.radius();
        if (radius != null && radius.mm() > thread.major().mm()) {
            throw new OutOfRange(
                    "flutes.radius",
                    radius.words(),
                    "at most the basic major diameter, " + thread.major().words(),
                    "measure the flute's arc with a radius gauge");
        }
    }

    public ScrewThread thread() {
        return callOut.thread();
    }

    public Flutes flutes() {
        return cutting.flutes();
    }

    public Chamfer chamfer() {
        return cutting.chamfer().resolve(thread(), Pen.NONE);
    }

    public Angle landAngle() {
        return cutting.land().angle(thread().major(), flutes(), Pen.NONE);
    }
}
