// SPDX-License-Identifier: Apache-2.0
package landfall.choice;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import landfall.material.ChipClass;
import landfall.material.WorkGroup;
import landfall.material.WorkMaterial;
import landfall.tap.FluteKind;
import landfall.thread.Family;
import org.jspecify.annotations.Nullable;

/**
 * What speaks for a kind of flute in a hole and what against: common practice, point by point. The points only order
 * the kinds; they measure nothing.
 */
final class Weighing {
    private static final int STRONG = 30;
    private static final int FAIR = 15;
    private static final int SLIGHT = 5;

    private final TapWish wish;
    private final FluteKind kind;
    private final List<String> reasons = new ArrayList<>();
    private final List<String> cautions = new ArrayList<>();
    private int points;

    Weighing(TapWish wish, FluteKind kind) {
        this.wish = wish;
        this.kind = kind;
        chips();
        depth();
        material();
        drive();
        form();
    }

    int points() {
        return points;
    }

    List<String> reasons() {
        return List.copyOf(reasons);
    }

    List<String> cautions() {
        return List.copyOf(cautions);
    }

    private void speaksFor(int weight, String reason) {
        points += weight;
        reasons.add(reason);
    }

    private void speaksAgainst(int weight, String caution) {
        points -= weight;
        cautions.add(caution);
    }

    private void chips() {
        switch (kind) {
            case SPIRAL_RIGHT -> ownHand();
            case SPIRAL_LEFT, SPIRAL_POINT -> ahead();
            case STRAIGHT -> stay();
            case FORMING -> speaksFor(FAIR, "Makes no chips at all.");
        }
    }

    private void ownHand() {
        if (wish.through()) {
            speaksFor(SLIGHT, "Brings the chips back out; the far side stays clean.");
        } else {
            speaksFor(chipsBreak() ? FAIR : STRONG, "Brings the chips back out of a blind hole.");
        }
        if (chipsBreak()) {
            speaksAgainst(
                    SLIGHT,
                    "Short chips can fall between flute and wall: a straight flute is stronger and does as well.");
        }
    }

    private void ahead() {
        String pushes = kind == FluteKind.SPIRAL_POINT
                ? "Rolls the chips tight and pushes them ahead"
                : "Pushes the chips ahead";
        if (wish.through()) {
            int weight = kind == FluteKind.SPIRAL_POINT ? STRONG : FAIR;
            speaksFor(chipsBreak() ? weight / 2 : weight, pushes + ", out at the far side.");
            if (kind == FluteKind.SPIRAL_POINT) {
                speaksFor(SLIGHT, "Shallow flutes: the strongest cutting tap, and the least torque.");
            }
        } else {
            speaksAgainst(
                    2 * STRONG, pushes + ", onto the bottom of a blind hole: only with room for all of them below.");
        }
    }

    private void stay() {
        if (chipsBreak()) {
            speaksFor(wish.through() ? 2 * FAIR : STRONG, "Chips break up: they stay in the flutes without packing.");
        } else if (!wish.byHand()) {
            speaksAgainst(SLIGHT, "Long chips stay in the flutes: come out and clear them, or keep the thread short.");
        } else {
            cautions.add("Turn back to break the chip, and come out to clear the flutes.");
        }
    }

    private void depth() {
        double diameters = wish.diameters();
        double most = switch (kind) {
            case STRAIGHT -> wish.byHand() ? 2 : chipsBreak() ? 2 : wish.through() ? 1.5 : 1;
            case SPIRAL_POINT, SPIRAL_LEFT -> 3;
            case SPIRAL_RIGHT -> 3;
            case FORMING -> 2.5;
        };
        if (diameters > most) {
            speaksAgainst(
                    FAIR,
                    String.format(
                            Locale.ROOT,
                            "%.1f diameters deep: this kind is used to about %s (common practice).",
                            diameters,
                            most == Math.rint(most) ? Integer.toString((int) most) : Double.toString(most)));
        }
        if (kind == FluteKind.SPIRAL_RIGHT && diameters > 0 && !wish.through()) {
            reasons.add(
                    diameters <= 1.5
                            ? "A slow spiral of about 15 deg is enough to one and a half diameters."
                            : "A fast spiral of 35 to 50 deg for this depth.");
        }
    }

    private void material() {
        WorkMaterial material = wish.material();
        if (kind == FluteKind.FORMING) {
            forming(material);
        }
        if (material == null) {
            return;
        }
        if (material.isHard()) {
            if (kind == FluteKind.STRAIGHT) {
                speaksFor(FAIR, "Hard material wants the strong edge of a straight flute.");
            } else if (kind == FluteKind.SPIRAL_RIGHT) {
                speaksAgainst(FAIR, "The thin edge of a spiral chips in material over 35 HRC: at most a slow spiral.");
            }
        }
        if (material.group() == WorkGroup.MAGNESIUM) {
            cautions.add("Magnesium: mineral or lard oil or dry, never water. Keep the chips dry and away from fire.");
        }
    }

    private void forming(@Nullable WorkMaterial material) {
        if (material == null) {
            points -= FAIR;
            cautions.add("Only in material that makes a long chip, under about 35 HRC: tell the material.");
        } else if (material.canBeFormed()) {
            speaksFor(SLIGHT, "This material flows: the formed thread is work-hardened and its tap is strong.");
        } else {
            speaksAgainst(4 * STRONG, "This material is not known to flow: do not form it.");
        }
        cautions.add("Wants its own, larger hole, held closely: ask hole with forming.");
    }

    private void drive() {
        if (wish.byHand()) {
            byHand();
            return;
        }
        if (Boolean.TRUE.equals(wish.drive().horizontal()) && !wish.through() && kind == FluteKind.SPIRAL_RIGHT) {
            reasons.add(
                    "On a horizontal spindle the chips fall out of the hole by themselves once they are at its mouth.");
        }
        if (Boolean.FALSE.equals(wish.drive().horizontal()) && !wish.through() && kind == FluteKind.STRAIGHT) {
            cautions.add("On a vertical spindle loose chips fall back to the bottom of a blind hole.");
        }
    }

    /**
     * Trapezoidal threads take out more metal than sharp ones (Tr20x4 over M20x2.5: 2.7), and their taps allow for it.
     */
    private void form() {
        Family family = wish.callOut().thread().family();
        if (family != Family.ACME && family != Family.STUB_ACME && family != Family.TRAPEZOIDAL) {
            return;
        }
        if (kind == FluteKind.STRAIGHT) {
            speaksFor(2 * STRONG, "Taps for trapezoidal threads are made with straight flutes, often in tandem.");
        } else {
            speaksAgainst(STRONG, "Seldom made for this form of thread.");
        }
    }

    private void byHand() {
        switch (kind) {
            case STRAIGHT ->
                speaksFor(STRONG + FAIR, "Made for the hand: starts square, and turning back breaks the chip.");
            case SPIRAL_POINT -> speaksFor(SLIGHT, "Turns lightly by hand; it is not turned back before the end.");
            case SPIRAL_RIGHT ->
                speaksAgainst(FAIR, "A spiral pulls itself in and cannot break its chip: hard to guide by hand.");
            case SPIRAL_LEFT -> speaksAgainst(FAIR, "Seldom made for the hand.");
            case FORMING -> speaksAgainst(2 * STRONG, "Two to three times the torque of a cutting tap: not by hand.");
        }
    }

    private boolean chipsBreak() {
        WorkMaterial material = wish.material();
        if (material == null) {
            return false;
        }
        ChipClass chip = material.cutting().chip().value().kind();
        return chip == ChipClass.SHORT || chip == ChipClass.POWDER;
    }
}
