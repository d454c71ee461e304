// SPDX-License-Identifier: Apache-2.0
package landfall.thread.whitworth;

import java.util.Locale;
import landfall.thread.Side;
import landfall.working.Rule;

/** Classes of BSW and BSF. Medium is a class of screws and of holes; the others belong to one side. */
public enum WhitworthClass {
    CLOSE(2.0 / 3, "2/3", true, false),
    MEDIUM(1, "1", true, true),
    FREE(1.5, "3/2", true, false),
    NORMAL(1.5, "3/2", false, true);

    private final double share;
    private final boolean outside;
    private final boolean inside;
    private final Rule outsideRule;
    private final Rule insideRule;

    WhitworthClass(double share, String shareText, boolean outside, boolean inside) {
        this.share = share;
        this.outside = outside;
        this.inside = inside;
        this.outsideRule = WhitworthRules.classTolerance("Te", shareText, code() + " outside");
        this.insideRule = WhitworthRules.classTolerance("Ti", shareText, code() + " inside");
    }

    public final String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    public boolean isFor(Side side) {
        return side == Side.EXTERNAL ? outside : inside;
    }

    double share() {
        return share;
    }

    Rule rule(Side side) {
        return side == Side.EXTERNAL ? outsideRule : insideRule;
    }
}
