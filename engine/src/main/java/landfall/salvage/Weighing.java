// SPDX-License-Identifier: Apache-2.0
package landfall.salvage;

import java.util.ArrayList;
import java.util.List;
import landfall.material.WorkGroup;
import landfall.material.WorkMaterial;
import landfall.quantity.Length;
import landfall.tap.FluteKind;
import landfall.tap.TapMaterial;
import landfall.thread.Family;
import org.jspecify.annotations.Nullable;

/**
 * What speaks for a way and what against: common practice, point by point. The points only order the ways; they measure
 * nothing. Sizes in mm: pins are made from about 3 mm and are stout from about 5; a nut can be welded on from about 6.
 */
final class Weighing {
    private static final int STRONG = 40;
    private static final int FAIR = 20;
    private static final int SLIGHT = 10;
    private static final double LEAST_PINS = 3;
    private static final double STOUT_PINS = 5;
    private static final double LEAST_WELD = 6;
    private static final double LEAST_MILL = 3;
    private static final double LEAST_SPARK = 1.5;
    private static final double LONG_FOR_A_MILL = 4;

    private final BrokenTap broken;
    private final double d;
    private final @Nullable WorkGroup group;
    private final List<String> reasons = new ArrayList<>();
    private final List<String> against = new ArrayList<>();
    private boolean fits = true;
    private int points;

    Weighing(BrokenTap broken) {
        this.broken = broken;
        this.d = broken.major().mm();
        WorkMaterial material = broken.part().material();
        this.group = material == null ? null : material.group();
    }

    WayOut of(Way way) {
        switch (way.code()) {
            case "again" -> again();
            case "stub" -> stub();
            case "extractor" -> extractor();
            case "behind" -> behind();
            case "weld" -> weld();
            case "shatter" -> shatter();
            case "mill" -> mill();
            case "spark" -> spark();
            case "dissolve" -> dissolve();
            case "soften" -> soften();
            case "bore" -> bore();
            default -> throw new IllegalStateException("no weighing of the way " + way.code());
        }
        return new WayOut(way, fits, reasons, against);
    }

    int points() {
        return fits ? points : -1000 + points;
    }

    private void speaksFor(int weight, String reason) {
        points += weight;
        reasons.add(reason);
    }

    private void speaksAgainst(int weight, String why) {
        points -= weight;
        against.add(why);
    }

    private void impossible(String why) {
        fits = false;
        against.add(why);
    }

    /** Points by the worth of the part, with a sentence where there is one. */
    private void byWorth(int low, int middle, int high) {
        points += switch (broken.worthUsed()) {
            case LOW -> low;
            case MIDDLE -> middle;
            case HIGH -> high;
        };
    }

    private void again() {
        switch (broken.worthUsed()) {
            case LOW -> speaksFor(STRONG + SLIGHT, "The part is worth less than the time to save it.");
            case MIDDLE -> speaksAgainst(FAIR, "An hour at the bench is worth a try first.");
            case HIGH -> speaksAgainst(2 * STRONG, "The part is not to be lost.");
        }
    }

    private void stub() {
        Length proud = broken.stump().proud();
        double needed = Math.max(3, d / 2);
        if (proud == null) {
            speaksFor(SLIGHT, "Only if a stub of about %.0f mm stands proud: tell how far.".formatted(needed));
        } else if (proud.mm() >= needed) {
            speaksFor(2 * STRONG, "The stub stands %.1f mm proud: enough to grip.".formatted(proud.mm()));
        } else {
            impossible("%.1f mm stand proud; to grip it takes about %.0f mm.".formatted(proud.mm(), needed));
        }
    }

    private void extractor() {
        FluteKind kind = broken.stump().kind();
        if (kind == FluteKind.FORMING) {
            impossible("A forming tap has no flutes for pins.");
        } else if (kind != null && kind.isSpiral()) {
            impossible("Pins do not follow spiral flutes.");
        } else if (d < LEAST_PINS) {
            impossible("Pins are not made for %.1f mm.".formatted(d));
        } else if (d < STOUT_PINS) {
            speaksAgainst(SLIGHT, "Pins for %.1f mm are thin and twist off.".formatted(d));
        } else {
            speaksFor(STRONG, "Large enough for stout pins, and nothing is lost by a careful try.");
        }
        if (!broken.through()) {
            speaksAgainst(SLIGHT, "In a blind hole chips wedge the flutes: blow them out first.");
        }
        carbide("Carbide has gone to splinters: pins find no hold.", false);
    }

    private void behind() {
        if (broken.through()) {
            speaksFor(FAIR, "The hole is through: look at it from behind first.");
        } else {
            impossible("The hole is not told to be through.");
        }
    }

    private void weld() {
        if (d < LEAST_WELD) {
            impossible("Too thin to weld on without hitting the wall.");
        }
        if (group == WorkGroup.MAGNESIUM) {
            impossible("Never an arc on magnesium: it burns.");
        } else if (group == WorkGroup.PLASTIC) {
            impossible("The part melts.");
        } else if (group == WorkGroup.HARDENED) {
            speaksAgainst(FAIR, "Heat softens or cracks a hardened part.");
        } else if (group == WorkGroup.ALUMINIUM) {
            speaksFor(SLIGHT, "Steel weld does not take on aluminium; the wall softens all the same.");
        }
        carbide("Carbide does not weld.", false);
        speaksFor(SLIGHT, "The heat loosens it, and the nut is something to turn by.");
        byWorth(0, SLIGHT, -SLIGHT);
    }

    private void shatter() {
        boolean soft = group == WorkGroup.ALUMINIUM
                || group == WorkGroup.COPPER
                || group == WorkGroup.ZINC
                || group == WorkGroup.MAGNESIUM
                || group == WorkGroup.PLASTIC;
        if (soft) {
            speaksAgainst(FAIR, "In so soft a part the lands are beaten into the thread.");
        }
        if (broken.stump().material() == TapMaterial.CARBIDE) {
            speaksFor(STRONG, "Carbide shatters to splinters that can be picked out.");
        } else {
            speaksFor(SLIGHT, "A hardened tap breaks like glass.");
        }
        if (broken.through()) {
            speaksFor(SLIGHT, "Pieces fall out below.");
        }
        if (broken.worthUsed() == Worth.HIGH) {
            speaksAgainst(STRONG, "Blows on a part that is not to be lost.");
        }
        byWorth(FAIR, 0, 0);
    }

    private void mill() {
        if (d < LEAST_MILL) {
            impossible("The core is thinner than a mill that would bear it.");
        }
        carbide("Carbide cannot be milled by carbide.", false);
        Length depth = broken.part().depth();
        double core = Sizes.coreMiddle(broken) * d;
        if (depth != null && depth.mm() > LONG_FOR_A_MILL * core) {
            speaksAgainst(
                    FAIR,
                    "%.0f times as deep as the core is thick: a long thin mill walks and breaks."
                            .formatted(depth.mm() / core));
        } else if (depth != null) {
            speaksFor(SLIGHT, "Shallow enough for a short stiff mill.");
        }
        speaksFor(SLIGHT, "Ends the matter in one set-up on a rigid machine.");
        byWorth(-SLIGHT, FAIR, SLIGHT);
    }

    private void spark() {
        if (group == WorkGroup.PLASTIC) {
            impossible("The part does not conduct.");
        }
        if (d < LEAST_SPARK) {
            impossible("Too thin for an electrode.");
        }
        switch (broken.worthUsed()) {
            case HIGH -> speaksFor(2 * STRONG, "Safest for the thread: send it out rather than try another way.");
            case MIDDLE -> speaksFor(STRONG - SLIGHT, "Safest for the thread.");
            case LOW -> speaksAgainst(SLIGHT, "Costs more than the part.");
        }
        if (d < STOUT_PINS) {
            speaksFor(SLIGHT, "Small taps leave little else.");
        }
    }

    private void dissolve() {
        if (group != WorkGroup.ALUMINIUM && group != WorkGroup.COPPER) {
            impossible(
                    group == WorkGroup.MAGNESIUM
                            ? "Acids eat magnesium and free hydrogen."
                            : "Only out of aluminium, brass and bronze: the bath would eat this part as well.");
        }
        carbide("Carbide does not dissolve.", false);
        if (d < STOUT_PINS) {
            speaksFor(SLIGHT, "A small tap is gone in a day, and the thread is not touched.");
        }
        speaksAgainst(SLIGHT, "High-speed steel goes slower than carbon steel.");
        byWorth(-FAIR, 0, FAIR);
    }

    private void soften() {
        if (broken.stump().material() != TapMaterial.CARBON) {
            impossible("High-speed steel and carbide stay hard at any heat a part would bear.");
        } else if (group == WorkGroup.STEEL || group == WorkGroup.IRON || group == WorkGroup.STAINLESS) {
            speaksFor(SLIGHT, "A carbon-steel tap goes soft, and this part bears the heat.");
        } else {
            impossible("This part does not bear red heat.");
        }
    }

    private void bore() {
        Family family = broken.callOut().thread().family();
        if (family != Family.METRIC && family != Family.UNIFIED) {
            impossible("No wire insert is held for this thread.");
        }
        speaksAgainst(FAIR, "The last resort: the thread that is there is lost.");
        byWorth(-FAIR, SLIGHT, FAIR);
    }

    private void carbide(String why, boolean possible) {
        if (broken.stump().material() == TapMaterial.CARBIDE && !possible) {
            impossible(why);
        }
    }
}
