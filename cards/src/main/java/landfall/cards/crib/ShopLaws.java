// SPDX-License-Identifier: Apache-2.0
package landfall.cards.crib;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import landfall.fault.Answer;
import landfall.material.Materials;
import landfall.material.WorkMaterial;
import landfall.tap.FluteKind;
import landfall.thread.ScrewThread;
import landfall.wear.Due;
import landfall.wear.Job;
import landfall.wear.Prior;
import landfall.wear.Run;
import landfall.wear.Runs;
import landfall.wear.Survival;
import landfall.wear.WearLaw;
import landfall.working.Worked;
import org.jspecify.annotations.Nullable;

/**
 * The wear laws of a shop, one for each thread, kind of tap and material, from the histories of all its taps. What
 * material a tap works in is that of its run, or of its last run with holes.
 */
public final class ShopLaws {
    private final Map<Key, WearLaw> laws = new HashMap<>();
    private final Map<String, List<Run>> runs = new HashMap<>();

    private record Key(ScrewThread thread, FluteKind flutes, String material) {}

    /**
     * What is known of one tap that is in use.
     *
     * @param material that it works in
     */
    public record Found(TapOnRecord tap, WorkMaterial material, WearLaw law, Run run) {
        public Worked<Due> due() {
            return law.dueIn(run);
        }

        public Worked<Survival> survival(Job job) {
            return law.survival(run, job);
        }
    }

    private ShopLaws() {}

    public static ShopLaws of(List<TapOnRecord> taps) {
        ShopLaws shop = new ShopLaws();
        Map<Key, List<Run>> sorted = new HashMap<>();
        for (TapOnRecord tap : taps) {
            List<Run> own = Runs.of(tap.mark(), tap.history());
            shop.runs.put(tap.mark(), own);
            for (Run run : own) {
                if (!run.material().isEmpty()) {
                    Key key = new Key(tap.callOut().thread(), tap.flutes(), run.material());
                    sorted.computeIfAbsent(key, any -> new ArrayList<>()).add(run);
                }
            }
        }
        sorted.forEach((key, some) -> {
            WorkMaterial material = material(key.material);
            if (material != null) {
                shop.laws.put(key, WearLaw.of(some, Prior.practice(key.thread, material)));
            }
        });
        return shop;
    }

    /** Null for a tap that has ended, or of which no material is known. */
    public @Nullable Found find(TapOnRecord tap) {
        List<Run> own = runs.getOrDefault(tap.mark(), List.of());
        Run open = Runs.open(own);
        if (open == null) {
            return null;
        }
        for (int i = own.size() - 1; i >= 0; i--) {
            WorkMaterial material = material(own.get(i).material());
            if (material != null) {
                Key key = new Key(tap.callOut().thread(), tap.flutes(), material.id());
                return new Found(tap, material, law(key, material), open);
            }
        }
        return null;
    }

    /** Every tap that is in use and of which a material is known, the one that is due first at the head. */
    public List<Found> found(List<TapOnRecord> taps) {
        List<Found> found = new ArrayList<>();
        for (TapOnRecord tap : taps) {
            Found one = find(tap);
            if (one != null) {
                found.add(one);
            }
        }
        Map<String, Double> left = new HashMap<>();
        found.forEach(one -> left.put(one.tap.mark(), one.due().value().left().expected()));
        found.sort(Comparator.comparingDouble(one -> left.getOrDefault(one.tap.mark(), 0.0)));
        return found;
    }

    private WearLaw law(Key key, WorkMaterial material) {
        WearLaw law = laws.get(key);
        return law != null ? law : WearLaw.of(List.of(), Prior.practice(key.thread, material));
    }

    private static @Nullable WorkMaterial material(String id) {
        return !id.isEmpty() && Materials.find("material", id) instanceof Answer.Of<WorkMaterial> of
                ? of.value()
                : null;
    }
}
