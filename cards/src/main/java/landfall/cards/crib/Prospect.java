// SPDX-License-Identifier: Apache-2.0
package landfall.cards.crib;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import landfall.cards.card.TapCard;
import landfall.cards.form.Entries;
import landfall.fault.Answer;
import landfall.fault.Caution;
import landfall.fault.OutOfRange;
import landfall.feedback.GoByTurns;
import landfall.history.History;
import landfall.quantity.UnitSystem;
import landfall.tap.Tap;
import landfall.wear.Job;
import landfall.wear.Run;
import landfall.wear.Runs;
import landfall.wear.Survival;
import landfall.wear.WearCurve;
import landfall.working.Worked;
import org.jspecify.annotations.Nullable;

/**
 * What the records teach of one tap: its wear, its next job, what its holes cost, what measurements did to forecasts.
 *
 * @param job null where none was asked about
 * @param costs null where prices or card do not tell them
 * @param torques null where no torque is on record, or the card does not give a forecast
 * @param wanting what is not known and how to tell it
 */
public record Prospect(
        ShopLaws.Found found,
        Worked<WearCurve> curve,
        @Nullable Ahead job,
        @Nullable Costs costs,
        Measured measured,
        List<String> wanting,
        List<Caution> cautions) {
    /** A job and what may become of the tap in it. */
    public record Ahead(Job job, Worked<Survival> survival) {}

    /**
     * What was measured in the shop's own holes.
     *
     * @param go from first holes gauged
     */
    public record Measured(Worked<GoByTurns> go, @Nullable Torques torques) {}

    public Prospect {
        wanting = List.copyOf(wanting);
        cautions = List.copyOf(cautions);
    }

    /**
     * @param history of the tap, whole
     * @param typed fields of {@link ProspectForm}; bare lengths are of the tap's own system
     */
    public static Answer<Prospect> of(ShopLaws.Found found, History history, Map<String, String> typed) {
        UnitSystem bare = ItemForms.bare(found.tap().card());
        return ProspectForm.FORM.judge(typed, bare).then(entries -> {
            try {
                return Answer.of(made(found, history, entries));
            } catch (OutOfRange e) {
                return Answer.refused(e.finding());
            }
        });
    }

    private static Prospect made(ShopLaws.Found found, History history, Entries entries) {
        Map<String, String> card = found.tap().card();
        List<Run> own = Runs.of(found.tap().mark(), history);
        List<String> wanting = new ArrayList<>();
        List<Caution> cautions = new ArrayList<>(found.law().cautions());
        Tap tap = TapCard.FORM.judge(card, ItemForms.bare(card)).then(TapCard::tap) instanceof Answer.Of<Tap> of
                ? of.value()
                : null;
        Costs costs = Costs.of(new Costs.Kept(found, history, tap), entries, wanting, cautions);
        Ahead ahead = entries.get(ProspectForm.HOLES)
                .map(holes -> new Job(holes, entries.get(ProspectForm.DEPTH).orElse(null)))
                .map(job -> new Ahead(job, found.survival(job)))
                .orElse(null);
        Worked<GoByTurns> go = GoByTurns.of(own, found.tap().callOut().thread().pitch());
        cautions.addAll(go.value().cautions());
        Torques torques = Torques.of(found, own, tap, wanting);
        if (torques != null) {
            cautions.addAll(torques.learned().value().cautions());
            cautions.add(Torques.HOLE_TAKEN);
        }
        return new Prospect(
                found,
                found.law().curve(Objects.requireNonNull(Runs.open(own))),
                ahead,
                costs,
                new Measured(go, torques),
                wanting,
                cautions.stream().distinct().toList());
    }
}
