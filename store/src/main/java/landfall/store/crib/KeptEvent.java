// SPDX-License-Identifier: Apache-2.0
package landfall.store.crib;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import landfall.history.Event;

/** An event with the texts that told it. */
public record KeptEvent(Event event, Map<String, String> fields) {
    public KeptEvent {
        fields = Collections.unmodifiableMap(new LinkedHashMap<>(fields));
    }
}
