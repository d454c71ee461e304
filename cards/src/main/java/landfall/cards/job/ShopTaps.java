// SPDX-License-Identifier: Apache-2.0
package landfall.cards.job;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import landfall.cards.card.TapCard;
import landfall.cards.crib.ItemForms;
import landfall.cards.crib.ShopLaws;
import landfall.cards.crib.TapOnRecord;
import landfall.cards.form.Entries;
import landfall.choice.OnHand;
import landfall.cost.Sittings;
import landfall.fault.Answer;
import landfall.history.History;
import landfall.history.ItemKind;
import landfall.history.Standing;
import landfall.material.WorkMaterial;
import landfall.route.TapShelf;
import landfall.tap.FluteKind;
import landfall.thread.Hand;
import landfall.thread.ScrewThread;
import landfall.wear.Brief;
import landfall.wear.Prior;
import landfall.wear.WearLaw;
import org.jspecify.annotations.Nullable;

/** The taps of a crib for the engine. Cards tell spirals as they are; the engine counts by the thread's own hand. */
public final class ShopTaps implements TapShelf {
    private final List<OfCrib> taps;
    private final Function<ShopLaws.Key, WearLaw> laws;
    private final Map<String, Sittings.DueTap> setUps = new HashMap<>();

    /** A tap with what its card tells besides. */
    public record OfCrib(TapOnRecord tap, OnHand.Build build, Standing standing) {
        /** From a card as it is kept; empty where it names no thread that can be read. */
        public static Optional<OfCrib> of(String mark, String set, Map<String, String> card, History history) {
            Answer<Entries> judged = ItemForms.of(ItemKind.TAP).judge(card, ItemForms.bare(card));
            if (!(judged instanceof Answer.Of<Entries> good)) {
                return Optional.empty();
            }
            return TapOnRecord.of(mark, card, history).map(tap -> {
                TapCard.Partly partly = TapCard.partly(good.value());
                return new OfCrib(
                        tap,
                        new OnHand.Build(
                                ofOwnHand(partly.flutes(), tap.callOut().thread()),
                                partly.chamferThreads(),
                                partly.pitch(),
                                partly.body(),
                                set),
                        history.standing());
            });
        }
    }

    /** @param laws that the runs of the shop have taught */
    public ShopTaps(List<OfCrib> taps, Function<ShopLaws.Key, WearLaw> laws) {
        this.taps = List.copyOf(taps);
        this.laws = laws;
        for (OfCrib one : taps) {
            Sittings.DueTap setUp = one.tap.setUp();
            if (setUp != null) {
                setUps.put(one.tap.mark(), setUp);
            }
        }
    }

    /** A spiral of the thread's own hand is right-hand to the engine, whatever the hand; the same back again. */
    private static FluteKind ofOwnHand(FluteKind kind, ScrewThread thread) {
        if (thread.hand() == Hand.RIGHT || !kind.isSpiral()) {
            return kind;
        }
        return kind == FluteKind.SPIRAL_RIGHT ? FluteKind.SPIRAL_LEFT : FluteKind.SPIRAL_RIGHT;
    }

    @Override
    public List<OnHand> taps(WorkMaterial material) {
        List<OnHand> all = new ArrayList<>();
        for (OfCrib one : taps) {
            TapOnRecord tap = one.tap;
            Brief run = tap.use().open();
            OnHand.Wearing wearing =
                    run == null ? null : new OnHand.Wearing(law(tap.size(), tap.flutes(), material), run);
            all.add(new OnHand(tap.mark(), tap.callOut(), one.build, one.standing, wearing));
        }
        return all;
    }

    @Override
    public WearLaw law(ScrewThread thread, FluteKind flutes, WorkMaterial material) {
        FluteKind kind = ofOwnHand(flutes, thread);
        return taps.stream()
                .map(one -> one.tap)
                .filter(tap -> tap.callOut().thread().equals(thread))
                .findFirst()
                .map(tap -> law(tap.size(), kind, material))
                .orElseGet(() -> WearLaw.of(List.of(), Prior.practice(thread, material)));
    }

    private WearLaw law(String size, FluteKind flutes, WorkMaterial material) {
        return laws.apply(new ShopLaws.Key(size, flutes, material.id()));
    }

    @Override
    public Sittings.@Nullable DueTap setUp(String mark) {
        return setUps.get(mark);
    }
}
