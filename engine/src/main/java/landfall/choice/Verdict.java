// SPDX-License-Identifier: Apache-2.0
package landfall.choice;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What is found of one tap, as it is found. */
final class Verdict {
    static final int FAIR = 15;
    static final int SLIGHT = 5;

    private final List<Unfit> unfit = new ArrayList<>();
    private final List<String> reasons = new ArrayList<>();
    private final List<String> cautions = new ArrayList<>();
    private int points;

    void no(Unfit.Why why, String says) {
        unfit.add(new Unfit(why, says));
    }

    void points(int more) {
        points += more;
    }

    void reason(String says) {
        reasons.add(says);
    }

    void caution(String says) {
        cautions.add(says);
    }

    void forIt(int weight, String says) {
        points += weight;
        reasons.add(says);
    }

    void against(int weight, String says) {
        points -= weight;
        cautions.add(says);
    }

    Ranked on(OnHand tap, Ranked.@Nullable Worn wear) {
        return new Ranked(tap, points, unfit, new Ranked.Words(reasons, cautions), wear);
    }
}
