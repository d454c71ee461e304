// SPDX-License-Identifier: Apache-2.0
package landfall.store.backup;

import com.fasterxml.jackson.databind.JsonNode;

/** Takes the lines of a backup as they come. */
interface Lines {
    void thing(String line, JsonNode node);

    void event(String line, JsonNode node);

    void job(String line, JsonNode node);

    /** Which event belongs to which line of a job. */
    void done(String line, JsonNode node);

    void person(String line, JsonNode node);

    /** Head and tail. */
    void other(JsonNode node);
}
