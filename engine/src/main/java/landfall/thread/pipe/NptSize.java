// SPDX-License-Identifier: Apache-2.0
package landfall.thread.pipe;

import java.util.List;
import java.util.Optional;
import landfall.thread.Table;
import landfall.thread.scan.Cursor;
import landfall.thread.scan.InchHead;
import landfall.thread.scan.Numerals;

/** One size of the American taper pipe thread; inches inside this package. */
record NptSize(String name, double outside, double threadsPerInch, double handTight, boolean remembered) {
    private static final List<NptSize> SIZES =
            Table.rows("npt-sizes").stream().map(NptSize::of).toList();

    private static final List<List<String>> TRUNCATIONS = Table.rows("npt-truncation");

    private static NptSize of(List<String> row) {
        return new NptSize(
                row.get(0),
                Double.parseDouble(row.get(1)),
                Double.parseDouble(row.get(2)),
                Double.parseDouble(row.get(3)),
                row.get(4).equals("memory"));
    }

    static List<NptSize> all() {
        return SIZES;
    }

    /** Greatest truncation of crest and root each, in. */
    double greatestTruncation() {
        return TRUNCATIONS.stream()
                .filter(row -> Double.parseDouble(row.get(0)) == threadsPerInch)
                .mapToDouble(row -> Double.parseDouble(row.get(1)))
                .findFirst()
                .orElseThrow();
    }

    /** The size that a head names; its threads an inch may be left out but must be right. */
    static NptSize of(Cursor c, InchHead head) {
        Optional<NptSize> found = SIZES.stream()
                .filter(each -> Numerals.mixed(new Cursor(each.name)) == head.size())
                .findFirst();
        NptSize size = found.orElseThrow(() -> c.refuse(
                0,
                "has a size that pipe threads do not have",
                "sizes run 1/16, 1/8, 1/4, 3/8, 1/2, 3/4, 1, 1 1/4 .. 6"));
        long units = Math.round(size.threadsPerInch * Numerals.ONE);
        if (head.pitch() != 0 && head.pitch() != InchHead.pitchOf(units)) {
            throw c.refuse(
                    0, "has threads an inch that this pipe size does not have", "write " + size.label() + " NPT");
        }
        return size;
    }

    /** {@code 1/2-14}. */
    String label() {
        return name + "-" + Numerals.plain(Math.round(threadsPerInch * Numerals.ONE));
    }
}
