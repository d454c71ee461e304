// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.paper;

import java.util.List;
import java.util.Optional;
import landfall.fault.Caution;
import landfall.grind.Cam;
import landfall.grind.CamCurve;
import landfall.grind.Fixture;
import landfall.grind.GrindSetup;
import landfall.grind.GrindWish;
import landfall.grind.Lobe;
import landfall.grind.Wheel;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.quantity.Turning;
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
import landfall.tap.TapMaterial;
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

/** Set-ups of an invented shop, each of another kind, for drawings and sheets. */
public final class ShopTaps {
    private ShopTaps() {}

    private record Note(ScrewThread thread, String normal) implements CallOut {
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

    private static Note metricNote(String normal, double major, double pitch, Hand hand) {
        Lead lead = new Lead(Length.ofMm(pitch), 1);
        return new Note(new ScrewThread(Family.METRIC, Profile.ISO_60, Length.ofMm(major), lead, hand), normal);
    }

    private static Note inchNote(String normal, double major, double perInch, Hand hand) {
        Lead lead = new Lead(Length.ofInch(1 / perInch), 1);
        return new Note(new ScrewThread(Family.UNIFIED, Profile.ISO_60, Length.ofInch(major), lead, hand), normal);
    }

    private static Tap tap(CallOut note, Flutes flutes, Land land, ChamferGiven chamfer, Body body) {
        Cutting cutting = new Cutting(flutes, land, chamfer, ThreadRelief.NONE);
        return new Tap(note, cutting, body, PitchZone.UNKNOWN, Make.PLAIN_HSS);
    }

    private static Wheel wheel(Length diameter) {
        return new Wheel(diameter, "A80J6V", Turning.ofRevPerMin(4000), Turning.ofRevPerMin(3200));
    }

    private static Lobe lobe(double start, double rise, double back) {
        return new Lobe(Angle.ofDeg(start), Angle.ofDeg(rise), Angle.ofDeg(back));
    }

    private static GrindSetup setup(Tap tap, Fixture fixture) {
        return GrindSetup.of(tap, fixture, GrindWish.USUAL).orThrow().value();
    }

    /** The common case: plug tap, radial cam. */
    public static GrindSetup plug() {
        return plug(metricNote("M8x1.25-6H", 8, 1.25, Hand.RIGHT));
    }

    /** The same tap, left-hand. */
    public static GrindSetup plugLeftHand() {
        return plug(metricNote("M8x1.25-6H-LH", 8, 1.25, Hand.LEFT));
    }

    private static GrindSetup plug(Note note) {
        FluteForm form = new FluteForm(Length.ofMm(3.5), Length.ofMm(2.1), Angle.ofDeg(10));
        Tap tap = tap(
                note,
                new Flutes(3, FluteKind.STRAIGHT, form, Angle.ZERO),
                new Land.Arc(Length.ofMm(2.6)),
                new ChamferGiven(Angle.ofDeg(9), Length.ofMm(6.4), null),
                new Body(Length.ofMm(22), Length.ofMm(72), Length.ofMm(8), 0.001));
        Cam cam = new Cam(3, new CamCurve.Straight(), lobe(0, 60, 30), Limits.ofMm(0, 3), Limits.ofMm(0, 0.8));
        Fixture fixture = new Fixture(
                "shop relieving fixture", cam, wheel(Length.ofMm(150)), Length.ofMm(0.01), Angle.ofDeg(0.25));
        return setup(tap, fixture);
    }

    /** Left-hand, four flutes whose form is not told, an axial cam that is not back in time, and that ends early. */
    public static GrindSetup leftHand() {
        Tap tap = tap(
                inchNote("5/8-11 UNC-2B-LH", 0.625, 11, Hand.LEFT),
                Flutes.straight(4),
                new Land.Arc(Length.ofInch(0.16)),
                new ChamferGiven(Angle.ofDeg(23), Length.ofInch(0.48), null),
                Body.UNKNOWN);
        Limits axial = new Limits(Length.ZERO, Length.ofInch(0.2));
        Cam cam = new Cam(4, new CamCurve.Straight(), lobe(0, 55, 34), axial, null);
        Fixture fixture = new Fixture("old bench fixture", cam, wheel(Length.ofInch(6)), Length.ofInch(0.0005), null);
        return setup(tap, fixture);
    }

    /** Two flutes of one arc, wide lands, an offset-circle cam that starts late. */
    public static GrindSetup oneArc() {
        FluteForm form = new FluteForm(Length.ofMm(2.0), Length.ofMm(2.1), null);
        Tap tap = tap(
                metricNote("M6x1-6H", 6, 1, Hand.RIGHT),
                new Flutes(2, FluteKind.STRAIGHT, form, Angle.ZERO),
                new Land.LeftByFlute(),
                new ChamferGiven(Angle.ofDeg(5), null, 6.0),
                Body.UNKNOWN);
        CamCurve curve = new CamCurve.Circle(Angle.ofDeg(60));
        Cam cam = new Cam(2, curve, lobe(3, 108, 40), Limits.ofMm(0, 6), Limits.ofMm(0, 0.2));
        Fixture fixture = new Fixture(
                "shop relieving fixture", cam, wheel(Length.ofMm(125)), Length.ofMm(0.002), Angle.ofDeg(0.5));
        return setup(tap, fixture);
    }

    /** Both slides: the radial one at its limit, the axial one gives the rest. */
    public static GrindSetup bothSlides() {
        Tap tap = tap(
                inchNote("1/2-13 UNC-2B", 0.5, 13, Hand.RIGHT),
                Flutes.straight(4),
                new Land.Chord(Length.ofInch(0.14)),
                new ChamferGiven(null, Length.ofInch(0.4), 4.0),
                Body.UNKNOWN);
        Limits axial = new Limits(Length.ZERO, Length.ofInch(0.1));
        Limits radial = new Limits(Length.ZERO, Length.ofInch(0.015));
        Cam cam = new Cam(4, new CamCurve.Straight(), lobe(0, 42, 22), axial, radial);
        Fixture fixture =
                new Fixture("old bench fixture", cam, wheel(Length.ofInch(6)), Length.ofInch(0.001), Angle.ofDeg(0.25));
        return setup(tap, fixture);
    }

    /** A small tap with a bottoming chamfer. */
    public static GrindSetup small() {
        Tap tap = tap(
                metricNote("M4x0.7-6H", 4, 0.7, Hand.RIGHT),
                Flutes.straight(3),
                new Land.Span(Angle.ofDeg(41)),
                new ChamferGiven(Angle.ofDeg(20), Length.ofMm(3), null),
                Body.UNKNOWN);
        Cam cam = new Cam(3, new CamCurve.Straight(), lobe(0, 50, 30), Limits.ofMm(0, 3), Limits.ofMm(0, 0.8));
        Fixture fixture = new Fixture("shop relieving fixture", cam, wheel(Length.ofMm(150)), Length.ofMm(0.002), null);
        return setup(tap, fixture);
    }

    /** A large coated tap with six flutes, a cam that is not back in time. */
    public static GrindSetup large() {
        Cutting cutting = new Cutting(
                Flutes.straight(6),
                new Land.Span(Angle.ofDeg(24)),
                new ChamferGiven(Angle.ofDeg(15), null, 3.0),
                ThreadRelief.NONE);
        Tap tap = new Tap(
                metricNote("M36x4-6H", 36, 4, Hand.RIGHT),
                cutting,
                Body.UNKNOWN,
                PitchZone.UNKNOWN,
                new Make(TapMaterial.HSS, "TiN", false));
        Cam cam = new Cam(6, new CamCurve.Straight(), lobe(0, 36, 20), Limits.ofMm(0, 10), Limits.ofMm(0, 3));
        Fixture fixture =
                new Fixture("large fixture", cam, wheel(Length.ofMm(200)), Length.ofMm(0.01), Angle.ofDeg(0.25));
        return setup(tap, fixture);
    }
}
