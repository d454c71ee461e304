// SPDX-License-Identifier: Apache-2.0
package landfall.symptom;

import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import landfall.chip.ChipFlow;
import landfall.cut.CutForecast;
import landfall.cut.CutWish;
import landfall.cut.CutWish.How;
import landfall.cut.CutWish.Opening;
import landfall.cut.Driven;
import landfall.fault.Answer;
import landfall.material.WorkMaterial;
import landfall.quantity.Band;
import landfall.quantity.Length;
import landfall.tap.FluteKind;
import landfall.tap.Tap;
import landfall.working.Pen;
import landfall.working.Worked;
import org.jspecify.annotations.Nullable;

/** What the forecast of this tap in this hole says; there is one when tap, material and depth are known. */
public record CutFacts(CutForecast cut) {
    private static final double THIN_MARGIN = 2;

    /**
     * {@code hole}: what the call-out says of it. Null when something is missing; refused where nothing is forecast.
     */
    static @Nullable Answer<Worked<CutForecast>> forecast(Known known, Optional<HoleFacts> hole) {
        Tap tap = known.tap();
        WorkMaterial material = known.material();
        Length depth = known.job().depth();
        Length diameter = known.job().hole() != null
                ? known.job().hole()
                : hole.map(HoleFacts::expected).orElse(null);
        if (tap == null || material == null || depth == null || diameter == null) {
            return null;
        }
        How blind = new How(null, Opening.BLIND, Driven.UNTOLD, How.USUAL.holding(), How.USUAL.evenness());
        return CutForecast.of(
                tap, new CutWish(material, diameter, depth, known.job().wear(), blind));
    }

    static CutFacts of(Worked<CutForecast> forecast, Pen pen) {
        if (pen != Pen.NONE) {
            forecast.steps().forEach(step -> pen.write(step.rule(), step.value()));
        }
        return new CutFacts(forecast.value());
    }

    void tell(Tap tap, Map<String, Fact> facts) {
        Band torque = cut.load().torque().full();
        double margin = cut.load().margin().low();
        String load = "Torque about %.1f N·m, up to %.1f; %s may break from %.1f: %.1f times."
                .formatted(
                        torque.expected(),
                        torque.high(),
                        "the " + cut.load().strength().governing().part().words(),
                        cut.load().strength().breaking().low(),
                        margin);
        facts.put("margin", margin < THIN_MARGIN ? Fact.up(load) : Fact.down(load));
        facts.put(
                "bar",
                Fact.plain("Fingers are safe on a bar to "
                        + cut.load().hand().safe().words()
                        + "; two firm hands can break this tap from "
                        + cut.load().hand().breaks().words() + "."));
        facts.put(
                "speed",
                Fact.plain("For this tap, depth and material %.0f to %.0f m/min; %.0f rev/min is the middle."
                        .formatted(
                                cut.pace().speed().low(),
                                cut.pace().speed().high(),
                                cut.pace().spindle().revPerMin())));
        facts.put(
                "overrun",
                Fact.plain("A spindle that is not held to the feed may run on "
                        + Objects.requireNonNull(cut.pace().overrun()).words() + "."));
        if (cut.chips().flow() == ChipFlow.STAYS && tap.flutes().kind() != FluteKind.FORMING) {
            chips(facts);
        }
    }

    private void chips(Map<String, Fact> facts) {
        Band clear = cut.chips().room().clearAfter();
        double depth = cut.wish().depth().mm();
        String said = String.format(
                Locale.ROOT,
                "Straight flutes keep their chips: full after %.1f to %.1f mm, and this thread is %.1f mm deep.",
                clear.low(),
                clear.high(),
                depth);
        facts.put("chips-pack", depth > clear.low() ? Fact.up(said) : Fact.down(said));
    }
}
