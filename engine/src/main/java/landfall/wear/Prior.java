// SPDX-License-Identifier: Apache-2.0
package landfall.wear;

import java.util.List;
import java.util.Locale;
import landfall.fault.OutOfRange;
import landfall.material.Materials;
import landfall.material.WorkGroup;
import landfall.material.WorkMaterial;
import landfall.quantity.Band;
import landfall.quantity.Length;
import landfall.tap.Wear;
import landfall.thread.ScrewThread;
import landfall.thread.Table;
import landfall.working.Pen;
import org.jspecify.annotations.Nullable;

/**
 * What is held of a tap's wear before any record: from common practice, or as the shop tells it.
 *
 * @param life thread cut between two sharpenings, in diameters
 */
public record Prior(Subject subject, Life life, Breaks breaks) {
    /** Taps of one thread in one material, sharpened at one wear land. */
    public record Subject(Length major, Length due, WorkMaterial material) {
        public Subject {
            if (!(major.mm() > 0)) {
                throw new OutOfRange("major diameter", major.words(), "more than 0", "give the tap's thread");
            }
            if (!(due.mm() > 0)) {
                throw new OutOfRange(
                        "wear limit", due.words(), "more than 0", "give the wear land at which taps are sharpened");
            }
        }
    }

    /**
     * The middle of the lives of many taps, in diameters of thread.
     *
     * @param diameters of ten shops nine lie inside
     * @param told by the shop itself, and not from common practice
     */
    public record Life(Band diameters, boolean told) {
        public Life {
            if (!(diameters.low() > 0 && diameters.high() > diameters.low())) {
                throw new OutOfRange(
                        "life",
                        String.format(Locale.ROOT, "%.4g to %.4g", diameters.low(), diameters.high()),
                        "a low figure over 0 and a higher one",
                        "give the least and the most that taps last here");
            }
        }

        /** Standard deviation of its logarithm. */
        double spread() {
            return Math.log(diameters.high() / diameters.low()) / (2 * FIVE_PER_CENT);
        }
    }

    /**
     * Taps that break in a run from sharp to due.
     *
     * @param perRun expected
     * @param worth how many broken taps the expectation weighs as much as
     */
    public record Breaks(double perRun, double worth) {
        public Breaks {
            if (!(perRun > 0 && perRun < 1 && worth > 0)) {
                throw new OutOfRange(
                        "breaks per run",
                        String.format(Locale.ROOT, "%.4g worth %.4g", perRun, worth),
                        "between 0 and 1, worth more than 0",
                        "give how many of a hundred runs end with a broken tap, over a hundred");
            }
        }
    }

    /** The normal distribution's point that one in twenty passes. */
    static final double FIVE_PER_CENT = 1.6448536269514722;
    /** Full depth of thread where nobody told it, over the diameter. */
    static final double USUAL_DEPTH = 1.5;

    private static final double PRACTICE_WORTH = 1;

    /** By common practice: an estimate without a source, wide on purpose. */
    public static Prior practice(ScrewThread thread, WorkMaterial material) {
        Length due = Wear.DUE.land(thread, Pen.NONE);
        return new Prior(
                new Subject(thread.major(), due, material),
                new Life(usual(material.group()), false),
                new Breaks(perRun(thread.major()), PRACTICE_WORTH));
    }

    /** The same, with the shop's own wear limit. */
    public Prior sharpenedAt(Length due) {
        return new Prior(new Subject(subject.major, due, subject.material), life, breaks);
    }

    /** The same, with what the shop itself holds of its taps' life; in diameters of thread, nine in ten inside. */
    public Prior lasting(Band diameters) {
        return new Prior(subject, new Life(diameters, true), breaks);
    }

    /** How many diameters of the subject's material wear as much as one of another; 1 where it is not known. */
    double weight(@Nullable String material) {
        if (material == null || material.equals(subject.material.id())) {
            return 1;
        }
        return Materials.find("material", material)
                .map(other -> usual(subject.material.group()).expected()
                        / usual(other.group()).expected())
                .orThrow();
    }

    private static Band usual(WorkGroup group) {
        List<String> row = Table.at("/wear/life.csv").stream()
                .filter(cells -> cells.get(0).equals(group.code()))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no life in " + group.code()));
        double middle = Double.parseDouble(row.get(1));
        double factor = Double.parseDouble(row.get(2));
        return new Band(middle / factor, middle, middle * factor);
    }

    private static double perRun(Length major) {
        return Table.at("/wear/breaks.csv").stream()
                .filter(cells -> major.mm() <= Double.parseDouble(cells.get(0)))
                .findFirst()
                .map(cells -> Double.parseDouble(cells.get(1)))
                .orElseThrow(() -> new IllegalStateException("no breaks at " + major.words()));
    }
}
