// SPDX-License-Identifier: Apache-2.0
package landfall.cards.form;

import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import landfall.cards.entry.AngleEntry;
import landfall.cards.entry.LengthEntry;
import landfall.cards.entry.NumberEntry;
import landfall.cards.entry.ShareEntry;
import landfall.cards.entry.SpeedEntry;
import landfall.cards.entry.StressEntry;
import landfall.cards.entry.ThreadsEntry;
import landfall.cards.entry.TorqueEntry;
import landfall.cards.entry.TurningEntry;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.quantity.Speed;
import landfall.quantity.Stress;
import landfall.quantity.Torque;
import landfall.quantity.Turning;

/** The kinds that are quantities, each with the range that a toolroom can mean. */
public final class Quantities {
    public static final Kind<Speed> SPEED = kind(
                    "a speed: 30 m/s, 12 m/min, 40 sfm", (text, bare) -> SpeedEntry.read(text))
            .then(within(speed -> speed.mPerMin() > 0, "must be over 0", "give the speed"));

    public static final Kind<Torque> TORQUE = kind("a torque: 12 N·m, 106 in·lb", TorqueEntry::read)
            .then(within(torque -> torque.nm() > 0, "must be over 0", "give the torque"));

    public static final Kind<Stress> STRESS = kind("a strength: 650 N/mm2, 95 ksi", StressEntry::read)
            .then(within(stress -> stress.nPerMm2() > 0, "must be over 0", "give the strength"));

    public static final Kind<Turning> TURNING = kind(
                    "a speed of rotation: 3200 rev/min", (text, bare) -> TurningEntry.read(text))
            .then(within(
                    turning -> turning.revPerMin() > 0 && turning.revPerMin() <= 200_000,
                    "must be over 0 and up to 200000 rev/min",
                    "give the speed of the spindle or wheel"));

    public static final Kind<Double> SHARE = kind("a share: 70 %", (text, bare) -> ShareEntry.read(text))
            .then(within(
                    share -> share > 0 && share <= 1, "must be over 0 and up to 100 %", "write a share such as 70 %"));

    private Quantities() {}

    /** A length, both ends allowed; {@code from} 0 means that 0 is allowed. */
    public static Kind<Length> length(double fromMm, double toMm) {
        return limited(LengthEntry::read, "a length: 11.5 mm, 27/64, .4375, 6 thou", fromMm, toMm);
    }

    /** A diameter: a length, or the name of a number or letter drill. */
    public static Kind<Length> diameter(double fromMm, double toMm) {
        return limited(LengthEntry::readDiameter, "a diameter: 11.5 mm, 27/64, .4375, #7, F", fromMm, toMm);
    }

    private static Kind<Length> limited(Kind.Reading<Length> reading, String words, double fromMm, double toMm) {
        String range = "must be from %s to %s mm (%s to %s in)"
                .formatted(
                        figure(fromMm),
                        figure(toMm),
                        figure(Length.ofMm(fromMm).inch()),
                        figure(Length.ofMm(toMm).inch()));
        return kind(words, reading)
                .then(within(
                        length -> length.mm() >= fromMm && length.mm() <= toMm,
                        range,
                        "measure again, and look at the unit"));
    }

    /** An angle in degrees, both ends allowed. */
    public static Kind<Angle> angle(double fromDeg, double toDeg) {
        return kind("an angle: 2.5 deg, 2°30'", (text, bare) -> AngleEntry.read(text))
                .then(within(
                        angle -> angle.deg() >= fromDeg && angle.deg() <= toDeg,
                        "must be from %s to %s deg".formatted(figure(fromDeg), figure(toDeg)),
                        "measure again, and look at the sign and the unit"));
    }

    /** A pure number, both ends allowed. */
    public static Kind<Double> number(double from, double to) {
        return kind("a number: 0.001, 1:1000", (text, bare) -> NumberEntry.read(text))
                .then(within(
                        number -> number >= from && number <= to,
                        "must be from %s to %s".formatted(figure(from), figure(to)),
                        "look at the decimal point"));
    }

    /** A length counted in threads, both ends allowed. */
    public static Kind<Double> threads(double from, double to) {
        return kind("a number of threads: 4, 1.5", (text, bare) -> ThreadsEntry.read(text))
                .then(within(
                        number -> number >= from && number <= to,
                        "must be from %s to %s threads".formatted(figure(from), figure(to)),
                        "count the threads of the chamfer, such as 4 or 1.5"));
    }

    private static <T> Kind<T> kind(String words, Kind.Reading<T> reading) {
        return new Kind<>(words, reading, Kinds.ordered("type", List.of("string", "number"), "description", words));
    }

    /** The finding names what was given, which only the reading text knows; the form puts it in. */
    private static <T> Function<T, Answer<T>> within(Predicate<T> limit, String why, String mend) {
        return value -> limit.test(value) ? Answer.of(value) : Answer.refused(new Finding("", "", why, mend));
    }

    private static String figure(double value) {
        return value == Math.rint(value) ? Long.toString((long) value) : "%.4g".formatted(value);
    }
}
