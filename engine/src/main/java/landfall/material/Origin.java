// SPDX-License-Identifier: Apache-2.0
package landfall.material;

import java.util.Arrays;
import landfall.working.Source;
import landfall.working.Trust;

/** Where the figures of the list come from. A document whose publisher is not recorded is a handbook at most. */
enum Origin {
    TURNING_CATALOGUE(Source.of("turning-catalogue-2017", ""), Trust.HANDBOOK),
    CHUCK_MAKER(Source.of("chuck-maker-manual", ""), Trust.HANDBOOK),
    SPEEDS_HSS(Source.of("tap-dealer-speeds-hss", ""), Trust.HANDBOOK),
    SPEEDS_US(Source.of("tap-dealer-speeds-us", ""), Trust.HANDBOOK),
    PROPERTIES_GB(Source.of("metal-property-table-gb", ""), Trust.HANDBOOK),
    PROPERTIES_SAE(Source.of("metal-property-table-sae", ""), Trust.HANDBOOK),
    HANDBOOK(Source.of("machinerys-handbook-31", ""), Trust.HANDBOOK),
    MEMORY(Source.of("memory", ""), Trust.ESTIMATE),
    PRACTICE(Source.of("common-practice", ""), Trust.PRACTICE);

    private final Source source;
    private final Trust trust;

    Origin(Source source, Trust trust) {
        this.source = source;
        this.trust = trust;
    }

    /** A value with its mark, written {@code key} or {@code key, place}. */
    static <T> Marked<T> mark(T value, String written) {
        int comma = written.indexOf(',');
        String key = comma < 0 ? written : written.substring(0, comma);
        String where = comma < 0 ? "" : written.substring(comma + 1).strip();
        Origin origin = Arrays.stream(values())
                .filter(known -> known.source.key().equals(key.strip()))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no such origin: " + written));
        return new Marked<>(value, origin.source.at(where), origin.trust);
    }
}
