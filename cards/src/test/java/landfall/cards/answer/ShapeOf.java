// SPDX-License-Identifier: Apache-2.0
package landfall.cards.answer;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** The JSON schema that a set of answers holds to, taken from the answers themselves. */
final class ShapeOf {
    private ShapeOf() {}

    /** One schema for each noun. */
    static Map<String, Object> all(List<Document> documents) {
        Map<String, Object> shapes = new TreeMap<>();
        for (Document document : documents) {
            shapes.merge(document.noun(), document(document), ShapeOf::both);
        }
        return shapes;
    }

    private static Map<String, Object> document(Document document) {
        Map<String, Object> shape = object(document.items());
        Map<String, Object> properties = map(shape.get("properties"));
        properties.put("working", list(AnswerShapes.ref("step")));
        properties.put("cautions", list(AnswerShapes.ref("caution")));
        List<Object> required = new ArrayList<>(list(shape.get("required")));
        required.addAll(List.of("working", "cautions"));
        shape.put("required", required);
        return shape;
    }

    private static Map<String, Object> object(List<Item> items) {
        Map<String, Object> properties = new LinkedHashMap<>();
        items.forEach(item -> properties.put(item.key(), of(item)));
        Map<String, Object> shape = new LinkedHashMap<>();
        shape.put("type", "object");
        shape.put("properties", properties);
        shape.put("required", new ArrayList<Object>(properties.keySet()));
        shape.put("additionalProperties", false);
        return shape;
    }

    private static Map<String, Object> of(Item item) {
        if (item instanceof Item.Figure) {
            return AnswerShapes.ref("figure");
        } else if (item instanceof Item.Range) {
            return AnswerShapes.ref("range");
        } else if (item instanceof Item.BandFigure) {
            return AnswerShapes.ref("band");
        } else if (item instanceof Item.FittedFigure) {
            return AnswerShapes.ref("fitted");
        } else if (item instanceof Item.Text) {
            return Map.of("type", "string");
        } else if (item instanceof Item.Flag) {
            return Map.of("type", "boolean");
        } else if (item instanceof Item.Count) {
            return Map.of("type", "integer");
        } else if (item instanceof Item.Group group) {
            return object(group.items());
        } else if (item instanceof Item.Rows rows) {
            Map<String, Object> row = rows.rows().stream()
                    .map(one -> object(one.items()))
                    .reduce(ShapeOf::both)
                    .orElse(Map.of());
            return list(row);
        }
        return list(Map.of("type", "string"));
    }

    private static Map<String, Object> list(Map<String, Object> items) {
        Map<String, Object> shape = new LinkedHashMap<>();
        shape.put("type", "array");
        if (!items.isEmpty()) {
            shape.put("items", items);
        }
        return shape;
    }

    /** What both hold to; a key that one of them lacks is no longer required. */
    private static Map<String, Object> both(Object one, Object other) {
        Map<String, Object> a = map(one);
        Map<String, Object> b = map(other);
        if (a.equals(b)) {
            return a;
        }
        if ("object".equals(a.get("type")) && "object".equals(b.get("type"))) {
            return objects(a, b);
        }
        if ("array".equals(a.get("type")) && "array".equals(b.get("type"))) {
            Object items = a.get("items");
            Object others = b.get("items");
            return list(
                    items == null
                            ? map(others == null ? Map.of() : others)
                            : others == null ? map(items) : both(items, others));
        }
        return either(a, b);
    }

    private static Map<String, Object> objects(Map<String, Object> a, Map<String, Object> b) {
        Map<String, Object> properties = new LinkedHashMap<>(map(a.get("properties")));
        map(b.get("properties")).forEach((key, shape) -> properties.merge(key, shape, ShapeOf::both));
        List<Object> required = new ArrayList<>(list(a.get("required")));
        required.retainAll(list(b.get("required")));
        Map<String, Object> shape = new LinkedHashMap<>(a);
        shape.put("properties", properties);
        shape.put("required", required);
        return shape;
    }

    private static Map<String, Object> either(Map<String, Object> a, Map<String, Object> b) {
        Set<Object> shapes = new LinkedHashSet<>(a.containsKey("anyOf") ? list(a.get("anyOf")) : List.of(a));
        shapes.addAll(b.containsKey("anyOf") ? list(b.get("anyOf")) : List.of(b));
        return Map.of("anyOf", List.copyOf(shapes));
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> map(Object value) {
        return (Map<String, Object>) value;
    }

    @SuppressWarnings("unchecked")
    private static List<Object> list(Object value) {
        return (List<Object>) value;
    }
}
