// SPDX-License-Identifier: Apache-2.0
package landfall.cards.crib;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import landfall.fault.Answer;
import landfall.history.EventKind;
import landfall.history.Happening;
import landfall.quantity.UnitSystem;

/**
 * An event as it was told and as it is meant.
 *
 * @param fields as they are kept, each bare figure with its unit
 */
public record Told(Happening what, Map<String, String> fields) {
    public Told {
        fields = Collections.unmodifiableMap(new LinkedHashMap<>(fields));
    }

    /** Judges every field at once. */
    public static Answer<Told> read(EventKind kind, Map<String, String> typed, UnitSystem bare) {
        return Happenings.read(kind, typed, bare)
                .map(what -> new Told(what, Lasting.of(EventForms.of(kind), typed, bare)));
    }

    /** An event out of a store, where its fields were judged before. */
    public static Happening kept(EventKind kind, Map<String, String> fields) {
        return Happenings.read(kind, fields, UnitSystem.METRIC).orThrow();
    }
}
