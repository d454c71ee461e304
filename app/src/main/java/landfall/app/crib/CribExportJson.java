// SPDX-License-Identifier: Apache-2.0
package landfall.app.crib;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.Writer;
import java.util.List;
import java.util.Optional;
import landfall.store.Store;
import landfall.store.crib.Crib;
import landfall.store.crib.Row;
import landfall.store.crib.Wanted;
import landfall.store.crib.Window;

/** A whole crib as one JSON document: each thing as {@code crib show} tells it. */
public final class CribExportJson {
    private CribExportJson() {}

    /** @return how many things were written */
    public static long write(Store store, Writer out) throws IOException {
        Crib crib = new Crib(store);
        List<Row> rows = crib.list(Wanted.all());
        try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
            json.writeStartObject();
            json.writeNumberField("landfall", 1);
            json.writeArrayFieldStart("things");
            for (Row row : rows) {
                json.writeRawValue(CribJson.kept(
                        crib.look(row.item().mark(), Window.newest(Integer.MAX_VALUE))
                                .orElseThrow(),
                        Optional.empty()));
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        return rows.size();
    }
}
