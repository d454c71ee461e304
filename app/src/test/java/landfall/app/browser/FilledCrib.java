// SPDX-License-Identifier: Apache-2.0
package landfall.app.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.Map;
import landfall.store.Store;
import landfall.store.StoreAddress;
import landfall.store.table.TableIn;
import landfall.store.table.Wish;

/**
 * An invented crib with something of everything: a tap of many records whose card is whole, a hand set of which one is
 * lent and one is due under the mark DUE, a gauge past its calibration and one near its end.
 */
final class FilledCrib {
    private static final String THINGS = """
            mark,kind,set,thread,gauge,flutes.count,flutes.core,flutes.rake,land.width,chamfer.angle,chamfer.pointDiameter,threadLength
            W-1,tap,,M8x1.25-6H,,3,4.1 mm,10 deg,2.6 mm,9 deg,6.4 mm,22 mm
            DUE,tap,SET-A,M10x1.5-6H,,,,,,,,
            S-2,tap,SET-A,M10x1.5-6H,,,,,,,,
            S-3,tap,SET-A,M10x1.5-6H,,,,,,,,
            G-1,gauge,,M8x1.25-6H,GO plug,,,,,,,
            G-2,gauge,,M8x1.25-6H,NOT GO plug,,,,,,,
            """;

    private static final String EVENTS = """
            mark,event,at,by,holes,material,depth,way,wear-land,torque,to,price,passed,due
            W-1,bought,2026-01-05,Ida,,,,,,,,20 EUR,,
            W-1,tapped,2026-01-12,Ida,120,1045,12 mm,,,6 N·m,,,,
            W-1,sharpened,2026-02-02,Ida,,,,chamfer,,,,,,
            W-1,tapped,2026-02-09,Ida,140,1045,12 mm,,,6.2 N·m,,,,
            W-1,measured,2026-03-01,Ida,,,,,0.17 mm,,,,,
            W-1,sharpened,2026-03-02,Ida,,,,chamfer,,,,,,
            W-1,tapped,2026-03-09,Ida,60,1045,12 mm,,,6 N·m,,,,
            W-1,measured,2026-04-01,Ida,,,,,0.08 mm,,,,,
            W-1,tapped,2026-04-09,Ida,40,1045,12 mm,,,8 N·m,,,,
            DUE,tapped,2026-01-12,Ida,9000,1045,16 mm,,,,,,,
            S-3,lent,2026-05-09,Ida,,,,,,,Hollow Lane,,,
            G-1,calibrated,2025-09-01,Ida,,,,,,,,,yes,2026-09-01
            """;

    private FilledCrib() {}

    static void into(StoreAddress address) {
        LocalDate near = LocalDate.now(Clock.systemDefaultZone()).plusDays(20);
        try (Store store = Store.open(address, Clock.systemUTC())) {
            read(store, THINGS);
            read(store, EVENTS);
            read(store, "mark,event,at,by,passed,due\nG-2,calibrated,2026-01-05,Ida,yes," + near + "\n");
        }
    }

    private static void read(Store store, String table) {
        Wish wish = new Wish(
                Map.of(), new Wish.How(false, false, false), "Ida", ZonedDateTime.now(Clock.systemDefaultZone()));
        assertThat(TableIn.read(store, new StringReader(table), wish, TableIn.Watch.NOBODY)
                        .orThrow()
                        .bad())
                .isEmpty();
    }
}
