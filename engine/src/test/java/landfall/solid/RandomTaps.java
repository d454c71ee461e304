// SPDX-License-Identifier: Apache-2.0
package landfall.solid;

import java.util.Random;
import landfall.fault.OutOfRange;
import landfall.grind.Envelopes;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.tap.Body;
import landfall.tap.ChamferGiven;
import landfall.tap.Cutting;
import landfall.tap.FluteForm;
import landfall.tap.FluteKind;
import landfall.tap.Flutes;
import landfall.tap.Land;
import landfall.tap.Make;
import landfall.tap.PitchZone;
import landfall.tap.Tap;
import landfall.tap.ThreadRelief;
import landfall.thread.Family;
import landfall.thread.Hand;
import landfall.thread.Lead;
import landfall.thread.Profile;
import landfall.thread.ScrewThread;

/** Taps that a shop might hold, of all kinds that are drawn, by a seed. */
final class RandomTaps {
    private final Random random;

    RandomTaps(long seed) {
        this.random = new Random(seed);
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    /** The next tap whose flutes close. */
    Tap next() {
        while (true) {
            try {
                Tap tap = draw();
                FluteCurve.of(
                        tap,
                        tap.flutes().form().core().mm() / 2,
                        tap.flutes().form().radius().mm());
                if (BodyRefusals.of(tap).isEmpty()) {
                    return tap;
                }
            } catch (OutOfRange e) {
                // a flute that does not close is no tap; the next draw is another one
            }
        }
    }

    private Tap draw() {
        double d = between(3, 24);
        double pitch = Math.max(0.4, d * between(0.08, 0.16));
        int starts = random.nextInt(6) == 0 ? 2 : 1;
        Hand hand = random.nextInt(5) == 0 ? Hand.LEFT : Hand.RIGHT;
        ScrewThread thread = new ScrewThread(
                Family.METRIC, Profile.ISO_60, Length.ofMm(d), new Lead(Length.ofMm(pitch), starts), hand);
        int count = 2 + random.nextInt(d > 12 ? 4 : 3);
        boolean spiral = random.nextInt(3) == 0;
        FluteKind kind =
                !spiral ? FluteKind.STRAIGHT : random.nextBoolean() ? FluteKind.SPIRAL_RIGHT : FluteKind.SPIRAL_LEFT;
        double core = d * between(0.38, 0.5);
        double land = 360.0 / count * between(0.32, 0.5);
        boolean rake = random.nextInt(4) != 0;
        double radius = d * between(0.18, 0.3);
        var form = new FluteForm(Length.ofMm(core), Length.ofMm(radius), rake ? Angle.ofDeg(between(-3, 14)) : null);
        var flutes = new Flutes(count, kind, form, Angle.ofDeg(spiral ? between(8, 40) : 0));
        var cone = new ChamferGiven(null, Length.ofMm(d - pitch * between(1.0, 1.4)), between(1.5, 6));
        Land lands = rake ? new Land.Span(Angle.ofDeg(land)) : new Land.LeftByFlute();
        double length = pitch * between(10, 18);
        ThreadRelief.Kind relieved = ThreadRelief.Kind.values()[random.nextInt(3)];
        var relief = relieved == ThreadRelief.Kind.CONCENTRIC
                ? ThreadRelief.NONE
                : new ThreadRelief(
                        relieved,
                        Angle.ofDeg(between(0.3, 1.2)),
                        relieved == ThreadRelief.Kind.CON_ECCENTRIC ? Angle.ofDeg(between(4, 12)) : Angle.ZERO);
        double over = between(0, 0.05) * pitch;
        double pitchDiameter = thread.pitchDiameter().mm() + over;
        return new Tap(
                Envelopes.bare(thread),
                new Cutting(flutes, lands, cone, relief),
                new Body(
                        Length.ofMm(length),
                        Length.ofMm(length + d * between(3, 6)),
                        Length.ofMm(d * between(0.7, 1.1)),
                        between(0, 0.001)),
                new PitchZone(Limits.ofMm(pitchDiameter - 0.01, pitchDiameter + 0.01), landfall.tap.Least.UNKNOWN),
                Make.PLAIN_HSS);
    }
}
