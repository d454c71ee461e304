// SPDX-License-Identifier: Apache-2.0
package landfall.cards.form;

import java.util.Map;
import java.util.Optional;

/** What a person gave, judged field by field. */
public final class Entries {
    private final Map<String, Object> values;
    private final Map<String, String> typed;

    Entries(Map<String, Object> values, Map<String, String> typed) {
        this.values = values;
        this.typed = typed;
    }

    @SuppressWarnings("unchecked")
    public <T> Optional<T> get(Field<T> field) {
        return Optional.ofNullable((T) values.get(field.path()));
    }

    /** The value of a required field. */
    public <T> T need(Field<T> field) {
        return get(field).orElseThrow(() -> new IllegalStateException("not a required field: " + field.path()));
    }

    public boolean has(Field<?> field) {
        return values.containsKey(field.path());
    }

    /** The text as it was typed; empty when the field was left out. */
    public String typed(Field<?> field) {
        return typed.getOrDefault(field.path(), "");
    }
}
