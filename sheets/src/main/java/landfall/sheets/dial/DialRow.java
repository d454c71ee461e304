// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.dial;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import landfall.grind.DialTarget;
import landfall.grind.GrindSetup;
import landfall.grind.Lobe;
import landfall.grind.Place;
import landfall.grind.Setting;
import landfall.quantity.Angle;
import landfall.quantity.Length;
import landfall.sheets.draw.Drawing;
import landfall.sheets.draw.Ink;
import landfall.sheets.figure.Figures;

/**
 * The faces that a set-up is dialled by: edge, middle of the land and heel at the place where the chosen slide's rise
 * shows itself, and the top of the lobe, which is what the slide is set to. When both slides rise there is room for two
 * faces each: heel and top of the lobe.
 */
public final class DialRow {
    private final GrindSetup setup;
    private final DialKind kind;

    public DialRow(GrindSetup setup) {
        this.setup = setup;
        this.kind = DialKind.ofResolution(setup.motion().division());
    }

    /** Where the dial stands for these faces; the place of the axial slide first when both rise. */
    public List<Place> places() {
        return switch (setup.motion().setting().way()) {
            case RADIAL -> List.of(Place.SHANK);
            case AXIAL -> List.of(Place.END);
            case BOTH -> List.of(Place.END, Place.SHANK);
        };
    }

    public List<Drawing> draw(String prefix, Ink ink) {
        DialFace face = new DialFace(kind);
        List<Drawing> drawings = new ArrayList<>();
        for (Needle needle : needles()) {
            drawings.add(face.draw(needle, prefix + "-" + (drawings.size() + 1), ink));
        }
        return drawings;
    }

    /** What the faces show. */
    public List<Needle> needles() {
        List<Place> places = places();
        List<Needle> needles = new ArrayList<>();
        for (Place place : places) {
            String where = places.size() == 1 ? "" : place.code() + ", ";
            List<DialTarget> targets = targets(place);
            DialTarget heel = targets.get(targets.size() - 1);
            if (places.size() == 1) {
                needles.add(needle("edge", targets.get(0)));
                needles.add(needle("mid-land", middle(targets)));
            }
            needles.add(needle(where + "heel", heel));
            top(place, where, needles);
        }
        return needles;
    }

    private static Needle needle(String where, DialTarget target) {
        return Needle.of(where, target.land(), target.reading());
    }

    private List<DialTarget> targets(Place place) {
        return setup.motion().dial().stream()
                .filter(target -> target.place() == place)
                .toList();
    }

    /** The tabulated angle nearest to half the land, so that the face agrees with a row of the table. */
    private DialTarget middle(List<DialTarget> targets) {
        double half = setup.land().deg() / 2;
        return targets.stream()
                .min(Comparator.comparingDouble(target -> Math.abs(target.land().deg() - half)))
                .orElseThrow();
    }

    /**
     * With a rise that begins before the edge the dial's zero at the edge is not the cam's: then there is no such face.
     */
    private void top(Place place, String where, List<Needle> needles) {
        Lobe lobe = setup.fixture().cam().lobe();
        if (lobe.riseStart().deg() < 0) {
            return;
        }
        Setting.Rises rises = setup.motion().setting().rises();
        Length whole = place == Place.END ? rises.axial() : rises.radial();
        Angle end = lobe.riseStart().plus(lobe.riseAngle());
        needles.add(Needle.of(where + "top of lobe", end, whole));
    }

    /** Where the dial stands for these faces, and how it is read. */
    public String words() {
        StringBuilder words = new StringBuilder();
        for (Place place : places()) {
            words.append(words.length() == 0 ? "Dial at " : " and ")
                    .append(Letters.of(place))
                    .append(", ");
            words.append(place.code()).append(" (").append(place.sign()).append(')');
        }
        words.append(". Zero at the edge, turn in the cutting sense. Black needle: where it should stand. One turn ");
        return words.append(new Figures(kind.units()).length(kind.perTurn()))
                .append('.')
                .toString();
    }
}
