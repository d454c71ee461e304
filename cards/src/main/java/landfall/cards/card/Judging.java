// SPDX-License-Identifier: Apache-2.0
package landfall.cards.card;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.fault.OutOfRange;
import org.jspecify.annotations.Nullable;

/** Goes on past the first bad part of a card, so that all of them are found at once. */
final class Judging {
    private final List<Finding> findings = new ArrayList<>();

    /** The part, or null with its finding kept. */
    <T> @Nullable T part(Supplier<T> maker) {
        try {
            return maker.get();
        } catch (OutOfRange e) {
            findings.add(e.finding());
            return null;
        }
    }

    void found(String field, String given, String why, String mend) {
        findings.add(new Finding(field, given, why, mend));
    }

    boolean isClean() {
        return findings.isEmpty();
    }

    /** The whole, when no part was found bad. */
    <T> Answer<T> whole(Supplier<T> maker) {
        T whole = isClean() ? part(maker) : null;
        return whole == null ? Answer.refused(findings) : Answer.of(whole);
    }
}
