// SPDX-License-Identifier: Apache-2.0
package landfall.history;

import java.util.Optional;
import landfall.quantity.Length;
import org.jspecify.annotations.Nullable;

/** What one event does to how a thing stands. */
final class Fold {
    private Fold() {}

    static Standing after(Standing before, Happening what) {
        if (what instanceof Happening.Tapped tapped) {
            return used(before, before.uses().tapped(tapped.holes()));
        }
        if (what instanceof Happening.Sharpened) {
            return conditioned(used(before, before.uses().sharpened()), ground(before.condition()));
        }
        if (what instanceof Happening.Measured measured) {
            return conditioned(before, measured(before.condition(), measured.sizes()));
        }
        if (what instanceof Happening.Inspected inspected) {
            return conditioned(before, judged(before.condition(), inspected.passed()));
        }
        if (what instanceof Happening.Coated coated) {
            Standing.Condition old = before.condition();
            return conditioned(
                    before, new Standing.Condition(old.sizes(), old.passed(), !coated.on(), old.calibrationDue()));
        }
        if (what instanceof Happening.Calibrated calibrated) {
            Standing.Condition old = before.condition();
            return conditioned(
                    before,
                    new Standing.Condition(old.sizes(), calibrated.passed(), old.coatingLost(), calibrated.due()));
        }
        return placed(before, what);
    }

    private static Standing placed(Standing before, Happening what) {
        if (what instanceof Happening.Issued issued) {
            return at(before, Status.ISSUED, issued.to());
        }
        if (what instanceof Happening.Lent lent) {
            return at(before, Status.LENT, lent.to());
        }
        if (what instanceof Happening.Returned returned) {
            return at(
                    before,
                    Status.ON_HAND,
                    Optional.ofNullable(returned.place()).orElse(""));
        }
        if (what instanceof Happening.Moved moved) {
            return at(before, Status.ON_HAND, moved.place());
        }
        if (what instanceof Happening.Broken) {
            return at(before, Status.BROKEN, before.place());
        }
        if (what instanceof Happening.Scrapped) {
            return at(before, Status.SCRAPPED, before.place());
        }
        return before;
    }

    private static Standing at(Standing before, Status status, String place) {
        return new Standing(status, place, before.uses(), before.condition(), before.last());
    }

    private static Standing used(Standing before, Uses uses) {
        return new Standing(before.status(), before.place(), uses, before.condition(), before.last());
    }

    private static Standing conditioned(Standing before, Standing.Condition condition) {
        return new Standing(before.status(), before.place(), before.uses(), condition, before.last());
    }

    /** What a grind has left, its wear land too, is not known before it is measured; nor is the verdict. */
    private static Standing.Condition ground(Standing.Condition old) {
        return new Standing.Condition(
                new Happening.Sizes(null, null, null, null), null, old.coatingLost(), old.calibrationDue());
    }

    private static Standing.Condition judged(Standing.Condition old, boolean passed) {
        return new Standing.Condition(old.sizes(), passed, old.coatingLost(), old.calibrationDue());
    }

    private static Standing.Condition measured(Standing.Condition old, Happening.Sizes now) {
        Happening.Sizes was = old.sizes();
        Happening.Sizes sizes = new Happening.Sizes(
                newer(now.wearLand(), was.wearLand()),
                newer(now.pitchDiameter(), was.pitchDiameter()),
                newer(now.threadLength(), was.threadLength()),
                newer(now.landWidth(), was.landWidth()));
        return new Standing.Condition(sizes, old.passed(), old.coatingLost(), old.calibrationDue());
    }

    private static @Nullable Length newer(@Nullable Length now, @Nullable Length was) {
        return now != null ? now : was;
    }
}
