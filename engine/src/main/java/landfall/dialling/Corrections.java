// SPDX-License-Identifier: Apache-2.0
package landfall.dialling;

import static landfall.dialling.Correction.Kind.INDEX;
import static landfall.dialling.Correction.Kind.READ_AGAIN;
import static landfall.dialling.Correction.Kind.REFERENCE;
import static landfall.dialling.Correction.Kind.RESEAT;
import static landfall.dialling.Correction.Kind.STOCK;
import static landfall.dialling.Correction.Kind.SWIVEL;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import landfall.grind.Place;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;
import org.jspecify.annotations.Nullable;

/**
 * What to turn, in the order to turn it: the seat first, for everything is measured about its axis; then the swivel,
 * for an axial rise works through it; then index, rise, stock; then read again.
 *
 * <p>Nothing is asked for that lies inside the uncertainty of the readings.
 */
final class Corrections {
    static final Source ORDER = Source.of("derived", "docs/methods/dialling.md, corrections");
    static final Rule SEAT_BY_CHAMFER =
            new Rule("e_s", "e/cos(κ)", "mm", ORDER, Trust.DERIVED, "radial run-out that the chamfer shows");
    static final Rule SEAT_BY_REFERENCE =
            new Rule("e_s", "sqrt(E_r^2 + F_r^2)", "mm", ORDER, Trust.DERIVED, "radial run-out of the reference");
    static final Rule ALONG = Rule.fitted("m", "1", RunOutRules.FIT, "change of the reading along the chamfer");
    static final Rule SWIVEL_LOW = new Rule("Δκ", "atan(m)", "deg", ORDER, Trust.DERIVED, "swivel set too low by");

    private final DialAsk ask;
    private final DialFindings found;
    private final Pen pen;
    private final List<Correction> list = new ArrayList<>();

    private Corrections(DialAsk ask, DialFindings found, Pen pen) {
        this.ask = ask;
        this.found = found;
        this.pen = pen;
    }

    static List<Correction> of(DialAsk ask, DialFindings found, @Nullable Double wanted, Pen pen) {
        Corrections corrections = new Corrections(ask, found, pen);
        corrections.seat();
        corrections.swivel();
        corrections.index();
        corrections.phase();
        boolean late = found.fits().bareMargin();
        corrections.list.addAll(RiseCorrection.of(ask, found.fits().risingSlope(), late ? "k_b" : "k", wanted, pen));
        corrections.stock();
        if (!corrections.list.isEmpty()) {
            corrections.add(READ_AGAIN, 0, "read every land again; what is left should lie inside its uncertainty");
        }
        return corrections.list;
    }

    private void seat() {
        boolean chamfer = Against.isOnChamfer(found.place());
        Against against = found.against();
        RunOut own = found.fits().main().runOut();
        if (against != null) {
            if (against.reference().direction() != null) {
                Length by = Length.ofMm(pen.write(
                        SEAT_BY_REFERENCE,
                        against.reference().eccentricity().value().mm()));
                seat("", against.reference(), by);
            }
        } else if (chamfer) {
            add(REFERENCE, 0, "dial the crests of the full thread (flat anvil), or the shank, in this same chucking");
            if (own != null && own.direction() != null) {
                Length by = Length.ofMm(pen.write(
                        SEAT_BY_CHAMFER,
                        own.eccentricity().value().mm()
                                / Math.cos(ask.tap().chamfer().rad())));
                seat("if the thread shows the same: ", own, by);
            }
        } else if (own != null && own.direction() != null && isRadial(found.place())) {
            seat("", own, own.eccentricity().value());
        }
    }

    private void seat(String condition, RunOut runOut, Length by) {
        FittedAngle direction = runOut.direction();
        if (direction == null) {
            return;
        }
        String where = where(direction.value(), ask.tap().flutes());
        list.add(new Correction(
                RESEAT,
                0,
                condition + "bring the high side, " + where + ", under the stylus and move it away from the stylus",
                by,
                null));
    }

    /** A direction round the tap as a land and an angle behind its edge. */
    static String where(Angle direction, int flutes) {
        double period = 360.0 / flutes;
        int land = (int) Math.floor(direction.deg() / period) % flutes;
        return "%s deg behind the edge of land %d".formatted(Numbers.plain(direction.deg() - land * period), land + 1);
    }

    private void swivel() {
        Swivel swivel = found.swivel();
        if (swivel == null || !swivel.low().differsFromZero()) {
            return;
        }
        pen.write(ALONG, Math.tan(swivel.low().value().rad()));
        double low = pen.write(SWIVEL_LOW, swivel.low().value().deg());
        list.add(new Correction(
                SWIVEL,
                0,
                (low > 0 ? "turn the swivel up, to a steeper chamfer" : "turn the swivel down, to a flatter chamfer")
                        + "; the dial then stands still along the chamfer",
                null,
                Angle.ofDeg(Math.abs(low))));
    }

    /** A land that stands off the others by its timing: y = k (theta + phi), so phi = height/k. */
    private void index() {
        Fitted slope = found.slope();
        boolean timed =
                found.place() == Place.CHAMFER_STILL || found.place() == Place.END || found.place() == Place.SHANK;
        if (!timed || !slope.differsFromZero()) {
            return;
        }
        for (DialFit.LandHeight land : found.fits().main().heights()) {
            if (!land.height().differsFromZero()) {
                continue;
            }
            double height = pen.write(height(land.land()), land.height().value().mm());
            double early = pen.write(
                    early(land.land()), Math.toDegrees(height / slope.value().mm()));
            list.add(new Correction(
                    INDEX,
                    land.land(),
                    "land %d: let its rise begin %s, if its height comes from index or lobe"
                            .formatted(land.land(), early > 0 ? "later" : "sooner"),
                    null,
                    Angle.ofDeg(Math.abs(early))));
        }
    }

    private static Rule height(int land) {
        return Rule.fitted("z_" + land, "mm", RunOutRules.FIT, "height of land %d, as read".formatted(land));
    }

    private static Rule early(int land) {
        return new Rule(
                "φ_" + land,
                "z_%d/k*180/pi".formatted(land),
                "deg",
                ORDER,
                Trust.DERIVED,
                "rise of land %d too early by".formatted(land));
    }

    private void phase() {
        Phase phase = found.fits().phase();
        if (phase == null || !phase.start().differsFromZero()) {
            return;
        }
        list.add(new Correction(
                INDEX,
                0,
                phase.start().value().deg() > 0
                        ? "all lands: turn the cam so that the rise begins sooner, at the edge"
                        : "all lands: turn the cam so that the rise begins later, at the edge",
                null,
                Angle.ofDeg(Math.abs(phase.start().value().deg()))));
    }

    /** Down to the lowest edge, so that all lands clean up. */
    private void stock() {
        if (found.place() != Place.CHAMFER_STILL || found.lands().worst() == null) {
            return;
        }
        List<LandFound> lands = found.lands().lands();
        LandFound low = lands.stream()
                .min(Comparator.comparingDouble(Corrections::edge))
                .orElseThrow();
        LandFound high = lands.stream()
                .max(Comparator.comparingDouble(Corrections::edge))
                .orElseThrow();
        double step = edge(high) - edge(low);
        Fitted edge = high.edge();
        if (edge == null || step <= edge.uncertainty().mm() * Math.sqrt(2)) {
            return;
        }
        String condition = Against.isOnChamfer(found.place()) && found.against() == null
                ? "if the thread runs true as it sits: "
                : "";
        list.add(new Correction(
                STOCK,
                high.land(),
                (condition + "grind all lands at one setting until land %d cleans up; land %d then loses"
                                        + " this much more, square to the")
                                .formatted(low.land(), high.land())
                        + " chamfer",
                Length.ofMm(step),
                null));
    }

    private static double edge(LandFound land) {
        Fitted edge = land.edge();
        return edge == null ? 0 : edge.value().mm();
    }

    private static boolean isRadial(Place place) {
        return place == Place.SHANK || place == Place.CREST;
    }

    private void add(Correction.Kind kind, int land, String act) {
        list.add(new Correction(kind, land, act, null, null));
    }
}
