// SPDX-License-Identifier: Apache-2.0
package landfall.cards.crib;

import java.util.Map;
import landfall.cards.form.Entries;
import landfall.cards.form.Field;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.history.EventKind;
import landfall.history.Happening;
import landfall.quantity.UnitSystem;
import org.jspecify.annotations.Nullable;

/** Events out of the fields that tell them. */
public final class Happenings {
    private Happenings() {}

    /** Judges every field at once. A bare length takes the system given. */
    public static Answer<Happening> read(EventKind kind, Map<String, String> typed, UnitSystem bare) {
        return EventForms.of(kind).judge(typed, bare).then(entries -> of(kind, entries));
    }

    private static Answer<Happening> of(EventKind kind, Entries entries) {
        if (kind == EventKind.MEASURED) {
            return measured(entries);
        }
        return Answer.of(
                switch (kind) {
                    case BOUGHT ->
                        new Happening.Bought(or(entries, EventForms.PRICE), or(entries, EventForms.SUPPLIER));
                    case ISSUED -> new Happening.Issued(entries.need(EventForms.TO));
                    case RETURNED -> new Happening.Returned(or(entries, EventForms.PLACE));
                    case TAPPED -> tapped(entries);
                    case MEASURED -> throw new IllegalStateException("is judged above");
                    case SHARPENED ->
                        new Happening.Sharpened(
                                entries.need(EventForms.WAY),
                                or(entries, EventForms.STOCK),
                                or(entries, EventForms.WHEEL),
                                or(entries, EventForms.DIAL));
                    case INSPECTED ->
                        new Happening.Inspected(entries.need(EventForms.PASSED), or(entries, EventForms.NOTE));
                    case MOVED -> new Happening.Moved(entries.need(EventForms.PLACE));
                    case LENT -> new Happening.Lent(entries.need(EventForms.TO));
                    case COATED ->
                        new Happening.Coated(entries.need(EventForms.COATED), or(entries, EventForms.COATING));
                    case CALIBRATED ->
                        new Happening.Calibrated(entries.need(EventForms.PASSED), entries.need(EventForms.DUE));
                    case BROKEN ->
                        new Happening.Broken(
                                or(entries, EventForms.WHEN),
                                entries.get(EventForms.PART_LOST).orElse(false));
                    case SCRAPPED -> new Happening.Scrapped(or(entries, EventForms.BECAUSE));
                    case CORRECTED ->
                        new Happening.Corrected(entries.need(EventForms.TAKES_BACK), entries.need(EventForms.BECAUSE));
                });
    }

    private static Happening tapped(Entries entries) {
        return new Happening.Tapped(
                new Happening.Holes(
                        entries.need(EventForms.HOLES),
                        entries.get(EventForms.ABOUT).orElse(false) || entries.has(EventForms.SINCE)),
                new Happening.Work(or(entries, EventForms.MATERIAL), or(entries, EventForms.DEPTH)),
                new Happening.Felt(
                        or(entries, EventForms.TORQUE), or(entries, EventForms.FEEL), or(entries, EventForms.TURNS)));
    }

    private static Answer<Happening> measured(Entries entries) {
        Happening.Sizes sizes = new Happening.Sizes(
                or(entries, EventForms.WEAR),
                or(entries, EventForms.PITCH),
                or(entries, EventForms.LENGTH),
                or(entries, EventForms.LAND));
        if (sizes.equals(new Happening.Sizes(null, null, null, null))) {
            return Answer.refused(new Finding(
                    "wear-land",
                    "",
                    "is needed, or another size: nothing was measured",
                    "give one of wear-land, pitch-diameter, thread-length and land-width"));
        }
        return Answer.of(new Happening.Measured(sizes));
    }

    private static <T> @Nullable T or(Entries entries, Field<T> field) {
        return entries.get(field).orElse(null);
    }
}
