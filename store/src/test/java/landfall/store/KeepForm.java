// SPDX-License-Identifier: Apache-2.0
package landfall.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Collectors;
import landfall.cards.crib.ItemForms;
import landfall.cards.crib.Told;
import landfall.history.EventKind;
import landfall.history.ItemKind;
import landfall.history.Mark;
import landfall.store.backup.Backup;
import landfall.store.backup.Content;
import landfall.store.crib.Crib;
import landfall.store.crib.Item;
import landfall.store.crib.Saying;

/**
 * Keeps a store as the present program writes it, of both kinds, for later programs to be tried on: {@code form-N.db},
 * {@code form-N.sql} and what they hold, {@code form-N.txt}. Run it before a migration is added; the argument is the
 * folder {@code store/src/test/resources/forms}.
 */
final class KeepForm {
    private static final Instant BEGIN = Instant.parse("2026-03-02T07:00:00Z");

    private final Random random = new Random(20261130);
    private final Crib crib;
    private int said;

    private KeepForm(Crib crib) {
        this.crib = crib;
    }

    public static void main(String[] args) throws IOException {
        Path folder = Path.of(args[0]);
        String name = "form-" + Migration.NEWEST;
        StoreAddress.InFile file = Stores.newFile();
        Content content = fill(file);
        Files.copy(file.path(), folder.resolve(name + ".db"));
        StoreAddress.OnServer server = PostgresServer.newBase();
        if (!fill(server).equals(content)) {
            throw new IllegalStateException("the two stores differ");
        }
        String script = PostgresServer.script(server)
                .lines()
                .filter(line -> !line.startsWith("\\") && !line.startsWith("--") && !line.isBlank())
                .filter(line -> !line.startsWith("SET ") || line.contains("search_path"))
                .collect(Collectors.joining("\n", "", "\n"));
        Files.writeString(folder.resolve(name + ".sql"), script);
        Files.writeString(
                folder.resolve(name + ".txt"),
                "things=%d%nevents=%d%nsha256=%s%n".formatted(content.things(), content.events(), content.sha256()));
    }

    private static Content fill(StoreAddress address) {
        try (Store store = Stores.open(address)) {
            new KeepForm(new Crib(store)).fill();
            return Backup.content(store);
        }
    }

    private void fill() {
        List<Mark> taps = new ArrayList<>();
        for (String mark : List.of("T-1", "T-2", "SET-A.1", "SET-A.2", "SET-A.3")) {
            taps.add(add(mark, ItemKind.TAP, mark.startsWith("SET") ? "SET-A" : "", Map.of("thread", "M8x1.25-6H")));
        }
        taps.add(crib.addNumbered(
                        ItemKind.TAP,
                        "",
                        card(
                                ItemKind.TAP,
                                Map.of("thread", "1/4-20 UNC-2B", "flutes.count", "3", "flutes.kind", "straight")))
                .mark());
        taps.forEach(this::life);
        say(taps.get(0), EventKind.TAPPED, Map.of("holes", "4000", "material", "1045"));
        say(
                taps.get(0),
                EventKind.CORRECTED,
                Map.of("takes-back", String.valueOf(said(taps.get(0))), "because", "400"));
        say(taps.get(1), EventKind.BROKEN, Map.of("when", "reversal", "part-lost", "yes"));
        Mark gauge = add("G-1", ItemKind.GAUGE, "", Map.of("gauge", "GO plug", "thread", "M8x1.25-6H"));
        say(gauge, EventKind.CALIBRATED, Map.of("passed", "yes", "due", "2027-03-01"));
        Mark wheel = add(
                "W-1",
                ItemKind.WHEEL,
                "",
                Map.of("wheel.diameter", "150 mm", "wheel.marking", "A80J6V", "wheel.markedSpeed", "4000 rev/min"));
        say(wheel, EventKind.MOVED, Map.of("place", "“grinder” drawer, left – ½ full"));
        Mark drill = add("D-1", ItemKind.DRILL, "", Map.of("name", "for M8", "diameter", "6.8 mm"));
        say(drill, EventKind.SHARPENED, Map.of("way", "face"));
        say(drill, EventKind.SCRAPPED, Map.of("because", "too short"));
    }

    private Mark add(String mark, ItemKind kind, String set, Map<String, String> fields) {
        return crib.add(new Item(new Mark(mark), kind, set, card(kind, fields)))
                .orThrow()
                .mark();
    }

    private static Map<String, String> card(ItemKind kind, Map<String, String> fields) {
        return ItemForms.lasting(kind, new TreeMap<>(fields)).orThrow();
    }

    /** Three runs of a tap with signs of every kind; what was felt at the machine is told a day late now and then. */
    private void life(Mark tap) {
        say(tap, EventKind.BOUGHT, Map.of("price", "18.50 EUR", "supplier", "catalogue 4711"));
        for (int run = 0; run < 3; run++) {
            say(tap, EventKind.ISSUED, Map.of("to", "bench " + random.nextInt(4)));
            for (int job = 0; job < 5; job++) {
                Map<String, String> fields = new TreeMap<>(Map.of("holes", String.valueOf(1 + random.nextInt(60))));
                if (random.nextInt(4) > 0) {
                    fields.put("material", "1045");
                    fields.put("depth", "16 mm");
                }
                if (random.nextInt(4) == 0) {
                    fields.put("feel", List.of("fresh", "heavier", "heavy").get(random.nextInt(3)));
                }
                if (random.nextInt(5) == 0) {
                    fields.put("torque", 4 + random.nextInt(5) + " N·m");
                }
                if (random.nextInt(6) == 0) {
                    fields.put("since", "Monday");
                }
                say(tap, EventKind.TAPPED, fields);
            }
            say(tap, EventKind.MEASURED, Map.of("wear-land", "0.%02d mm".formatted(8 + random.nextInt(20))));
            say(tap, EventKind.RETURNED, Map.of("place", "drawer 3"));
            if (run < 2) {
                say(tap, EventKind.SHARPENED, Map.of("way", "chamfer", "stock", "0.3 mm", "wheel", "W-1"));
                say(tap, EventKind.INSPECTED, Map.of("passed", "yes", "note", "tooth 2 stands 0.01 high"));
            }
        }
    }

    private long said(Mark mark) {
        return crib.find(mark).orElseThrow().history().standing().last().seq();
    }

    private void say(Mark mark, EventKind kind, Map<String, String> fields) {
        Item item = crib.find(mark).orElseThrow().item();
        Told told = Told.read(kind, fields, item.bare()).orThrow();
        boolean late = random.nextInt(9) == 0;
        Instant at = BEGIN.plus(Duration.ofHours(said++ * 5L - (late ? 30 : 0)));
        crib.log(new Saying(mark, told, new Saying.Who("Ida", at), said % 7 == 0 ? "r" + said : null, null))
                .orThrow();
    }
}
