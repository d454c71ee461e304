// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.life;

import java.util.ArrayList;
import java.util.List;
import landfall.quantity.Length;
import landfall.regrind.LeftByWay;
import landfall.regrind.LifeLimit;
import landfall.regrind.LifeLine;
import landfall.regrind.SharpeningsLeft;
import landfall.sheets.figure.Figures;
import org.jspecify.annotations.Nullable;

/** Sharpenings left, in sentences. */
public final class LifeWords {
    private final SharpeningsLeft left;
    private final Figures figures;

    public LifeWords(SharpeningsLeft left, Figures figures) {
        this.left = left;
        this.figures = figures;
    }

    /** Chamfer, faces, best of both: a sentence each. */
    public List<String> sentences() {
        List<String> all = new ArrayList<>(List.of(chamfer(), face()));
        LifeLine line = left.line();
        if (line != null && line.chamfers() + line.faces() > 0) {
            all.add(mixed(line));
        }
        return all;
    }

    private String chamfer() {
        LeftByWay.ByChamfer chamfer = left.chamfer();
        return "By the chamfer alone: %s, each takes %s of thread length.%s"
                .formatted(count(chamfer.count()), figures.length(chamfer.each()), ended(chamfer.limit()));
    }

    private String face() {
        LeftByWay.ByFace face = left.face();
        return face == null
                ? "By the faces alone: not ground on this tap."
                : "By the faces alone: %s, each takes %s of land.%s"
                        .formatted(count(face.count()), figures.angle(face.angle()), ended(face.limit()));
    }

    private String mixed(LifeLine line) {
        LifeLine.Station last = line.stations().get(line.stations().size() - 1);
        String pitch = last.pitchLost().compareTo(Length.ZERO) > 0
                ? ", pitch diameter less by " + figures.length(last.pitchLost())
                : "";
        return "Best of both: %s, %d by the chamfer and %d by the faces; then thread shorter by %s, land %s%s."
                .formatted(
                        count(line.chamfers() + line.faces()),
                        line.chamfers(),
                        line.faces(),
                        figures.coarse(last.threadLost()),
                        figures.angle(last.land()),
                        pitch);
    }

    static String count(@Nullable Integer count) {
        return count == null ? "no limit known" : count == 1 ? "1 sharpening" : count + " sharpenings";
    }

    private static String ended(@Nullable LifeLimit limit) {
        return limit == null ? "" : " What ends it: " + limit(limit) + ".";
    }

    static String limit(LifeLimit limit) {
        return switch (limit) {
            case THREAD_LENGTH -> "thread length";
            case PITCH_DIAMETER -> "pitch diameter";
            case LAND_ANGLE -> "land";
            case CORE -> "core";
            case REACH -> "reach of the spiral point";
            case CAP -> "as many as agreed";
        };
    }
}
