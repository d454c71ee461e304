// SPDX-License-Identifier: Apache-2.0
package landfall.cards.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import landfall.cards.crib.ItemForms;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.history.Happening;
import landfall.history.History;
import landfall.history.Standing;
import landfall.history.Status;
import landfall.route.GaugeOnHand;
import landfall.thread.CallOut;
import landfall.thread.callout.CallOuts;
import org.jspecify.annotations.Nullable;

/** The thread plugs of a shop, from the crib and from the shop's card. */
public final class ShopGauges {
    private static final String KINDS = "(?i)\\b(not[ -]go|no[ -]?go|go|thread|plug|gauges?|gages?)\\b|/(?=\\s)";

    private ShopGauges() {}

    /** One of the crib; empty for a ring and for a gauge without a thread. */
    public static Optional<GaugeOnHand> of(String mark, Map<String, String> card, History history) {
        String words = card.getOrDefault("gauge", "");
        Standing standing = history.standing();
        return isRing(words)
                ? Optional.empty()
                : ItemForms.thread(card)
                        .map(callOut -> new GaugeOnHand(
                                mark,
                                callOut,
                                ends(words),
                                standing.status(),
                                new GaugeOnHand.Calibration(standing.condition().calibrationDue(), passed(history))));
    }

    private static boolean isRing(String words) {
        return words.toLowerCase(Locale.ROOT).contains("ring");
    }

    /** The verdict of the last calibration that holds. */
    private static @Nullable Boolean passed(History history) {
        Boolean passed = null;
        for (var event : history.holding()) {
            if (event.what() instanceof Happening.Calibrated calibrated) {
                passed = calibrated.passed();
            }
        }
        return passed;
    }

    private static GaugeOnHand.Ends ends(String words) {
        String plain = words.toLowerCase(Locale.ROOT).replace('-', ' ');
        boolean notGo = plain.contains("not go") || plain.contains("no go") || plain.contains("nogo");
        boolean go = plain.replaceAll("not? ?go", "").matches(".*\\bgo\\b.*");
        if (go == notGo) {
            return GaugeOnHand.Ends.BOTH;
        }
        return go ? GaugeOnHand.Ends.GO : GaugeOnHand.Ends.NOT_GO;
    }

    /** Those of a shop's card, {@code M8x1.25-6H plug}; one that is no gauge of a thread is refused. */
    static Answer<List<GaugeOnHand>> of(List<String> named) {
        List<GaugeOnHand> gauges = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        for (String name : named) {
            if (isRing(name)) {
                continue;
            }
            Answer<CallOut> callOut = CallOuts.read(
                    name.replaceAll(KINDS, " ").replaceAll("\\s+", " ").strip());
            if (callOut instanceof Answer.Of<CallOut> of) {
                gauges.add(
                        new GaugeOnHand(name, of.value(), ends(name), Status.ON_HAND, GaugeOnHand.Calibration.UNKNOWN));
            } else {
                findings.add(new Finding(
                        "gauges", name, "is no gauge of a thread", "write its call-out and plug: M8x1.25-6H plug"));
            }
        }
        return findings.isEmpty() ? Answer.of(gauges) : Answer.refused(findings);
    }
}
