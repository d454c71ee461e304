// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

import java.util.List;
import landfall.grind.Place;
import landfall.quantity.Length;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Worked;
import org.jspecify.annotations.Nullable;

/** Answers a set of dial readings: the fit, what it means for the tap, and what to turn. */
public final class Dialling {
    static final Rule LEAD = Rule.given("L", "mm", "lead, advance in one turn");
    static final Rule LEAD_FELT = Rule.given("L_w", "mm", "lead as the relief feels it");
    static final Rule FLUTES = Rule.given("N", "1", "flutes");
    static final Rule CHAMFER = Rule.given("κ", "deg", "chamfer angle to the axis");
    static final Rule RADIUS = Rule.given("r", "mm", "radius at the middle of the chamfer");

    private Dialling() {}

    /** What the readings tell; {@link landfall.fault.OutOfRange} where there is no slope or no reference in them. */
    public static Worked<DialFindings> of(DialAsk ask) {
        return Worked.of(pen -> findings(ask, pen));
    }

    static DialFindings findings(DialAsk ask, Pen pen) {
        writeTap(ask.tap(), pen);
        Readings readings = ask.readings();
        Place place = readings.place();
        Course course = Course.of(ask);
        Solution found = Fits.fullest(course.lifted(readings), course.cam());
        Readings referenceReadings = ask.beside().reference();
        Solution reference = referenceReadings == null ? null : reference(referenceReadings, ask.tap());
        FitsFound fits = fits(ask, found);
        RunOutRules.writeFit(found, fits, pen);
        Against against = reference == null || !found.model.terms.runOut
                ? null
                : Against.of(found, reference, Against.share(place, ask.tap().chamfer()));
        RunOutRules.writeRunOut(fits.main().runOut(), against, place, pen);
        LandsFound lands = LandsFound.of(ask, found, against == null ? null : reference, pen);
        ReliefFound relief = place == Place.CHAMFER_STILL ? ReliefJudge.of(fits, ask.tap(), ask.beside(), pen) : null;
        AlongChamfer along = ask.beside().along();
        Swivel swivel = along == null ? null : Swivel.of(along);
        Double wanted = Aims.slope(ask, relief, pen);
        DialFindings told = new DialFindings(
                place,
                fits,
                against,
                lands,
                relief,
                swivel,
                FitCourse.of(ask, found, wanted),
                DialFindings.Mend.NONE,
                List.of());
        DialFindings all = told.with(mend(ask, told, found, wanted, pen));
        return all.with(Doubts.of(ask, all, found.model));
    }

    private static DialFindings.Mend mend(
            DialAsk ask, DialFindings told, Solution found, @Nullable Double wanted, Pen pen) {
        List<Correction> corrections = Corrections.of(ask, told, wanted, pen);
        return new DialFindings.Mend(
                corrections,
                wanted == null ? null : Length.ofMm(wanted),
                wanted == null
                        ? List.of()
                        : Aims.targets(wanted, Course.of(ask), ask.tap().land()),
                Foresight.of(ask, told, found, corrections, wanted));
    }

    private static FitsFound fits(DialAsk ask, Solution found) {
        Course course = Course.of(ask);
        Readings lifted = course.lifted(ask.readings());
        Solution common =
                found.model.terms == Terms.HEIGHTS ? Fits.orNull(lifted, course.cam(), Terms.COMMON_ZERO) : null;
        OutlierHunt hunt = OutlierHunt.of(lifted, course.cam(), found);
        Phase phase = Phase.of(lifted, course.cam(), found);
        return new FitsFound(
                DialFit.of(found, course),
                orNull(common, course),
                orNull(hunt.without(), course),
                hunt.asRead(lifted, ask.readings()),
                phase == null ? null : new Phase(phase.start(), course.asRead(phase.slope())));
    }

    private static @Nullable DialFit orNull(@Nullable Solution solution, Course course) {
        return solution == null ? null : DialFit.of(solution, course);
    }

    private static Solution reference(Readings readings, TapFacts tap) {
        return Fits.reference(Course.ofReference(readings.place(), tap.crest()).lifted(readings));
    }

    private static void writeTap(TapFacts tap, Pen pen) {
        pen.write(LEAD, tap.lead().mm());
        pen.write(LEAD_FELT, tap.leadFelt().mm());
        pen.write(FLUTES, tap.flutes());
        pen.write(CHAMFER, tap.chamfer().deg());
        pen.write(RADIUS, tap.radius().mm());
    }
}
