// SPDX-License-Identifier: Apache-2.0
package landfall.store.crib;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import java.util.Optional;
import landfall.history.Event;
import landfall.history.Standing;

/** Things and events as programs are told them. */
public final class ThingJson {
    private static final ObjectMapper JSON = new ObjectMapper();

    private ThingJson() {}

    public static ObjectNode thing(Item item) {
        ObjectNode node = JSON.createObjectNode();
        node.put("mark", item.mark().text());
        node.put("kind", item.kind().word());
        if (!item.handSet().isEmpty()) {
            node.put("set", item.handSet());
        }
        node.set("card", nested(item.card()));
        return node;
    }

    /** Paths with dots become objects in objects, as in a card's file. */
    public static ObjectNode nested(Map<String, String> fields) {
        ObjectNode root = JSON.createObjectNode();
        fields.forEach((path, text) -> {
            ObjectNode at = root;
            String[] keys = path.split("\\.");
            for (int i = 0; i < keys.length - 1; i++) {
                at = at.get(keys[i]) instanceof ObjectNode inner ? inner : at.putObject(keys[i]);
            }
            at.put(keys[keys.length - 1], text);
        });
        return root;
    }

    public static ObjectNode event(KeptEvent kept, boolean takenBack) {
        Event event = kept.event();
        ObjectNode node = JSON.createObjectNode();
        node.put("seq", event.seq());
        node.put("at", event.at().toString());
        node.put("kind", event.kind().word());
        node.put("by", event.by());
        node.set("fields", nested(kept.fields()));
        if (takenBack) {
            node.put("takenBack", true);
        }
        return node;
    }

    /**
     * A thing as it stands, with its events.
     *
     * @param tickets by the number of the event, where they are told
     */
    public static ObjectNode whole(Glance kept, Map<Long, String> tickets) {
        ObjectNode answer = thing(kept.item());
        Standing standing = kept.standing();
        answer.put("state", standing.status().word());
        answer.put("place", standing.place());
        ObjectNode uses = answer.putObject("uses");
        uses.put("holes", standing.uses().holes());
        uses.put("sinceSharp", standing.uses().sinceSharp());
        uses.put("about", standing.uses().about());
        uses.put("sharpenings", standing.uses().sharpenings());
        ArrayNode events = answer.putArray("events");
        for (KeptEvent event : kept.events()) {
            ObjectNode node = event(event, kept.isTakenBack(event));
            Optional.ofNullable(tickets.get(event.event().seq())).ifPresent(ticket -> node.put("ticket", ticket));
            events.add(node);
        }
        return answer;
    }
}
