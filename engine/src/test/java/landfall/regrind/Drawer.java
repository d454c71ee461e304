// SPDX-License-Identifier: Apache-2.0
package landfall.regrind;

import java.util.List;
import java.util.Optional;
import landfall.fault.Caution;
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
import landfall.tap.Least;
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
import landfall.thread.Taper;
import landfall.working.Pen;

/** Taps for the tests of this package. */
final class Drawer {
    static final ScrewThread M10 =
            new ScrewThread(Family.METRIC, Profile.ISO_60, Length.ofMm(10), new Lead(Length.ofMm(1.5), 1), Hand.RIGHT);
    static final ScrewThread HALF_13 = new ScrewThread(
            Family.UNIFIED, Profile.ISO_60, Length.ofInch(0.5), new Lead(Length.ofInch(1.0 / 13), 1), Hand.RIGHT);

    private Drawer() {}

    private record Bare(ScrewThread thread, boolean isTaper) implements CallOut {
        Bare(ScrewThread thread) {
            this(thread, false);
        }

        @Override
        public Optional<Taper> taper(Pen pen) {
            Taper.Turns turns = new Taper.Turns(Length.ofMm(8), Length.ofMm(4), 1, 1);
            return isTaper ? Optional.of(new Taper(1.0 / 16, List.of(), turns)) : Optional.empty();
        }

        @Override
        public String normal() {
            return "bare";
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

    /** M10x1.5 plug, four flutes, chamfer 9 degrees about r 4.6, land 45 degrees; 24 mm of thread, 12 to keep. */
    static Tap m10(FluteKind kind, ThreadRelief relief) {
        Angle helix = kind.isSpiral() ? Angle.ofDeg(35) : Angle.ZERO;
        FluteForm form = new FluteForm(null, null, Angle.ZERO);
        return new Tap(
                new Bare(M10),
                new Cutting(
                        new Flutes(4, kind, form, helix),
                        new Land.Span(Angle.ofDeg(45)),
                        new ChamferGiven(Angle.ofDeg(9), Length.ofMm(8.4), null),
                        relief),
                new Body(Length.ofMm(24), null, null, 0.001),
                new PitchZone(
                        Limits.ofMm(9.082, 9.110), new Least(Length.ofMm(12), Angle.ofDeg(30), Length.ofMm(9.050))),
                Make.PLAIN_HSS);
    }

    static Tap m10() {
        return m10(FluteKind.STRAIGHT, ThreadRelief.NONE);
    }

    /** The same cutting part on a taper thread. */
    static Tap taper() {
        Tap tap = m10();
        return new Tap(new Bare(M10, true), tap.cutting(), tap.body(), tap.pitch(), tap.make());
    }

    static Tap withRake(double rakeDeg) {
        Tap tap = m10();
        Cutting cutting = tap.cutting();
        Flutes flutes = new Flutes(4, FluteKind.STRAIGHT, new FluteForm(null, null, Angle.ofDeg(rakeDeg)), Angle.ZERO);
        return new Tap(
                tap.callOut(),
                new Cutting(flutes, cutting.land(), cutting.chamfer(), cutting.relief()),
                tap.body(),
                tap.pitch(),
                tap.make());
    }

    /** The same with its core told. */
    static Tap cored(Tap tap, double coreMm) {
        Cutting cutting = tap.cutting();
        FluteForm form = new FluteForm(Length.ofMm(coreMm), null, Angle.ZERO);
        Flutes flutes = new Flutes(4, FluteKind.STRAIGHT, form, Angle.ZERO);
        return new Tap(
                tap.callOut(),
                new Cutting(flutes, cutting.land(), cutting.chamfer(), cutting.relief()),
                tap.body(),
                tap.pitch(),
                tap.make());
    }

    static Tap with(Tap tap, Body body, PitchZone pitch) {
        return new Tap(tap.callOut(), tap.cutting(), body, pitch, tap.make());
    }

    /** 1/2-13 plug, chamfer 9 degrees about r .23 in, land 45 degrees; 1.656 in of thread, .75 to keep. */
    static Tap half13() {
        return new Tap(
                new Bare(HALF_13),
                new Cutting(
                        new Flutes(4, FluteKind.STRAIGHT, FluteForm.UNKNOWN, Angle.ZERO),
                        new Land.Span(Angle.ofDeg(45)),
                        new ChamferGiven(Angle.ofDeg(9), Length.ofInch(4 * 0.23 - 0.5), null),
                        ThreadRelief.NONE),
                new Body(Length.ofInch(1.656), null, null, null),
                new PitchZone(null, new Least(Length.ofInch(0.75), null, null)),
                Make.PLAIN_HSS);
    }
}
