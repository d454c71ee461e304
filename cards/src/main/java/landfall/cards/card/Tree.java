// SPDX-License-Identifier: Apache-2.0
package landfall.cards.card;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import landfall.cards.form.Field;
import landfall.cards.form.Form;
import org.jspecify.annotations.Nullable;

/**
 * The fields of a form as the tree that their paths make. A node is a field, a group of nodes by key, or both:
 * {@code limit} is a text or a group.
 */
final class Tree {
    private final Map<String, Tree> inside = new LinkedHashMap<>();
    private @Nullable Field<?> field;

    private Tree() {}

    static Tree of(Form form) {
        Tree root = new Tree();
        for (Field<?> field : form.fields()) {
            Tree node = root;
            for (String key : field.path().split("\\.")) {
                node = node.inside.computeIfAbsent(key, missing -> new Tree());
            }
            node.field = field;
        }
        return root;
    }

    Map<String, Tree> inside() {
        return inside;
    }

    Optional<Field<?>> field() {
        return Optional.ofNullable(field);
    }

    /** Whether a card without this node is refused. */
    boolean isNeeded() {
        return field != null && inside.isEmpty()
                ? field.required()
                : inside.values().stream().anyMatch(Tree::isNeeded);
    }
}
