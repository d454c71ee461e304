// SPDX-License-Identifier: Apache-2.0
package landfall.route;

import java.util.List;
import landfall.choice.OnHand;
import landfall.cost.Sittings;
import landfall.material.WorkMaterial;
import landfall.tap.FluteKind;
import landfall.thread.ScrewThread;
import landfall.wear.Prior;
import landfall.wear.WearLaw;
import org.jspecify.annotations.Nullable;

/** The taps of a shop, and what their records teach. */
public interface TapShelf {
    /** Every tap on record, worn as it is in that material. */
    List<OnHand> taps(WorkMaterial material);

    /** The law of taps of that thread and kind in that material; of practice alone where nothing is on record. */
    WearLaw law(ScrewThread thread, FluteKind flutes, WorkMaterial material);

    /** Cam and swivel that sharpen a tap; null where its card does not tell them. */
    Sittings.@Nullable DueTap setUp(String mark);

    /** A shop without a tap on record. */
    TapShelf BARE = new TapShelf() {
        @Override
        public List<OnHand> taps(WorkMaterial material) {
            return List.of();
        }

        @Override
        public WearLaw law(ScrewThread thread, FluteKind flutes, WorkMaterial material) {
            return WearLaw.of(List.of(), Prior.practice(thread, material));
        }

        @Override
        public Sittings.@Nullable DueTap setUp(String mark) {
            return null;
        }
    };
}
