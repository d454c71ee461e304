// SPDX-License-Identifier: Apache-2.0
package landfall.cards.crib;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import landfall.fault.Answer;
import landfall.material.Materials;
import landfall.material.WorkMaterial;
import landfall.tap.FluteKind;
import landfall.thread.ScrewThread;
import landfall.wear.Brief;
import landfall.wear.Due;
import landfall.wear.Job;
import landfall.wear.Prior;
import landfall.wear.Survival;
import landfall.wear.WearLaw;
import landfall.working.Worked;
import org.jspecify.annotations.Nullable;

/**
 * The wear laws of a shop, one for each thread, kind of tap and material. What material a tap works in is that of its
 * run, or of its last run of which one was told.
 */
public final class ShopLaws {
    /** A tap that has used less than this of the life that nine in ten pass is not due. */
    private static final double SURELY_LATER = 0.4;

    /** Those past their limit before those that may be, then by the holes left. */
    private static final Comparator<Found> FIRST_DUE = Comparator.comparing(Found::when)
            .thenComparingDouble(found -> found.due().value().left().expected());

    private final Function<Key, WearLaw> laws;

    /**
     * What a law is of.
     *
     * @param size call-out without class
     * @param material its own name
     */
    public record Key(String size, FluteKind flutes, String material) {}

    /**
     * What is known of one tap that is in use.
     *
     * @param material that it works in
     * @param run that goes on
     */
    public record Found(TapOnRecord tap, WorkMaterial material, WearLaw law, Brief run, Worked<Due> due) {
        public Worked<Survival> survival(Job job) {
            return law.survival(run, job);
        }

        public Due.When when() {
            return due.value().when();
        }
    }

    private ShopLaws(Function<Key, WearLaw> laws) {
        this.laws = laws;
    }

    /** @param laws made by {@link #law}; asked again for every tap, so that whoever keeps them keeps them for all */
    public static ShopLaws of(Function<Key, WearLaw> laws) {
        return new ShopLaws(laws);
    }

    /** The law that these runs teach; all of them are of taps of the key, and mostly in its material. */
    public static WearLaw law(Key key, List<Brief> runs) {
        WorkMaterial material = material(key.material);
        if (material == null) {
            throw new IllegalArgumentException("no work material: " + key.material);
        }
        return WearLaw.ofBriefs(runs, Prior.practice(thread(key), material));
    }

    private static ScrewThread thread(Key key) {
        return ItemForms.thread(Map.of("thread", key.size)).orElseThrow().thread();
    }

    /** Null for a tap that has ended, or of which no material is known. */
    public @Nullable Found find(TapOnRecord tap) {
        Brief open = tap.use().open();
        WorkMaterial material = material(tap.use().material());
        if (open == null || material == null) {
            return null;
        }
        WearLaw law = laws.apply(new Key(tap.size(), tap.flutes(), material.id()));
        return new Found(tap, material, law, open, law.dueIn(open));
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
        found.sort(FIRST_DUE);
        return found;
    }

    /**
     * How much of the life that nine in ten pass it has used, where that is so much that it must be weighed; 0 else.
     * What is left out is not due: a run that is still short tells the law next to nothing, and that it lasted so far
     * only lengthens what it may last. Where wear was seen it is always weighed, and the share is without end.
     *
     * @param law of the material that it works in
     */
    public double usedMuch(Key law, Brief open) {
        double share = open.holes() > 0 ? laws.apply(law).usedShare(open) : 0;
        return share >= SURELY_LATER ? share : 0;
    }

    /** Whether it is due or may be. */
    public boolean isDue(Key law, Brief open) {
        return laws.apply(law).dueIn(open).value().when() != Due.When.LATER;
    }

    private static @Nullable WorkMaterial material(String id) {
        return !id.isEmpty() && Materials.find("material", id) instanceof Answer.Of<WorkMaterial> of
                ? of.value()
                : null;
    }
}
