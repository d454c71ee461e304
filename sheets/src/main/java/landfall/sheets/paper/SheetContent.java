// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.paper;

import java.util.List;
import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Mark;
import org.jspecify.annotations.Nullable;

/**
 * What a set-up sheet says, in the order in which it is worked from: already rounded, already in words.
 *
 * @param heading the tap and the fixture
 * @param keys the figures to set, largest on the sheet
 * @param pictures sketches and dial faces
 * @param readings what the dial should read, with room to note
 * @param work stock, passes, wheel, steps, cautions
 */
record SheetContent(Heading heading, Keys keys, Pictures pictures, Readings readings, Work work) {
    /** title: the call-out; under it what the tap is; beside it the fixture. */
    record Heading(String title, String tap, String fixture) {}

    /** The figures, and whether the gap is clear. */
    record Keys(List<Key> figures, Verdict gap) {}

    /** A figure to set or to check: its name, the figure, and what belongs to it in small. */
    record Key(String name, String figure, List<String> under) {}

    /** The drawings. */
    record Pictures(Drawing end, Drawing chamfer, Drawing heel, Drawing fall, Dials dials) {}

    /** The dial faces, and in words where the dial stands for them. */
    record Dials(String words, List<Drawing> faces) {}

    /**
     * The table of readings.
     *
     * @param unit of every reading, and the step of the angles where rows are left out
     * @param lands how many empty columns to note in
     * @param notes where each stylus stands and how it is read
     */
    record Readings(String unit, List<String> places, List<Row> rows, int lands, List<String> notes) {}

    /** One angle; its readings in the order of the places. */
    record Row(String angle, List<String> readings) {}

    /** What is taken and done. */
    record Work(Facts facts, List<Tick> steps, Cautions cautions, After after, Run run) {}

    /**
     * What the set-up leaves, run with a wheel of its size.
     *
     * @param heads of the table
     * @param lands its rows
     * @param said the rest in sentences
     */
    record Run(Drawing map, List<String> heads, List<List<String>> lands, List<String> said) {}

    /**
     * The leaf for afterwards.
     *
     * @param life the life line; null when nothing is told of it
     * @param left the same in words
     */
    record After(List<Measure> measures, @Nullable Drawing life, List<String> left) {}

    /**
     * Something to measure when it is ground.
     *
     * @param what with which instrument
     * @param target what it should be, with its tolerance
     * @param blanks how many readings are noted: one, or one a land
     */
    record Measure(String what, String target, int blanks) {}

    /** What the sheet's own figures raise, and what the work itself always asks for. */
    record Cautions(List<String> raised, List<String> always) {}

    /**
     * What there is to know, in short.
     *
     * @param taken stock, tap after grinding, wheel: beside the sketches
     * @param behind relief along the chamfer, other ways, what was assumed: under the dials
     */
    record Facts(List<Fact> taken, List<Fact> behind) {}

    /** A judgement: by shape, by word, and why. */
    record Verdict(Mark mark, String word, String why) {}

    /** A name and what is to be said of it, such as the wheel's speed. */
    record Fact(String name, String text) {}

    /**
     * A step of the procedure.
     *
     * @param figure what is set there; empty when nothing is
     * @param note whether a reading is noted there
     * @param passes how many passes are ticked off there; 0 when the step is no pass
     */
    record Tick(String text, String figure, boolean note, int passes) {}
}
