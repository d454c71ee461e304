// SPDX-License-Identifier: Apache-2.0
package landfall.cut;

import landfall.chip.Evenness;
import landfall.material.CuttingFluid;
import landfall.material.Materials;
import landfall.quantity.Angle;
import landfall.quantity.Length;
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
import landfall.tap.Wear;
import landfall.thread.CallOut;
import landfall.thread.callout.CallOuts;

/** Taps and wishes for the tests of the cut. */
final class Bench {
    static final Body SHANKED = new Body(Length.ofMm(22), Length.ofMm(72), Length.ofMm(8), null);

    private Bench() {}

    static CallOut callOut(String text) {
        return CallOuts.read(text).orThrow();
    }

    /** Flutes of one arc; core and radius as shares of the basic pitch diameter. */
    static Tap oneArc(String thread, int flutes, double core, double radius, double threads) {
        CallOut callOut = callOut(thread);
        double d2 = callOut.thread().pitchDiameter().mm();
        FluteForm form = new FluteForm(Length.ofMm(core * d2), Length.ofMm(radius * d2 / 2), null);
        return new Tap(
                callOut,
                new Cutting(
                        new Flutes(flutes, FluteKind.STRAIGHT, form, Angle.ZERO),
                        new Land.LeftByFlute(),
                        new ChamferGiven(null, callOut.thread().minorDiameter().times(0.99), threads),
                        ThreadRelief.NONE),
                Body.UNKNOWN,
                PitchZone.UNKNOWN,
                Make.PLAIN_HSS);
    }

    /** A tap with a rake; core 0.42 and flute radius 0.26 of the major diameter, a third of the round land. */
    static Tap raked(String thread, int flutes, double threads, double rake) {
        CallOut callOut = callOut(thread);
        double d = callOut.thread().major().mm();
        double core = flutes == 3 ? 0.42 : 0.5;
        double radius = flutes == 3 ? 0.26 : 0.18;
        FluteForm form = new FluteForm(Length.ofMm(core * d), Length.ofMm(radius * d), Angle.ofDeg(rake));
        return new Tap(
                callOut,
                new Cutting(
                        new Flutes(flutes, FluteKind.STRAIGHT, form, Angle.ZERO),
                        new Land.Span(Angle.ofDeg(120.0 / flutes)),
                        new ChamferGiven(null, callOut.thread().minorDiameter().times(0.99), threads),
                        ThreadRelief.NONE),
                Body.UNKNOWN,
                PitchZone.UNKNOWN,
                Make.PLAIN_HSS);
    }

    /** The tap of the cards: M8x1.25, three flutes, rake 10, land 2.6. */
    static Tap m8() {
        return m8(FluteKind.STRAIGHT, "M8x1.25-6H", Make.PLAIN_HSS);
    }

    static Tap m8(FluteKind kind, String thread, Make make) {
        Angle helix = kind.isSpiral() ? Angle.ofDeg(35) : Angle.ZERO;
        FluteForm form = new FluteForm(Length.ofMm(3.5), Length.ofMm(2.1), Angle.ofDeg(10));
        return new Tap(
                callOut(thread),
                new Cutting(
                        new Flutes(3, kind, form, helix),
                        new Land.Arc(Length.ofMm(2.6)),
                        new ChamferGiven(Angle.ofDeg(9), Length.ofMm(6.4), null),
                        ThreadRelief.NONE),
                SHANKED,
                PitchZone.UNKNOWN,
                make);
    }

    static CutWish wish(String material, double hole, double depth) {
        return wish(material, hole, depth, Wear.FRESH, CutWish.How.USUAL);
    }

    static CutWish wish(String material, double hole, double depth, Wear wear, CutWish.How how) {
        return new CutWish(
                Materials.find("material", material).orThrow(), Length.ofMm(hole), Length.ofMm(depth), wear, how);
    }

    static CutWish.How fluid(CuttingFluid fluid) {
        return new CutWish.How(fluid, null, Driven.UNTOLD, CutWish.How.USUAL.holding(), Evenness.ALIKE);
    }

    static CutForecast cut(Tap tap, CutWish wish) {
        return CutForecast.of(tap, wish).orThrow().value();
    }
}
