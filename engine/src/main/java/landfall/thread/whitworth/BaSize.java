// SPDX-License-Identifier: Apache-2.0
package landfall.thread.whitworth;

import java.util.List;
import java.util.Optional;
import landfall.thread.Table;

/** One BA size; millimetres inside this package. */
record BaSize(int number, double pitch, double major) {
    private static final List<BaSize> SIZES =
            Table.rows("ba-sizes").stream().map(BaSize::of).toList();

    private static BaSize of(List<String> row) {
        return new BaSize(Integer.parseInt(row.get(0)), Double.parseDouble(row.get(1)), Double.parseDouble(row.get(2)));
    }

    static List<BaSize> all() {
        return SIZES;
    }

    static Optional<BaSize> of(int number) {
        return SIZES.stream().filter(each -> each.number == number).findFirst();
    }
}
