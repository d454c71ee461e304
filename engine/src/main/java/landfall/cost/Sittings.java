// SPDX-License-Identifier: Apache-2.0
package landfall.cost;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import landfall.fault.OutOfRange;
import landfall.quantity.Angle;
import landfall.quantity.TimeSpan;
import landfall.thread.Hand;
import landfall.working.Pen;
import landfall.working.Rule;
import landfall.working.Source;
import landfall.working.Trust;
import landfall.working.Worked;

/**
 * Taps that are due, gathered so that the fixture is set up as seldom as can be: one sitting for each cam, in it one
 * swivel after the other.
 *
 * @param all sittings, those with most taps first
 * @param together time at the bench
 * @param singly time if each tap were set up for by itself
 */
public record Sittings(List<Sitting> all, TimeSpan together, TimeSpan singly) {
    private static final Source PRACTICE = Source.of("common-practice", "minutes at the tool grinder");
    private static final Source NOTE = Source.of("derived", "docs/methods/cost-per-hole.md");
    /** Swivels within this are one: the scale is not read closer. */
    private static final double ONE_SWIVEL_DEG = 0.25;

    private static final double SECONDS = 60;

    /** Cams go by lobes, which are the flutes, and by hand. */
    public record Cam(int lobes, Hand hand) {}

    /** One tap that is due. */
    public record DueTap(String mark, Cam cam, Angle swivel) {}

    /** Taps ground at one swivel. */
    public record AtSwivel(Angle swivel, List<String> marks) {
        public AtSwivel {
            marks = List.copyOf(marks);
        }
    }

    /** Taps ground with one cam. */
    public record Sitting(Cam cam, List<AtSwivel> swivels) {
        public Sitting {
            swivels = List.copyOf(swivels);
        }

        public int taps() {
            return swivels.stream().mapToInt(at -> at.marks().size()).sum();
        }
    }

    /**
     * Time that things take.
     *
     * @param cam to set the fixture up with a cam, its first swivel with it
     * @param swivel to set another one
     * @param each to grind one tap
     */
    public record Times(TimeSpan cam, TimeSpan swivel, TimeSpan each, boolean told) {
        /** Half an hour, ten minutes, four minutes: common practice. */
        public static final Times USUAL = new Times(minutes(30), minutes(10), minutes(4), false);

        public Times {
            if (!(cam.s() >= swivel.s() && swivel.s() >= 0 && each.s() >= 0)) {
                throw new OutOfRange(
                        "times",
                        cam.s() / SECONDS + ", " + swivel.s() / SECONDS + " and " + each.s() / SECONDS + " min",
                        "0 or more, a whole set-up no shorter than another swivel",
                        "give the minutes for a set-up, for another swivel and for each tap");
            }
        }

        private static TimeSpan minutes(double minutes) {
            return TimeSpan.ofSeconds(minutes * SECONDS);
        }
    }

    static final Rule CAM = Rule.table("t_c", "min", PRACTICE, Trust.PRACTICE, "to set up a cam and its first swivel");
    static final Rule SWIVEL = Rule.table("t_v", "min", PRACTICE, Trust.PRACTICE, "to set another swivel");
    static final Rule EACH = Rule.table("t_e", "min", PRACTICE, Trust.PRACTICE, "to grind one tap");
    static final Rule CAM_TOLD = Rule.given("t_c", "min", "to set up a cam and its first swivel");
    static final Rule SWIVEL_TOLD = Rule.given("t_v", "min", "to set another swivel");
    static final Rule EACH_TOLD = Rule.given("t_e", "min", "to grind one tap");
    static final Rule TAPS = Rule.given("n_t", "1", "taps that are due");
    static final Rule CAMS = Rule.given("n_c", "1", "cams that they need");
    static final Rule SWIVELS = Rule.given("n_v", "1", "swivels that they need, cam by cam");
    public static final Rule TOGETHER = new Rule(
            "t", "n_c*t_c + (n_v - n_c)*t_v + n_t*t_e", "min", NOTE, Trust.ESTIMATE, "time at the bench, gathered");
    public static final Rule SINGLY =
            new Rule("t_1", "n_t*(t_c + t_e)", "min", NOTE, Trust.ESTIMATE, "time at the bench, one by one");

    public Sittings {
        all = List.copyOf(all);
    }

    public static Worked<Sittings> of(List<DueTap> taps, Times times) {
        Map<String, List<DueTap>> byCam = new TreeMap<>();
        for (DueTap tap : taps) {
            String key = "%03d %s".formatted(tap.cam.lobes, tap.cam.hand);
            byCam.computeIfAbsent(key, cam -> new ArrayList<>()).add(tap);
        }
        List<Sitting> all = new ArrayList<>();
        byCam.values().forEach(some -> all.add(new Sitting(some.get(0).cam, swivels(some))));
        all.sort(Comparator.comparingInt(Sitting::taps).reversed());
        return Worked.of(pen -> timed(all, taps.size(), times, pen));
    }

    /** Gathered from the flattest up; a swivel is that of the first tap of its group. */
    private static List<AtSwivel> swivels(List<DueTap> taps) {
        List<DueTap> sorted = new ArrayList<>(taps);
        sorted.sort(Comparator.comparingDouble(tap -> tap.swivel.deg()));
        List<AtSwivel> groups = new ArrayList<>();
        List<String> marks = new ArrayList<>();
        Angle first = sorted.get(0).swivel;
        for (DueTap tap : sorted) {
            if (tap.swivel.deg() - first.deg() > ONE_SWIVEL_DEG) {
                groups.add(new AtSwivel(first, marks));
                marks = new ArrayList<>();
                first = tap.swivel;
            }
            marks.add(tap.mark);
        }
        groups.add(new AtSwivel(first, marks));
        return groups;
    }

    private static Sittings timed(List<Sitting> all, int taps, Times times, Pen pen) {
        int swivels = all.stream().mapToInt(sitting -> sitting.swivels().size()).sum();
        double t_c = pen.write(times.told ? CAM_TOLD : CAM, times.cam.s() / SECONDS);
        double t_v = pen.write(times.told ? SWIVEL_TOLD : SWIVEL, times.swivel.s() / SECONDS);
        double t_e = pen.write(times.told ? EACH_TOLD : EACH, times.each.s() / SECONDS);
        double n_t = pen.write(TAPS, taps);
        double n_c = pen.write(CAMS, all.size());
        double n_v = pen.write(SWIVELS, swivels);
        double together = pen.write(TOGETHER, n_c * t_c + (n_v - n_c) * t_v + n_t * t_e);
        double singly = pen.write(SINGLY, n_t * (t_c + t_e));
        return new Sittings(all, Times.minutes(together), Times.minutes(singly));
    }
}
