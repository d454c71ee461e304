// SPDX-License-Identifier: Apache-2.0
package landfall.grind;

import java.util.List;
import java.util.Optional;
import landfall.fault.Caution;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.quantity.Turning;
import landfall.tap.Body;
import landfall.tap.ChamferGiven;
import landfall.tap.Cutting;
import landfall.tap.Flutes;
import landfall.tap.Land;
import landfall.tap.Make;
import landfall.tap.PitchZone;
import landfall.tap.Tap;
import landfall.tap.ThreadRelief;
import landfall.thread.CallOut;
import landfall.thread.Family;
import landfall.thread.Hand;
import landfall.thread.Lead;
import landfall.thread.Profile;
import landfall.thread.ScrewThread;
import landfall.thread.Side;
import landfall.thread.SideLimits;
import landfall.working.Pen;

/** Taps and fixtures for the tests of the set-up. */
final class Bench {
    static final ScrewThread M10 = metric(10, 1.5);
    static final ScrewThread HALF_13 = inch(0.5, 13);

    private Bench() {}

    /** A call-out with a thread and nothing else. */
    record Bare(ScrewThread thread) implements CallOut {
        @Override
        public String normal() {
            return thread.family().code() + " " + thread.major().mm();
        }

        @Override
        public List<String> classes() {
            return List.of();
        }

        @Override
        public Optional<SideLimits> limits(Side side, Pen pen) {
            return Optional.empty();
        }

        @Override
        public List<Caution> cautions() {
            return List.of();
        }
    }

    static ScrewThread metric(double d, double pitch) {
        return new ScrewThread(
                Family.METRIC, Profile.ISO_60, Length.ofMm(d), new Lead(Length.ofMm(pitch), 1), Hand.RIGHT);
    }

    static ScrewThread inch(double d, double tpi) {
        return new ScrewThread(
                Family.UNIFIED, Profile.ISO_60, Length.ofInch(d), new Lead(Length.ofInch(1 / tpi), 1), Hand.RIGHT);
    }

    static ScrewThread leftHand(ScrewThread thread) {
        return new ScrewThread(thread.family(), thread.profile(), thread.major(), thread.lead(), Hand.LEFT);
    }

    /** A chamfer whose middle lies at a radius: the point diameter follows. */
    static ChamferGiven chamferAt(ScrewThread thread, Angle kappa, Length midRadius) {
        return new ChamferGiven(kappa, midRadius.times(4).minus(thread.major()), null);
    }

    static Tap tap(ScrewThread thread, Flutes flutes, Angle land, ChamferGiven chamfer) {
        return new Tap(
                new Bare(thread),
                new Cutting(flutes, new Land.Span(land), chamfer, ThreadRelief.NONE),
                Body.UNKNOWN,
                PitchZone.UNKNOWN,
                Make.PLAIN_HSS);
    }

    static Tap m10Plug(int flutes, double landDeg) {
        return tap(
                M10, Flutes.straight(flutes), Angle.ofDeg(landDeg), chamferAt(M10, Angle.ofDeg(9), Length.ofMm(4.6)));
    }

    static Cam cam(int lobes, double rise, double back) {
        return new Cam(
                lobes,
                new CamCurve.Straight(),
                new Lobe(Angle.ZERO, Angle.ofDeg(rise), Angle.ofDeg(back)),
                Limits.ofMm(0, 8),
                Limits.ofMm(0, 2));
    }

    static Fixture fixture(Cam cam) {
        Wheel wheel = new Wheel(Length.ofMm(150), "A80J6V", Turning.ofRevPerMin(4000), Turning.ofRevPerMin(3200));
        return new Fixture("bench", cam, wheel, Length.ofMm(0.01), Angle.ofDeg(0.25));
    }

    static GrindWish working(double deg) {
        return new GrindWish(Angle.ofDeg(deg), null, landfall.tap.Wear.of(Length.ofMm(0.2)), null, null);
    }

    static GrindSetup setup(Tap tap, Fixture fixture, GrindWish wish) {
        return GrindSetup.of(tap, fixture, wish).orThrow().value();
    }
}
