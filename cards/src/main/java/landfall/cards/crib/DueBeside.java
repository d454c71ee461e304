// SPDX-License-Identifier: Apache-2.0
package landfall.cards.crib;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import landfall.cards.answer.Item;
import landfall.fault.Caution;
import landfall.wear.Due;

/**
 * What is due beside single taps, or is to be known with them.
 *
 * @param today that the days are counted from
 * @param untold gauges of which no calibration was ever told
 * @param unweighed taps that are less worn than those listed, of which some may be due too
 * @param later taps in use that are not listed, because they are due long hence
 */
public record DueBeside(
        LocalDate today, List<SetDue> sets, List<GaugeDue> gauges, int untold, int unweighed, int later) {
    /**
     * A hand set of which a tap is due or may be: all of its taps are sharpened then.
     *
     * @param when the one that is due first
     * @param sharpen marks of those that can be sharpened
     * @param missing marks of those that are lent or gone
     */
    public record SetDue(String name, Due.When when, List<String> sharpen, List<String> missing) {
        public SetDue {
            sharpen = List.copyOf(sharpen);
            missing = List.copyOf(missing);
        }
    }

    /** Where taps alone are asked about. */
    static final DueBeside NOTHING = new DueBeside(LocalDate.EPOCH, List.of(), List.of(), 0, 0, 0);

    public DueBeside {
        sets = List.copyOf(sets);
        gauges = List.copyOf(gauges);
    }

    List<Item> items() {
        List<Item> items = new ArrayList<>();
        if (this == NOTHING) {
            return items;
        }
        items.add(new Item.Rows("sets", sets.stream().map(DueBeside::row).toList()));
        items.add(new Item.Rows("gauges", gauges.stream().map(this::row).toList()));
        return items;
    }

    private static Item.Group row(SetDue set) {
        return Item.Group.of(
                "set",
                new Item.Text("set", set.name),
                new Item.Text("when", DueDocument.when(set.when)),
                new Item.Text("sharpen", String.join(", ", set.sharpen)),
                new Item.Text("missing", String.join(", ", set.missing)));
    }

    private Item.Group row(GaugeDue gauge) {
        long days = gauge.daysFrom(today);
        return Item.Group.of(
                "gauge",
                new Item.Text("mark", gauge.mark()),
                new Item.Text("gauge", gauge.what()),
                new Item.Text("when", days < 0 ? "over" : "near"),
                new Item.Text("until", gauge.due().toString()),
                new Item.Count("days", Math.toIntExact(days)));
    }

    List<Caution> cautions() {
        List<Caution> cautions = new ArrayList<>();
        if (untold > 0) {
            cautions.add(new Caution(
                    "calibrationNotTold",
                    "Gauges of which no calibration is on record: " + untold
                            + ". Log it: crib log MARK calibrated --passed yes --due 2027-11-01.",
                    "gauges"));
        }
        if (unweighed > 0) {
            cautions.add(new Caution(
                    "notWeighed",
                    "Taps that are less worn than those listed, of which some may be due too: " + unweighed
                            + ". Ask for one thread: crib list --due --thread CALLOUT.",
                    "taps"));
        }
        if (later > 0) {
            cautions.add(new Caution(
                    "moreTaps",
                    "Taps in use that are not due and not listed here: " + later
                            + ". Each tells its own: crib due MARK.",
                    "taps"));
        }
        return cautions;
    }
}
