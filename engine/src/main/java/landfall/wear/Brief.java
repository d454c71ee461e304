// SPDX-License-Identifier: Apache-2.0
package landfall.wear;

import java.util.List;
import landfall.history.Happening;
import landfall.quantity.Length;
import landfall.quantity.Torque;
import org.jspecify.annotations.Nullable;

/**
 * A run in brief: all that the wear law asks of it, in few figures however many cuts it has. Grows by one cut or one
 * measured land at a time.
 */
public record Brief(String mark, Run.Span span, Course course) {
    /** @param about whether a guess is among the counts */
    public record Course(Tally whole, boolean about, Signs signs) {
        static final Course NONE = new Course(Tally.NONE, false, Signs.NONE);
    }

    /** What was seen of wear; null where nothing of the kind was told. */
    public record Signs(
            @Nullable LandSign land,
            @Nullable TorqueSign torque,
            @Nullable FeelSign feel) {
        static final Signs NONE = new Signs(null, null, null);

        public boolean isNone() {
            return equals(NONE);
        }
    }

    /** The last wear land that was measured after a hole. */
    public record LandSign(Length width, Tally after) {}

    /**
     * The torque of the first holes, and the last one of holes like them.
     *
     * @param first in the first holes, with their number and work
     * @param last null until such a one was measured
     */
    public record TorqueSign(
            Torque first,
            Happening.Work work,
            Tally firstHoles,
            @Nullable LastTorque last) {}

    public record LastTorque(Torque torque, Tally after) {}

    /** What a hand felt last. */
    public record FeelSign(Happening.Feel feel, Tally after) {}

    public static Brief of(Run run) {
        Course course = Course.NONE;
        int cuts = 0;
        for (Happening.Tapped cut : run.cuts()) {
            course = measured(course, run.lands(), cuts++);
            course = cut(course, cut);
        }
        return new Brief(run.mark(), run.span(), measured(course, run.lands(), cuts));
    }

    private static Course measured(Course course, List<Run.Land> lands, int cuts) {
        Course after = course;
        for (Run.Land land : lands) {
            if (land.after() == cuts) {
                after = measured(after, land.width());
            }
        }
        return after;
    }

    public long holes() {
        return course.whole.holes();
    }

    public boolean about() {
        return course.about;
    }

    public boolean isOpen() {
        return span.end() == Run.End.OPEN;
    }

    /** The material of most of its holes; empty where nobody told any. */
    public String material() {
        return course.whole.material();
    }

    static Course cut(Course before, Happening.Tapped cut) {
        Tally whole = before.whole.plus(cut);
        Happening.Feel feel = cut.felt().feel();
        Signs signs = new Signs(
                before.signs.land,
                torque(before, cut, whole),
                feel == null ? before.signs.feel : new FeelSign(feel, whole));
        return new Course(whole, before.about || cut.holes().about(), signs);
    }

    private static @Nullable TorqueSign torque(Course before, Happening.Tapped cut, Tally whole) {
        Torque felt = cut.felt().torque();
        TorqueSign first = before.signs.torque;
        if (before.whole.isEmpty()) {
            return felt == null || felt.nm() <= 0 ? null : new TorqueSign(felt, cut.work(), whole, null);
        }
        return first == null || felt == null || !first.work.equals(cut.work())
                ? first
                : new TorqueSign(first.first, first.work, first.firstHoles, new LastTorque(felt, whole));
    }

    /** A land that was there before the first hole tells nothing. */
    static Course measured(Course before, Length width) {
        return before.whole.isEmpty()
                ? before
                : new Course(
                        before.whole,
                        before.about,
                        new Signs(new LandSign(width, before.whole), before.signs.torque, before.signs.feel));
    }
}
