// SPDX-License-Identifier: Apache-2.0
package landfall.store.backup;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import java.util.Optional;

/** Reads a backup without keeping anything, and says whether it is what its first and last lines tell. */
final class Looking implements Lines {
    private final Digesting digesting = new Digesting();
    private JsonNode tail = MissingNode.getInstance();
    private boolean headed;
    private boolean sound = true;

    @Override
    public void thing(String line, JsonNode node) {
        digesting.thing(line);
    }

    @Override
    public void event(String line, JsonNode node) {
        digesting.event(line);
    }

    @Override
    public void job(String line, JsonNode node) {
        digesting.job(line);
    }

    @Override
    public void done(String line, JsonNode node) {
        digesting.done(line);
    }

    @Override
    public void person(String line, JsonNode node) {
        digesting.person(line);
        sound &= Records.person(node).isPresent();
    }

    @Override
    public void other(JsonNode node) {
        int form = node.path("form").asInt();
        headed |= node.path("landfall").asText().equals("crib") && form >= 1 && form <= Records.FORM;
        tail = node;
    }

    /** What the backup holds; an older one names no jobs or people and has none. Empty where it is not whole. */
    Optional<Content> content() {
        Content content = digesting.content();
        boolean says = tail.path("record").asText().equals("tail")
                && tail.path("sha256").asText().equals(content.sha256())
                && tail.path("things").asLong() == content.things()
                && tail.path("events").asLong() == content.events()
                && tail.path("jobs").asLong() == content.jobs()
                && tail.path("people").asLong() == content.people();
        return headed && sound && says ? Optional.of(content) : Optional.empty();
    }
}
