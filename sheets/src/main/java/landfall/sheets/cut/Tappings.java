// SPDX-License-Identifier: Apache-2.0
package landfall.sheets.cut;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import landfall.cards.ask.CutAsk;
import landfall.cards.ask.HoleAsk;
import landfall.cut.CutForecast;
import landfall.fault.Answer;
import landfall.fault.OutOfRange;
import landfall.hole.HoleChoice;
import landfall.tap.Tap;
import landfall.working.Worked;
import org.jspecify.annotations.Nullable;

/** Puts tap, cut and hole together from what was typed for the question {@code cut}. */
public final class Tappings {
    private static final CutAsk CUT = new CutAsk();
    private static final HoleAsk HOLE = new HoleAsk();

    private Tappings() {}

    public static Answer<Tapping> of(Map<String, String> typed) {
        return CUT.tap(typed).then(tap -> CUT.forecast(typed).map(cut -> of(tap, cut, typed)));
    }

    private static Tapping of(Tap tap, Worked<CutForecast> cut, Map<String, String> typed) {
        return new Tapping(tap, cut.value(), hole(tap, typed));
    }

    /**
     * The depths asked for the same thread with this tap: by the drill that is as large as the hole, else by the one
     * that the usual drawers give. A thread that the question of the hole refuses has none: a taper pipe thread.
     */
    private static @Nullable HoleChoice hole(Tap tap, Map<String, String> typed) {
        Map<String, String> asked = new LinkedHashMap<>();
        for (String path : List.of("thread", "depth", "blind", "through", "units")) {
            if (typed.containsKey(path)) {
                asked.put(path, typed.get(path));
            }
        }
        asked.put("material", typed.getOrDefault("cuts", ""));
        asked.put("chamfer-threads", String.valueOf(tap.chamfer().threads()));
        asked.put("tap", tap.flutes().kind().code());
        Map<String, String> ofThisDrill = new LinkedHashMap<>(asked);
        ofThisDrill.put("drills", typed.getOrDefault("hole", ""));
        for (Map<String, String> ask : List.of(ofThisDrill, asked)) {
            try {
                if (HOLE.choice(ask) instanceof Answer.Of<Worked<HoleChoice>> of) {
                    return of.value().value();
                }
            } catch (OutOfRange e) {
                // said again below by the next ask, or by the lack of depths
                continue;
            }
        }
        return null;
    }
}
