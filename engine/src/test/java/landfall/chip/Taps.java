// SPDX-License-Identifier: Apache-2.0
package landfall.chip;

import java.util.List;
import java.util.Optional;
import landfall.fault.Caution;
import landfall.quantity.Angle;
import landfall.quantity.Length;
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

/** Taps for the tests of chips. */
final class Taps {
    private Taps() {}

    record Bare(ScrewThread thread) implements CallOut {
        @Override
        public String normal() {
            return "M" + thread.major().mm();
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

    static ScrewThread metric(double d, double pitch, int starts) {
        return new ScrewThread(
                Family.METRIC, Profile.ISO_60, Length.ofMm(d), new Lead(Length.ofMm(pitch), starts), Hand.RIGHT);
    }

    /** A chamfer of so many threads from the basic minor diameter. */
    static Tap tap(ScrewThread thread, int flutes, double threads, PitchZone pitch, Make make) {
        return new Tap(
                new Bare(thread),
                new Cutting(
                        Flutes.straight(flutes),
                        new Land.Span(Angle.ofDeg(150.0 / flutes)),
                        new ChamferGiven(null, thread.minorDiameter(), threads),
                        ThreadRelief.NONE),
                Body.UNKNOWN,
                pitch,
                make);
    }

    static Tap m10(int flutes, double threads) {
        return tap(metric(10, 1.5, 1), flutes, threads, PitchZone.UNKNOWN, Make.PLAIN_HSS);
    }
}
