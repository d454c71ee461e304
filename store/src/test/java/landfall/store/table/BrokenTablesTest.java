// SPDX-License-Identifier: Apache-2.0
package landfall.store.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.InputStreamReader;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import java.util.Random;
import landfall.fault.Answer;
import landfall.fault.Finding;
import landfall.store.Store;
import landfall.store.Stores;
import landfall.store.backup.Backup;
import landfall.store.crib.Crib;
import landfall.store.crib.Row;
import landfall.store.crib.Wanted;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever comes in a table: the good rows are taken, or none, and each bad one is told with its line and the mend. */
class BrokenTablesTest {
    private static final ZonedDateTime NOW = ZonedDateTime.parse("2026-11-25T08:00:00Z");
    private static final String HEAD = "mark,thread,place\n";

    @TempDir
    private Path folder;

    private Store store;

    @BeforeEach
    void aStoreOfItsOwn() {
        store = Stores.open(Stores.newFile());
    }

    @AfterEach
    void closed() {
        store.close();
    }

    @Test
    void bytesThatAreNoTextCostTheirRow() {
        byte[] table = (HEAD + "T-1,M8x1.25,drawer ?\nT-2,M8x1.25,drawer 2\n").getBytes(StandardCharsets.UTF_8);
        table[new String(table, StandardCharsets.UTF_8).indexOf('?')] = (byte) 0xFC;
        tells(read(table), 2, "place", "is not text in UTF-8", "save the table as UTF-8");
        assertThat(marks()).containsExactly("T-2");
    }

    @Test
    void aCharacterOfNumberNoughtCostsItsRow() {
        tells(
                read(HEAD + "T-1,M8x1.25,dra\0wer\nT-2,M8x1.25,b\n"),
                2,
                "place",
                "holds a character of number 0",
                "take it out");
        assertThat(marks()).containsExactly("T-2");
    }

    @Test
    void aTableInUtf16IsRefusedAsAWhole() {
        byte[] table = (HEAD + "T-1,M8x1.25,a\n").getBytes(StandardCharsets.UTF_16);
        assertThat(answer(table, false).findings().get(0).sentence())
                .isEqualTo("columns: \"\" are not text in UTF-8."
                        + " To mend: save the table as CSV in UTF-8; this one may be in UTF-16.");
    }

    @Test
    void aTablePartedBySemicolonsIsRefusedAsAWhole() {
        assertThat(answer("mark;thread\nT-1;M8\n".getBytes(StandardCharsets.UTF_8), false)
                        .findings()
                        .get(0)
                        .mend())
                .isEqualTo("save the table with commas between the columns");
    }

    @Test
    void aMarkOfByteOrderAndAnyLineEndsAreTaken() {
        Report report = read("\uFEFFmark,thread,place\r\nT-1,M8x1.25,a\r\n\r\nT-2,M8x1.25,b\rT-3,M8x1.25,c\n");
        assertThat(report.bad()).isEmpty();
        assertThat(report.addedRows()).isEqualTo(3);
    }

    @Test
    void aQuotationMarkThatIsNeverClosedCostsItsRowAlone() {
        Report report = read(HEAD + "T-1,M8x1.25,a\nT-2,M8x1.25,\"never closed\nT-3,M8x1.25,c\n");
        tells(report, 3, "line", "has a quotation mark that is not closed", "put quotation marks round the whole cell");
        assertThat(marks()).containsExactly("T-1", "T-3");
    }

    @Test
    void textAfterAClosedQuotationCostsItsRow() {
        tells(
                read(HEAD + "T-1,M8x1.25,\"a\" b\nT-2,M8x1.25,\"say \"\"b\"\",\nand more\"\nT-3,M8x1.25,c\n"),
                2,
                "line",
                "has text after a closing quotation mark",
                "put quotation marks round the whole cell");
        assertThat(rows()).extracting(Row::place).containsExactly("say \"b\",\nand more", "c");
    }

    @Test
    void aLineOfTenMegabytesCostsItsRowAlone() {
        Report report = read(HEAD + "T-1,M8x1.25,a\nT-2,M8x1.25," + "x".repeat(10_000_000) + "\nT-3,M8x1.25,c\n");
        tells(report, 3, "line", "is longer than 65536 characters", "put quotation marks round the whole cell");
        assertThat(marks()).containsExactly("T-1", "T-3");
    }

    @Test
    void missingAndDoubledColumnsAreRefusedAndMissingCellsToldWhereNeeded() {
        assertThat(answer("thread,place\nM8,a\n".getBytes(StandardCharsets.UTF_8), false)
                        .findings()
                        .get(0)
                        .why())
                .isEqualTo("have no mark");
        assertThat(answer("mark,thread,thread\nT-1,M8,M6\n".getBytes(StandardCharsets.UTF_8), false)
                        .findings()
                        .get(0)
                        .why())
                .isEqualTo("stands twice");
        Report report = read(HEAD + "T-1,M8x1.25\nT-2\nT-3,M8x1.25,a,more\n");
        tells(report, 3, "thread", "is needed", "give");
        assertThat(report.bad().get(1).finding().why()).isEqualTo("stands beyond the last column");
        assertThat(marks()).containsExactly("T-1");
    }

    @Test
    void oneBadRowAndNoneIsKeptWhereAllOrNoneIsWanted() {
        Report report = answer((HEAD + "T-1,M8x1.25,a\nT-2,M99x,b\n").getBytes(StandardCharsets.UTF_8), true)
                .orThrow();
        assertThat(report.isKept()).isFalse();
        assertThat(report.badRows()).isEqualTo(1);
        assertThat(marks()).isEmpty();
    }

    @Test
    void everyBadRowIsInTheTableOfFindingsAndNoneOfItIsAFormula() throws Exception {
        StringBuilder table = new StringBuilder(HEAD);
        for (int i = 0; i < 1500; i++) {
            table.append("T-").append(i).append(",=cmd()").append(i).append(",a\n");
        }
        Path file = folder.resolve("bad.csv");
        try (FindingsOut out = FindingsOut.to(file)) {
            Report report = TableIn.read(
                            store,
                            new InputStreamReader(
                                    new ByteArrayInputStream(table.toString().getBytes(StandardCharsets.UTF_8)),
                                    StandardCharsets.UTF_8),
                            new Wish(Map.of(), new Wish.How(false, false, false), "Ida", NOW, out::put),
                            TableIn.Watch.NOBODY)
                    .orThrow();
            assertThat(report.badRows()).isEqualTo(1500);
            assertThat(report.bad()).hasSize(Report.MOST_TOLD);
        }
        List<String> lines = Files.readAllLines(file);
        assertThat(lines).hasSize(1501);
        assertThat(lines.get(1)).startsWith("2,thread,'=cmd()0,");
    }

    @Test
    void aReadingThatIsStoppedKeepsAndTellsWhatItHadTaken() {
        StringBuilder table = new StringBuilder(HEAD);
        for (int i = 1; i <= 5000; i++) {
            table.append("T-").append(i).append(",M8x1.25,a\n");
        }
        Wish wish = new Wish(Map.of(), new Wish.How(false, false, false), "Ida", NOW);
        Report report = TableIn.read(store, new java.io.StringReader(table.toString()), wish, rows -> rows >= 2000)
                .orThrow();
        assertThat(report.isStopped()).isTrue();
        assertThat(report.stoppedIn()).isEqualTo(2001);
        assertThat(report.addedRows()).isEqualTo(2000);
        assertThat(marks()).hasSize(2000);
        Report again = TableIn.read(store, new java.io.StringReader(table.toString()), wish, TableIn.Watch.NOBODY)
                .orThrow();
        assertThat(again.unchangedRows()).isEqualTo(2000);
        assertThat(again.addedRows()).isEqualTo(3000);
        assertThat(Backup.content(store).events()).isEqualTo(5000);
    }

    /** Characters that matter to a table, thrown together: it never fails, and every row is good or told. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void anyTextIsReadToItsEnd(long seed) {
        Random random = new Random(seed);
        String signs = "T-1,M8x1.25\"\"\n\r\0\t;'=\uFFFD\uFEFF aé";
        StringBuilder table = new StringBuilder(HEAD);
        for (int i = 0; i < 4000; i++) {
            table.append(
                    random.nextInt(9) == 0
                            ? "\nT-" + random.nextInt(50) + ",M8x1.25,"
                            : String.valueOf(signs.charAt(random.nextInt(signs.length()))));
        }
        table.append("\nLAST,M8x1.25,a");
        Report report = read(table.toString());
        assertThat(report.good() + report.badRows()).isEqualTo(report.rows());
        assertThat(report.addedRows() + report.unchangedRows()).isEqualTo(report.good());
        assertThat(marks()).hasSize((int) report.addedRows()).contains("LAST");
    }

    private static void tells(Report report, long line, String field, String why, String mend) {
        Report.Bad bad = report.bad().get(0);
        Finding finding = bad.finding();
        assertThat(bad.line()).isEqualTo(line);
        assertThat(finding.field()).isEqualTo(field);
        assertThat(finding.why()).startsWith(why);
        assertThat(finding.mend()).startsWith(mend);
    }

    private List<Row> rows() {
        return new Crib(store).list(Wanted.all());
    }

    private List<String> marks() {
        return rows().stream().map(row -> row.item().mark().text()).toList();
    }

    private Report read(String table) {
        return read(table.getBytes(StandardCharsets.UTF_8));
    }

    private Report read(byte[] table) {
        return answer(table, false).orThrow();
    }

    private Answer<Report> answer(byte[] table, boolean allOrNone) {
        InputStreamReader in = new InputStreamReader(
                new ByteArrayInputStream(table),
                StandardCharsets.UTF_8
                        .newDecoder()
                        .onMalformedInput(CodingErrorAction.REPLACE)
                        .onUnmappableCharacter(CodingErrorAction.REPLACE));
        return TableIn.read(
                store, in, new Wish(Map.of(), new Wish.How(false, allOrNone, false), "Ida", NOW), TableIn.Watch.NOBODY);
    }
}
