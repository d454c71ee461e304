// SPDX-License-Identifier: Apache-2.0
package landfall.cards.crib;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import landfall.cards.card.TapCard;
import landfall.cards.card.TapFields;
import landfall.cards.form.Entries;
import landfall.cards.form.Form;
import landfall.cost.Sittings;
import landfall.fault.Answer;
import landfall.history.History;
import landfall.quantity.UnitSystem;
import landfall.tap.FluteKind;
import landfall.tap.Tap;
import landfall.thread.CallOut;
import landfall.wear.Brief;
import landfall.wear.Briefs;
import org.jspecify.annotations.Nullable;

/**
 * A tap of the crib and what it does now.
 *
 * @param size its call-out without class
 * @param card as it is kept
 */
public record TapOnRecord(String mark, String size, Map<String, String> card, InUse use) {
    private static final Form FLUTES = Form.of("tap-card", TapFields.KIND);

    /**
     * What it does now.
     *
     * @param open the run that goes on; null for a tap that has ended
     * @param material of that run, or of its last run of which one was told; empty where none was
     */
    public record InUse(@Nullable Brief open, String material) {
        /** From all runs of a tap in their order. */
        public static InUse of(List<Brief> runs) {
            String material = "";
            for (Brief run : runs) {
                material = run.material().isEmpty() ? material : run.material();
            }
            Brief last = runs.isEmpty() ? null : runs.get(runs.size() - 1);
            return new InUse(last != null && last.isOpen() ? last : null, material);
        }
    }

    public TapOnRecord {
        card = Map.copyOf(card);
    }

    /** From a card as it is kept; empty where it names no thread that can be read. */
    public static Optional<TapOnRecord> of(String mark, Map<String, String> card, History history) {
        return of(mark, card, InUse.of(Briefs.of(mark, history).all()));
    }

    public static Optional<TapOnRecord> of(String mark, Map<String, String> card, InUse use) {
        return ItemForms.thread(card)
                .map(callOut -> new TapOnRecord(mark, callOut.withoutClass().normal(), card, use));
    }

    public CallOut callOut() {
        return ItemForms.thread(card).orElseThrow();
    }

    public FluteKind flutes() {
        return flutes(card);
    }

    /** Straight where the card does not say. */
    public static FluteKind flutes(Map<String, String> card) {
        String path = TapFields.KIND.path();
        Answer<Entries> judged = FLUTES.judge(Map.of(path, card.getOrDefault(path, "")), UnitSystem.METRIC);
        return judged instanceof Answer.Of<Entries> of
                ? of.value().get(TapFields.KIND).orElse(FluteKind.STRAIGHT)
                : FluteKind.STRAIGHT;
    }

    /** Cam and swivel that sharpen it; null where its card is not whole enough for a set-up. */
    public Sittings.@Nullable DueTap setUp() {
        Answer<Tap> whole = TapCard.FORM.judge(card, ItemForms.bare(card)).then(TapCard::tap);
        if (!(whole instanceof Answer.Of<Tap> of) || of.value().flutes().kind() == FluteKind.FORMING) {
            return null;
        }
        Tap tap = of.value();
        Sittings.Cam cam = new Sittings.Cam(tap.flutes().count(), tap.thread().hand());
        return new Sittings.DueTap(mark, cam, tap.chamfer().angle());
    }
}
