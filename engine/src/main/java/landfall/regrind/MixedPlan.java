// SPDX-License-Identifier: Apache-2.0
package landfall.regrind;

import java.util.ArrayList;
import java.util.List;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Trust;
import org.jspecify.annotations.Nullable;

/**
 * The plan with the most sharpenings: every number of faces is tried with as many chamfers as then fit. Thread length
 * and land are spent by one way each; pitch diameter, and the cap, by both.
 */
final class MixedPlan {
    /** A plan with more is no plan: nothing limits it in earnest. */
    private static final int MOST = 10_000;

    private MixedPlan() {}

    static final Rule CHAMFERS = Rule.table("n_pc", "1", Counts.GEOMETRY, Trust.DERIVED, "chamfers of the best plan");
    static final Rule FACES = Rule.table("n_pf", "1", Counts.GEOMETRY, Trust.DERIVED, "faces of the best plan");
    static final Rule THREAD_LOST =
            new Rule("l_lost", "n_pc*s_all", "mm", Counts.GEOMETRY, Trust.DERIVED, "thread length lost by the plan");
    static final Rule LAND_KEPT =
            new Rule("θ_end", "θ_L", "deg", Counts.GEOMETRY, Trust.DERIVED, "land left after the plan");
    static final Rule LAND_LEFT =
            new Rule("θ_end", "θ_L - n_pf*d_f", "deg", Counts.GEOMETRY, Trust.DERIVED, "land left after the plan");

    static @Nullable LifeLine of(
            ChamferLife chamfer, @Nullable FaceLife face, Margins margins, LifeWish wish, Pen pen) {
        int faces = 0;
        int chamfers = chamfers(chamfer, face, margins, wish, 0);
        if (chamfers >= MOST) {
            return null;
        }
        for (int trial = 1; face != null && fits(face, margins, wish, trial); trial++) {
            int with = chamfers(chamfer, face, margins, wish, trial);
            if (with + trial > chamfers + faces) {
                chamfers = with;
                faces = trial;
            }
        }
        LifeLine line = line(chamfer, face, margins, new int[] {chamfers, faces});
        LifeLine.Station last = line.stations().get(chamfers + faces);
        pen.write(CHAMFERS, chamfers);
        pen.write(FACES, faces);
        pen.write(THREAD_LOST, last.threadLost().mm());
        pen.write(face == null ? LAND_KEPT : LAND_LEFT, last.land().deg());
        return line;
    }

    private static boolean fits(FaceLife face, Margins margins, LifeWish wish, int faces) {
        double used = faces * face.eachDeg;
        boolean land = Counts.whole(margins.landDeg() / face.eachDeg) >= faces;
        boolean pitch = margins.pitch() == null || face.pitchLost(used) <= margins.pitch() + 1e-9;
        return land && pitch && (wish.cap() == null || faces <= wish.cap());
    }

    /** How many chamfers fit beside so many faces. */
    private static int chamfers(
            ChamferLife chamfer, @Nullable FaceLife face, Margins margins, LifeWish wish, int faces) {
        double most = MOST;
        if (margins.thread() != null) {
            most = Math.min(most, margins.thread() / chamfer.each());
        }
        if (margins.pitch() != null && chamfer.pitchEach() > 0) {
            double lost = face == null ? 0 : face.pitchLost(faces * face.eachDeg);
            most = Math.min(most, Math.max(0, margins.pitch() - lost) / chamfer.pitchEach());
        }
        Double core = chamfer.byCore();
        if (core != null) {
            most = Math.min(most, core);
        }
        Double reach = chamfer.byReach();
        if (reach != null) {
            most = Math.min(most, reach);
        }
        if (wish.cap() != null) {
            most = Math.min(most, wish.cap() - faces);
        }
        return Counts.whole(most);
    }

    private static LifeLine line(ChamferLife chamfer, @Nullable FaceLife face, Margins margins, int[] plan) {
        List<LifeLine.Station> stations = new ArrayList<>();
        for (int i = 0; i <= plan[0] + plan[1]; i++) {
            int chamfers = Math.min(i, plan[0]);
            int faces = i - chamfers;
            LifeLine.Way way = LifeLine.Way.NOW;
            if (i > 0) {
                way = faces > 0 ? LifeLine.Way.FACE : LifeLine.Way.CHAMFER;
            }
            double taken = face == null ? 0 : faces * face.eachDeg;
            double pitch = chamfers * chamfer.pitchEach() + (face == null ? 0 : face.pitchLost(taken));
            stations.add(new LifeLine.Station(
                    way,
                    Length.ofMm(chamfers * chamfer.each()),
                    Angle.ofDeg(margins.land() - taken),
                    Length.ofMm(pitch)));
        }
        return new LifeLine(plan[0], plan[1], stations);
    }
}
