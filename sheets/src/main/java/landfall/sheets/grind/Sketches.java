// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.grind;

import java.util.List;
import java.util.stream.Stream;
import landfall.envelope.GrindRun;
import landfall.envelope.LandGaps;
import landfall.grind.Fall;
import landfall.grind.GrindSetup;
import landfall.grind.Place;
import landfall.quantity.Length;
import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Ink;
import landfall.sheets.figure.Figures;
import landfall.sheets.grind.FallView.Course;

/** The four sketches of one set-up. Ids begin with a prefix, so that a page can hold the sketches of two set-ups. */
public record Sketches(GrindSetup setup, Figures figures, String prefix) {
    private static final int ROWS_A_PITCH = 12;

    public Drawing end(Ink ink) {
        Stroke stroke = new Stroke(
                setup.fixture().cam().lobe(),
                setup.motion().gap(),
                setup.shape().fall().perRadian(),
                setup.fixture().wheel().diameter());
        return new EndView(TapShape.of(setup), stroke, figures).draw(prefix + "-end", ink);
    }

    public Drawing chamfer(Ink ink) {
        return new ChamferView(TapShape.of(setup), setup.motion().setting().swivel(), figures)
                .draw(prefix + "-chamfer", ink);
    }

    public Drawing heel(Ink ink) {
        return new HeelView(heelFall(setup), setup.tap().chamfer().angle(), figures).draw(prefix + "-heel", ink);
    }

    public Drawing fall(Ink ink) {
        return new FallView(course(setup), figures).draw(prefix + "-fall", ink);
    }

    public List<Drawing> all(Ink ink) {
        return Stream.of(end(ink), chamfer(ink), heel(ink), fall(ink)).toList();
    }

    /**
     * The land of a run that is tightest, unrolled.
     *
     * @param run of this set-up
     */
    public Drawing gaps(GrindRun run, Ink ink) {
        Length pitch = setup.tap().thread().pitch();
        int land = run.found().least().land() - 1;
        double turned = (double) land / setup.tap().flutes().count();
        Length onLand = setup.tap().thread().lead().perTurn().times(turned);
        double first = onLand.mm() - Math.floor(onLand.mm() / pitch.mm()) * pitch.mm();
        LandGaps gaps = run.ground().gaps(setup, land, pitch.times(1.0 / ROWS_A_PITCH));
        return new GapMap(gaps, pitch, Length.ofMm(first), figures).draw(prefix + "-gaps", ink);
    }

    /**
     * The fall at the heel that this set-up grinds, from the target there square to the chamfer at rest: what a dial
     * will find. With a straight rise on time it is the set-up's own fall; a curved or a late one leaves another.
     */
    static Fall heelFall(GrindSetup setup) {
        Course course = course(setup);
        double kappa = setup.tap().chamfer().angle().rad();
        Length radial = course.fall();
        Length axial = radial.times(1 / Math.tan(kappa));
        return new Fall(setup.shape().fall().perRadian(), radial, axial, radial.times(Math.cos(kappa)));
    }

    /**
     * The radial fall that this set-up grinds, from the targets square to the chamfer at rest: f_r = f_n / cos(chamfer
     * angle). What the advance takes of it at the heel, from the relief lost: r tan(loss) land / cos(chamfer angle).
     */
    static Course course(GrindSetup setup) {
        double cosine = Math.cos(setup.tap().chamfer().angle().rad());
        List<Course.At> ground = setup.motion().dial().stream()
                .filter(target -> target.place() == Place.CHAMFER_STILL)
                .map(target -> new Course.At(target.land(), target.reading().times(-1 / cosine)))
                .toList();
        double loss = Math.tan(setup.shape().relief().loss().rad());
        Length advance = setup.shape().midRadius().times(loss * setup.land().rad() / cosine);
        return new Course(
                setup.shape().midRadius(),
                ground,
                advance,
                setup.motion().phase().dying());
    }
}
