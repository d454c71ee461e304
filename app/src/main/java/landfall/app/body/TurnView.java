// SPDX-License-Identifier: Apache-2.0
package landfall.app.body;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import landfall.cards.ask.GrindTrial;
import landfall.cards.words.Words;
import landfall.envelope.OneTurn;
import landfall.envelope.OneTurn.Moment;
import landfall.grind.GrindSetup;
import landfall.grind.Setting;
import landfall.sheets.dial.DialKind;
import landfall.sheets.dial.RunningDial;
import landfall.sheets.figure.Figures;
import landfall.thread.Hand;

/**
 * One turn of the tap for the page: what the script shows is all here, moment by moment; it works out nothing.
 *
 * @param dials those whose slide rises, and the one in the wheel's place
 * @param where what is on the centre line, one text a moment, divided by bars
 * @param moves angle of the spindle in degrees, the axial and the radial slide in millimetres, of each moment
 * @param wheel the line that the wheel grinds along: radius and height of its two ends, mm
 * @param leftHand whether the tap turns the other way
 */
public record TurnView(List<RunningDial> dials, String where, Moves moves, String wheel, boolean leftHand) {
    public TurnView {
        dials = List.copyOf(dials);
    }

    /** Numbers of every moment, divided by blanks; {@code edges} are the moments at which a land comes to the line. */
    public record Moves(String spindle, String axial, String radial, String edges) {}

    static TurnView of(GrindTrial trial) {
        GrindSetup setup = trial.setup();
        List<Moment> moments = OneTurn.of(setup, trial.errors(), trial.ground()).moments();
        var chamfer = setup.tap().chamfer();
        String wheel = "%s 0 %s %s"
                .formatted(
                        Figures.plain(chamfer.pointDiameter().mm() / 2, 3),
                        Figures.plain(setup.tap().thread().major().mm() / 2, 3),
                        Figures.plain(
                                chamfer.threads() * setup.tap().thread().pitch().mm(), 3));
        return new TurnView(
                dials(setup, moments),
                moments.stream().map(TurnView::where).collect(Collectors.joining("|")),
                new Moves(
                        numbers(moments, moment -> moment.spindle().deg()),
                        numbers(moments, moment -> moment.end().mm()),
                        numbers(moments, moment -> moment.shank().mm()),
                        edges(moments)),
                wheel,
                setup.tap().thread().hand() == Hand.LEFT);
    }

    private static List<RunningDial> dials(GrindSetup setup, List<Moment> moments) {
        DialKind kind = DialKind.ofResolution(setup.motion().division());
        Setting.Rises rises = setup.motion().setting().rises();
        List<RunningDial> dials = new ArrayList<>();
        if (rises.axial().mm() > 0) {
            dials.add(RunningDial.of(Words.of("page.body.dialEnd"), kind, moments, Moment::end));
        }
        if (rises.radial().mm() > 0) {
            dials.add(RunningDial.of(Words.of("page.body.dialShank"), kind, moments, Moment::shank));
        }
        dials.add(RunningDial.of(Words.of("page.body.dialChamfer"), kind, moments, Moment::chamfer));
        return dials;
    }

    private static String where(Moment moment) {
        String spindle = Figures.plain(moment.spindle().deg(), 1);
        if (moment.land() == 0) {
            return Words.of("page.body.overFlute", spindle);
        }
        return Words.of(
                "page.body.onLand",
                spindle,
                String.valueOf(moment.land()),
                Figures.plain(moment.behindEdge().deg(), 1));
    }

    private static String edges(List<Moment> moments) {
        return IntStream.range(0, moments.size() - 1)
                .filter(i -> moments.get(i).land() > 0)
                .filter(i ->
                        i == 0 || moments.get(i).land() != moments.get(i - 1).land())
                .mapToObj(String::valueOf)
                .collect(Collectors.joining(" "));
    }

    private static String numbers(List<Moment> moments, Function<Moment, Double> of) {
        return moments.stream()
                .map(moment -> Figures.plain(of.apply(moment), 4).replace('\u2212', '-'))
                .collect(Collectors.joining(" "));
    }
}
