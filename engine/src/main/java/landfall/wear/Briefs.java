// SPDX-License-Identifier: Apache-2.0
package landfall.wear;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import landfall.history.Event;
import landfall.history.Happening;
import landfall.history.History;
import landfall.quantity.Length;
import org.jspecify.annotations.Nullable;

/** The runs of one tap in brief: from its whole history, or from the open one on, event by event. */
public final class Briefs {
    private final String mark;
    private final List<Brief> done = new ArrayList<>();
    private final RunWalk walk = new RunWalk(new Keeping());
    private Brief.Course course = Brief.Course.NONE;

    private Briefs(String mark) {
        this.mark = mark;
    }

    /** Those that {@link Runs#of} finds. */
    public static Briefs of(String mark, History history) {
        List<Event> inTime = new ArrayList<>(history.holding());
        inTime.sort(Comparator.comparing(Event::at).thenComparingLong(Event::seq));
        Briefs briefs = new Briefs(mark);
        inTime.forEach(briefs::take);
        return briefs;
    }

    /** Before anything has happened. */
    public static Briefs fresh(String mark) {
        return new Briefs(mark);
    }

    /** Goes on with a run that is open; those before it are not told again. */
    public static Briefs after(Brief open) {
        if (!open.isOpen()) {
            throw new IllegalArgumentException("a run of " + open.mark() + " that is over");
        }
        Briefs briefs = new Briefs(open.mark());
        briefs.walk.goOn(open.span());
        briefs.course = open.course();
        return briefs;
    }

    /** The next event in time; what takes another back must be told by the whole history. */
    public void take(Event event) {
        walk.take(event);
    }

    /** The runs that are over, then the open one; none is open when the tap has ended. */
    public List<Brief> all() {
        List<Brief> all = new ArrayList<>(done);
        Brief open = open();
        if (open != null) {
            all.add(open);
        }
        return all;
    }

    public @Nullable Brief open() {
        return walk.hasEnded() ? null : new Brief(mark, walk.open(), course);
    }

    private final class Keeping implements RunWalk.Keeper {
        @Override
        public boolean hasCut() {
            return !course.whole().isEmpty();
        }

        @Override
        public void cut(Happening.Tapped cut) {
            course = Brief.cut(course, cut);
        }

        @Override
        public void land(Length width) {
            course = Brief.measured(course, width);
        }

        @Override
        public void keep(Run.Span span) {
            done.add(new Brief(mark, span, course));
        }

        @Override
        public void begin() {
            course = Brief.Course.NONE;
        }
    }
}
