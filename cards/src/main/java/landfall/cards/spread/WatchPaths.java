// SPDX-License-Identifier: Apache-2.0
package landfall.cards.spread;

import java.util.ArrayList;
import java.util.List;
import landfall.cards.answer.Document;
import landfall.cards.answer.Item;

/** The paths of everything in an answer that can be watched. */
public final class WatchPaths {
    private final List<String> paths = new ArrayList<>();

    private WatchPaths() {}

    public static List<String> of(Document document) {
        WatchPaths all = new WatchPaths();
        all.take("", document.items());
        return List.copyOf(all.paths);
    }

    private void take(String before, List<Item> items) {
        for (Item item : items) {
            String path = before + item.key();
            if (item instanceof Item.Group group) {
                take(path + ".", group.items());
            } else if (item instanceof Item.Rows rows) {
                for (int i = 0; i < rows.rows().size(); i++) {
                    take(path + "." + (i + 1) + ".", rows.rows().get(i).items());
                }
            } else {
                take(path, item);
            }
        }
    }

    private void take(String path, Item item) {
        if (item instanceof Item.Figure || item instanceof Item.Flag || item instanceof Item.Count) {
            paths.add(path);
        } else if (item instanceof Item.Range range) {
            if (range.min() != null) {
                paths.add(path + ".min");
            }
            if (range.max() != null) {
                paths.add(path + ".max");
            }
        } else if (item instanceof Item.BandFigure) {
            paths.addAll(List.of(path + ".low", path + ".expected", path + ".high"));
        } else if (item instanceof Item.FittedFigure) {
            paths.addAll(List.of(path + ".value", path + ".uncertainty"));
        }
    }
}
