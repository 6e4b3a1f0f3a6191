package io.github.weirwise.evidence;

import io.github.weirwise.reading.Reading;
import io.github.weirwise.table.ImportedTable;
import io.github.weirwise.table.ReadingTable;
import io.github.weirwise.table.TableDamage;
import io.github.weirwise.table.TableDamage.Outcome;
import io.github.weirwise.table.TableFault;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/** Command {@code csv}: tables of 10,000 rows, each with one of 50 kinds of damage, read in. */
final class CsvCommand {
    private static final int ROWS = 10_000;
    private static final int SEEDS = 4;

    private final ReadingTable table = new ReadingTable(ZoneOffset.UTC);
    private int documents;
    private int foreign;
    private int misplaced;
    private long millis;

    private CsvCommand() {}

    static void run() {
        CsvCommand command = new CsvCommand();
        for (TableDamage damage : TableDamage.all()) {
            for (int seed = 1; seed <= SEEDS; seed++) {
                command.read(damage, seed);
            }
        }
        System.out.printf(
                Locale.ROOT,
                "result: documents=%d foreignExceptions=%d kinds=%d rowsEach=%d misplaced=%d millisEach=%d%n",
                command.documents,
                command.foreign,
                TableDamage.all().size(),
                ROWS,
                command.misplaced,
                command.millis / command.documents);
    }

    private void read(TableDamage damage, int seed) {
        Random random = new Random(seed);
        List<List<String>> cells = TableDamage.sound(ROWS, seed);
        int harmed = 1 + random.nextInt(ROWS);
        String csv = damage.harm().apply(cells, harmed, random);
        String said = "nothing";
        boolean asExpected = false;
        long start = System.nanoTime();
        try {
            ImportedTable read = table.read(csv);
            asExpected = asExpected(damage, harmed, read);
            said = read.faults().isEmpty()
                    ? "all taken over"
                    : read.faults().get(0).toString();
        } catch (RuntimeException e) {
            foreign++;
            said = "FOREIGN " + e;
        }
        millis += (System.nanoTime() - start) / 1_000_000;
        documents++;
        misplaced += asExpected ? 0 : 1;
        if (seed == 1) {
            System.out.println(damage.name() + " -> " + said);
        }
    }

    private static boolean asExpected(TableDamage damage, int harmed, ImportedTable read) {
        boolean row = damage.outcome() == Outcome.ROW;
        List<Integer> named =
                read.faults().stream().map(TableFault::row).distinct().toList();
        int taken = read.journal().all(Reading.class).size();
        return damage.outcome() == Outcome.TABLE
                ? named.size() == 1 && taken == 0
                : named.equals(row ? List.of(harmed + 1) : List.of()) && taken == (row ? ROWS - 1 : ROWS);
    }
}
