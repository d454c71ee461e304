// SPDX-License-Identifier: Apache-2.0
package landfall.cards.crib;

import java.util.Map;
import java.util.Optional;
import landfall.cards.card.TapCard;
import landfall.cards.card.TapFields;
import landfall.cards.form.Entries;
import landfall.cost.Sittings;
import landfall.fault.Answer;
import landfall.history.History;
import landfall.history.ItemKind;
import landfall.tap.FluteKind;
import landfall.tap.Tap;
import landfall.thread.CallOut;
import org.jspecify.annotations.Nullable;

/**
 * A tap of the crib with its history.
 *
 * @param flutes straight where the card does not say
 * @param setUp cam and swivel that sharpen it; null where its card does not tell them
 */
public record TapOnRecord(
        String mark, CallOut callOut, FluteKind flutes, Sittings.@Nullable DueTap setUp, History history) {
    /** From a card as it is kept; empty where it names no thread that can be read. */
    public static Optional<TapOnRecord> of(String mark, Map<String, String> card, History history) {
        Answer<Entries> judged = ItemForms.of(ItemKind.TAP).judge(card, ItemForms.bare(card));
        if (!(judged instanceof Answer.Of<Entries> good)) {
            return Optional.empty();
        }
        Entries entries = good.value();
        return entries.get(TapFields.THREAD)
                .map(callOut -> new TapOnRecord(
                        mark,
                        callOut,
                        entries.get(TapFields.KIND).orElse(FluteKind.STRAIGHT),
                        setUp(mark, card),
                        history));
    }

    /** A card that is not whole enough for a set-up has none. */
    private static Sittings.@Nullable DueTap setUp(String mark, Map<String, String> card) {
        Answer<Tap> whole = TapCard.FORM.judge(card, ItemForms.bare(card)).then(TapCard::tap);
        if (!(whole instanceof Answer.Of<Tap> of) || of.value().flutes().kind() == FluteKind.FORMING) {
            return null;
        }
        Tap tap = of.value();
        Sittings.Cam cam = new Sittings.Cam(tap.flutes().count(), tap.thread().hand());
        return new Sittings.DueTap(mark, cam, tap.chamfer().angle());
    }
}
