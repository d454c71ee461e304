// SPDX-License-Identifier: Apache-2.0
package landfall.regrind;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import landfall.fault.Caution;
import landfall.quantity.Length;
import landfall.quantity.Limits;
import landfall.tap.Least;
import landfall.tap.Tap;
import landfall.thread.Side;
import landfall.thread.SideLimits;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;
import org.jspecify.annotations.Nullable;

/**
 * What there is to lose: thread length, land and pitch diameter down to what the tap must keep.
 *
 * <p>What the card leaves open is taken by common practice and written down as such: half the thread length, two thirds
 * of the tap's own land as it is now, and the least pitch diameter of the internal thread's class.
 *
 * @param thread mm of thread length to lose; null when the length is not told
 * @param land the land now, in degrees
 * @param landDeg degrees of it to lose
 * @param pitch mm of pitch diameter to lose; null when the tap's own is not told
 */
record Margins(
        @Nullable Double thread,
        double land,
        double landDeg,
        @Nullable Double pitch) {
    private static final Source PRACTICE = Source.of("common-practice", "what a tap must keep to stay in use");
    static final Rule THREAD = Rule.given("l_t", "mm", "length of the thread, chamfer included");
    static final Rule LEAST_THREAD = Rule.given("l_min", "mm", "least thread length");
    static final Rule USUAL_THREAD =
            new Rule("l_min", "l_t/2", "mm", PRACTICE, Trust.PRACTICE, "least thread length: half of it");
    static final Rule LEAST_LAND = Rule.given("θ_min", "deg", "least land angle");
    static final Rule USUAL_LAND =
            new Rule("θ_min", "2/3*θ_L", "deg", PRACTICE, Trust.PRACTICE, "least land angle: two thirds of its own");
    static final Rule PITCH_NOW = Rule.given("E_0", "mm", "pitch diameter of the tap, the least of its own limits");
    static final Rule LEAST_PITCH = Rule.given("E_min", "mm", "least pitch diameter of the tap");
    static final Rule USUAL_PITCH = Rule.table(
            "E_min",
            "mm",
            PRACTICE,
            Trust.PRACTICE,
            "least pitch diameter: the least of the internal thread in its class");

    static Margins of(Tap tap, List<Caution> cautions, Pen pen) {
        Least least = tap.pitch().least();
        double land = tap.landAngle().deg();
        double leastLand = least.landAngle() != null
                ? pen.write(LEAST_LAND, least.landAngle().deg())
                : pen.write(USUAL_LAND, 2.0 / 3 * land);
        return new Margins(thread(tap, cautions, pen), land, Math.max(0, land - leastLand), pitch(tap, cautions, pen));
    }

    private static @Nullable Double thread(Tap tap, List<Caution> cautions, Pen pen) {
        Length length = tap.body().threadLength();
        if (length == null) {
            cautions.add(new Caution(
                    "threadLengthNotTold",
                    "The thread length is not told, so it limits nothing here.",
                    "threadLength"));
            return null;
        }
        double l_t = pen.write(THREAD, length.mm());
        Length least = tap.pitch().least().threadLength();
        double l_min = least != null ? pen.write(LEAST_THREAD, least.mm()) : pen.write(USUAL_THREAD, l_t / 2);
        return Math.max(0, l_t - l_min);
    }

    private static @Nullable Double pitch(Tap tap, List<Caution> cautions, Pen pen) {
        Limits limit = tap.pitch().limit();
        Length now = limit == null ? null : limit.min();
        Length least = tap.pitch().least().pitchDiameter();
        Length ofClass = least == null ? ofClass(tap) : null;
        if (now == null || (least == null && ofClass == null)) {
            cautions.add(new Caution(
                    "pitchDiameterNotTold",
                    "The tap's pitch diameter or its least is not told, so it limits nothing here.",
                    "limit.pitchMin"));
            return null;
        }
        double E_0 = pen.write(PITCH_NOW, now.mm());
        double E_min = least != null
                ? pen.write(LEAST_PITCH, least.mm())
                : pen.write(USUAL_PITCH, Objects.requireNonNull(ofClass).mm());
        return Math.max(0, E_0 - E_min);
    }

    private static @Nullable Length ofClass(Tap tap) {
        Optional<SideLimits> internal = tap.callOut().limits(Side.INTERNAL, Pen.NONE);
        return internal.map(limits -> limits.pitch().min()).orElse(null);
    }
}
