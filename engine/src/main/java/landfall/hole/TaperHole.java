// SPDX-License-Identifier: Apache-2.0
package landfall.hole;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import landfall.drill.Drill;
import landfall.fault.Answer;
import landfall.fault.Caution;
import landfall.fault.Finding;
import landfall.quantity.Length;
import landfall.thread.CallOut;
import landfall.thread.Taper;
import landfall.working.Pen;
import landfall.working.Worked;
import org.jspecify.annotations.Nullable;

/**
 * The hole for a taper pipe thread, drilled straight or reamed to the taper: docs/methods/tap-drill.md.
 *
 * <p>The face of the hole is the plane where the gauge stands flush; the thread grows thinner from there on. Full
 * thread is wanted as deep as the pipe goes, hand-tight and by wrench.
 *
 * @param face diameters of the thread in the face
 * @param straight drill for a hole that is tapped without reaming
 * @param reamed drill under the taper reamer; null when no drawer holds one
 */
public record TaperHole(
        HoleWish wish,
        Face face,
        Depths depths,
        Straight straight,
        @Nullable Reamed reamed,
        List<Caution> cautions) {
    /** In the face of the hole; {@code end} is the minor diameter where the full thread ends. */
    public record Face(Length major, Length minor, Length end) {}

    /** From the face; {@code tapPoint} and {@code drill} as in other holes. */
    public record Depths(Length handTight, Length fullThread, Length tapPoint, Length drill, double chamferThreads) {}

    /**
     * A straight hole.
     *
     * @param atFace share of the thread's own depth that is left in the face, as a fraction
     * @param atEnd the same where the full thread ends
     */
    public record Straight(String name, Length diameter, double atFace, double atEnd, boolean charted) {}

    /** Before the reamer: the greatest drill that leaves metal for it everywhere. */
    public record Reamed(Length most, Drill drill) {}

    private static final double CHAMFER_THREADS = 2.5;

    public TaperHole {
        cautions = List.copyOf(cautions);
    }

    /** The hole, or why there is none; asked for taper threads only. */
    public static Answer<Worked<TaperHole>> of(HoleWish wish) {
        List<Finding> findings = refusals(wish);
        return findings.isEmpty() ? Answer.of(Worked.of(pen -> compute(wish, pen))) : Answer.refused(findings);
    }

    /** Whether a call-out is one of these. */
    public static boolean isFor(CallOut callOut) {
        return callOut.taper(Pen.NONE).isPresent();
    }

    private static List<Finding> refusals(HoleWish wish) {
        List<Finding> findings = new ArrayList<>();
        String thread = wish.callOut().normal();
        String why = "does not go with the taper thread " + thread;
        String mend = "leave it out: the hole follows from the thread's planes";
        if (wish.tools().forming()) {
            findings.add(new Finding("forming", "yes", why, "use a cutting tap"));
        }
        Double share = wish.tools().share();
        if (share != null) {
            findings.add(new Finding("share", "%.0f %%".formatted(100 * share), why, mend));
        }
        Length insert = wish.place().insert();
        if (insert != null) {
            findings.add(new Finding("insert", insert.words(), why, mend));
        }
        Length hole = wish.hole();
        if (hole != null) {
            findings.add(new Finding("hole", hole.words(), why, mend));
        }
        if (wish.strengths().screw() != null || wish.strengths().part() != null) {
            findings.add(
                    new Finding("screw-strength", "a strength", why, "leave strengths out: nothing is to be broken"));
        }
        if (HoleChoice.drills(wish).isEmpty()) {
            findings.add(
                    new Finding("drills", "", "names no drill", "name a drawer: number, letter, fraction, metric"));
        }
        return findings;
    }

    private static TaperHole compute(HoleWish wish, Pen pen) {
        Taper taper = wish.callOut().taper(pen).orElseThrow();
        TaperRules rules = TaperRules.of(wish.callOut().thread().family());
        double P = pen.write(TaperRules.PITCH, wish.callOut().thread().pitch().mm());
        Taper.Plane gauge = gauge(taper);
        double M_f = pen.write(rules.major(), gauge.major().mm());
        double m_f = pen.write(rules.minor(), gauge.minor().mm());
        double L_h = pen.write(rules.handTight(), taper.turns().handTight().mm());
        double L_w = pen.write(rules.wrench(), taper.turns().wrench().mm());
        double T_f = pen.write(TaperRules.FULL_THREAD, L_h + L_w);
        double m_e = pen.write(TaperRules.END, m_f - T_f / 16);
        Face face = new Face(Length.ofMm(M_f), Length.ofMm(m_f), Length.ofMm(m_e));
        Depths depths = depths(wish, new double[] {L_h, T_f, P}, pen);
        Straight straight = straight(wish, face, depths, pen);
        Reamed reamed = reamed(wish, face, pen);
        return new TaperHole(wish, face, depths, straight, reamed, cautions(wish, straight, reamed));
    }

    /** The plane that stands in the face of the hole. */
    private static Taper.Plane gauge(Taper taper) {
        return taper.planes().stream()
                .filter(plane ->
                        plane.name().equals("hand-tight plane") || plane.name().equals("gauge plane"))
                .findFirst()
                .orElseThrow();
    }

    private static Depths depths(HoleWish wish, double[] lengths, Pen pen) {
        Double told = wish.tools().chamferThreads();
        double n = pen.write(
                told != null ? DepthStack.CHAMFER_GIVEN : TaperRules.CHAMFER, told != null ? told : CHAMFER_THREADS);
        double point = pen.write(DepthStack.TAP_POINT, lengths[1] + n * lengths[2]);
        double room = pen.write(DepthStack.CLEARANCE, Math.max(1, lengths[2]));
        double drill = pen.write(TaperRules.DRILL, point + room);
        return new Depths(Length.ofMm(lengths[0]), Length.ofMm(lengths[1]), Length.ofMm(point), Length.ofMm(drill), n);
    }

    /** By a chart where one names this thread; else the drill nearest to the thread's minor diameter half-way in. */
    private static Straight straight(HoleWish wish, Face face, Depths depths, Pen pen) {
        Optional<PipeDrill> charted = PipeDrill.of(wish.callOut());
        double half = face.minor.mm() - depths.handTight.mm() / 32;
        String name;
        double delta;
        if (charted.isPresent()) {
            PipeDrill drill = charted.get();
            name = drill.name().isEmpty() ? "%.2f mm".formatted(drill.diameter().mm()) : drill.name();
            delta = pen.write(
                    drill.remembered() ? TaperRules.CHART_REMEMBERED : TaperRules.CHART,
                    drill.diameter().mm());
        } else {
            pen.write(TaperRules.HALF_WAY, half);
            Drill nearest = nearest(HoleChoice.drills(wish), half);
            name = nearest.called();
            delta = pen.write(TaperRules.NEAREST, nearest.diameter().mm());
        }
        double depth = face.major.mm() - face.minor.mm();
        double atFace = pen.write(TaperRules.AT_FACE, 100 * (face.major.mm() - delta) / depth);
        double atEnd =
                pen.write(TaperRules.AT_END, 100 * (face.major.mm() - depths.fullThread.mm() / 16 - delta) / depth);
        return new Straight(name, Length.ofMm(delta), atFace / 100, atEnd / 100, charted.isPresent());
    }

    private static Drill nearest(List<Drill> drills, double wanted) {
        Drill best = drills.get(0);
        for (Drill drill : drills) {
            if (Math.abs(drill.diameter().mm() - wanted)
                    <= Math.abs(best.diameter().mm() - wanted)) {
                best = drill;
            }
        }
        return best;
    }

    private static @Nullable Reamed reamed(HoleWish wish, Face face, Pen pen) {
        List<Drill> under = HoleChoice.drills(wish).stream()
                .filter(drill -> drill.diameter().compareTo(face.end) <= 0)
                .toList();
        if (under.isEmpty()) {
            return null;
        }
        Drill drill = under.get(under.size() - 1);
        pen.write(TaperRules.UNDER_REAMER, drill.diameter().mm());
        return new Reamed(face.end, drill);
    }

    private static List<Caution> cautions(HoleWish wish, Straight straight, @Nullable Reamed reamed) {
        List<Caution> cautions = new ArrayList<>();
        if (!straight.charted) {
            cautions.add(new Caution(
                    "drillDerived",
                    "No chart held names a drill for this thread: the one nearest to its minor"
                            + " diameter half-way into the"
                            + " hand-tight length is taken, where the charts of other sizes lie as well.",
                    "δ"));
        }
        if (straight.atEnd < 0.5) {
            cautions.add(new Caution(
                    "thinAtTheEnd",
                    "A straight hole leaves only %.0f %% of the thread where the pipe ends: ream it to the taper for"
                                    .formatted(100 * straight.atEnd)
                            + " joints that must hold.",
                    "q_e"));
        }
        if (reamed == null) {
            cautions.add(new Caution("noDrillForReamer", "No drawer holds a drill thin enough for the reamer.", "m_e"));
        }
        Length told = wish.place().depth();
        if (told != null) {
            cautions.add(new Caution(
                    "depthOfStandard",
                    "The depth of a taper thread is that of its standard; the " + told.words() + " told is not used.",
                    "T_f"));
        }
        cautions.add(new Caution(
                "stopAtGauge",
                "The tap is stopped by the gauge, not by depth: try the plug early. A tap gone a turn too deep is an"
                        + " oversize thread.",
                "L_h"));
        cautions.addAll(PlaceCautions.of(wish, null, Optional.empty(), true));
        cautions.addAll(wish.callOut().cautions());
        return cautions;
    }
}
