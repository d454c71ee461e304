// SPDX-License-Identifier: Apache-2.0
package landfall.store.bulk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes the tables of a made shop. Arguments: folder, taps, rows, {@code sound} or {@code broken}. */
final class MakeTables {
    private static final long SEED = 20261130;

    private MakeTables() {}

    public static void main(String[] args) throws IOException {
        Path folder = Files.createDirectories(Path.of(args[0]));
        MadeShop shop = new MadeShop(SEED, Integer.parseInt(args[1]));
        shop.things(folder.resolve("things.csv"));
        long broken = shop.events(folder.resolve("events.csv"), Long.parseLong(args[2]), args[3].equals("broken"));
        System.out.println("broken=" + broken);
    }
}
