package io.github.weirwise.json;

import io.github.weirwise.practice.PracticeSession;
import io.github.weirwise.practice.RandomScenario;
import io.github.weirwise.practice.RefusedStepException;
import io.github.weirwise.practice.Scenario;
import io.github.weirwise.practice.SessionOptions;
import io.github.weirwise.practice.SessionRecord;
import io.github.weirwise.practice.SessionStep;
import io.github.weirwise.table.ImportedTable;
import io.github.weirwise.table.ReadingTable;
import io.github.weirwise.table.TableDamage;
import io.github.weirwise.tank.TankLimitException;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * Gives damaged documents to every reader and counts what comes out that should not. A document is known by seed and number
 * alone, so that each finding can be looked at again.
 */
public final class FuzzedReaders {
    /** A document that takes longer by the clock, and again as long of the processor, counts as a hang. */
    private static final long HANG_NANOS = 5_000_000_000L;
    /** Answers cost many times what reading costs, so only some of the readable requests get one. */
    private static final int ONE_ANSWER_IN = 4;

    /** Journal file, lines for the filter, table, scenario, session, conversation, many names, long cells, scenario played. */
    private static final int FILES = 9;

    private static final int LINES_OF_A_CONVERSATION = 4;
    private static final int ONE_PLAYED_IN = 10;
    private static final int ONE_PROBE_IN = 8;
    /** Where Linux tells how long this thread had a processor, ns; a busy machine holds up every reading. */
    private static final Path PROCESSOR = Path.of("/proc/thread-self/schedstat");

    private static final int MOST_NAMES = 50 << 7;

    private static final Map<String, String> TEXTS = new ConcurrentHashMap<>();
    private static final Pattern BORROWED =
            Pattern.compile("StreamRead|jackson|JsonRead|Source:|for valid|was expecting|Exception");
    private static final List<String> NAMES = Fixtures.VERSION_2;
    private static final String PROBE = Fixtures.text("request.json");
    private static final String PROBED = WeirwiseJson.reply(PROBE);
    private static final List<String> COLLISIONS =
            IntStream.range(0, MOST_NAMES).mapToObj(FuzzedReaders::collision).toList();

    private final long seed;
    private final Path journal;

    /** What one or more documents came to. */
    public record Tally(long documents, long readable, long answered, long foreignExceptions, long hangs) {
        /** Nothing yet. */
        public static final Tally NONE = new Tally(0, 0, 0, 0, 0);

        /** Both together. */
        public Tally plus(Tally other) {
            return new Tally(
                    documents + other.documents,
                    readable + other.readable,
                    answered + other.answered,
                    foreignExceptions + other.foreignExceptions,
                    hangs + other.hangs);
        }
    }

    /**
     * Readers for one thread.
     *
     * @param seed of the damage
     * @param journal a file to write damaged journals to
     */
    public FuzzedReaders(long seed, Path journal) {
        this.seed = seed;
        this.journal = journal;
    }

    /** Damages and reads the documents from one number up to, not including, another. */
    public Tally read(long from, long to) {
        Tally tally = Tally.NONE;
        for (long number = from; number < to; number++) {
            tally = tally.plus(read(number));
        }
        return tally;
    }

    private Tally read(long number) {
        long start = System.nanoTime();
        Tally tally = readOnce(number);
        if (System.nanoTime() - start <= HANG_NANOS) {
            return tally;
        }
        long again = processorNanos();
        readOnce(number);
        long took = processorNanos() - again;
        System.err.println("document " + number + " of seed " + seed + " takes " + took / 1_000_000 + " ms");
        return took > HANG_NANOS ? tally.plus(new Tally(0, 0, 0, 0, 1)) : tally;
    }

    private static long processorNanos() {
        try {
            return Long.parseLong(Files.readString(PROCESSOR).split(" ")[0]);
        } catch (IOException notLinux) {
            return System.nanoTime();
        }
    }

    private Tally readOnce(long number) {
        DocumentMutator mutator = new DocumentMutator(seed * 1_000_003 + number);
        int kind = (int) (number % (NAMES.size() + FILES));
        Tally tally;
        try {
            tally = kind < NAMES.size() ? document(NAMES.get(kind), mutator, number) : file(kind, mutator, number);
        } catch (DocumentException expected) {
            tally = new Tally(1, 0, 0, judged(expected, number), 0);
        } catch (Exception | StackOverflowError | OutOfMemoryError foreign) {
            report(number, kind, foreign);
            tally = new Tally(1, 0, 0, 1, 0);
        }
        return tally;
    }

    private Tally document(String name, DocumentMutator mutator, long number) {
        String other = Fixtures.text(NAMES.get((int) (number / 7 % NAMES.size())));
        String damaged = mutator.mutate(Fixtures.text(name), other);
        Fixtures.readAndWrite(name, damaged);
        boolean answer = name.startsWith("request") && number / NAMES.size() % ONE_ANSWER_IN == 0;
        if (answer) {
            answer(damaged);
        }
        return new Tally(1, 1, answer ? 1 : 0, 0, 0);
    }

    /** Whatever could be read has an answer. */
    private static void answer(String request) {
        try {
            WeirwiseJson.answer(request);
        } catch (DocumentException e) {
            throw new IllegalStateException("the adviser failed", e);
        }
    }

    private Tally file(int kind, DocumentMutator mutator, long number) throws IOException {
        return switch (kind - NAMES.size()) {
            case 2 -> table(mutator, number);
            case 3 -> scenario(mutator, number);
            case 4 -> session(mutator, number);
            case 5 -> conversation(number);
            case 6 -> manyNames(number);
            case 7 -> longCells(number);
            case 8 -> played(number);
            default -> lines(kind, mutator);
        };
    }

    /** Lines of a grammar that take up what was answered before; now and then a probe at the end is answered as ever. */
    private Tally conversation(long number) {
        ServiceGrammar grammar = new ServiceGrammar(seed * 1_000_003 + number);
        Tally tally = new Tally(1, 1, 0, 0, 0);
        for (int i = 0; i < LINES_OF_A_CONVERSATION; i++) {
            try {
                grammar.answered(Fixtures.tree(WeirwiseJson.answer(grammar.line())));
                tally = tally.plus(new Tally(0, 0, 1, 0, 0));
            } catch (DocumentException e) {
                tally = tally.plus(new Tally(0, 0, 0, judged(e, number), 0));
            }
        }
        if (number / (NAMES.size() + FILES) % ONE_PROBE_IN == 0) {
            survives(PROBED, WeirwiseJson.reply(PROBE));
        }
        return tally;
    }

    /** A document with thousands of names, that hash alike or differ by a letter. */
    private static Tally manyNames(long number) {
        StringBuilder text = new StringBuilder("{\"version\": 2");
        int names = 50 << (int) (number / 13 % 8 & number / 104 % 8);
        for (int i = 0; i < names; i++) {
            text.append(", \"")
                    .append(number % 2 == 0 ? "weirCrestMm" + i : COLLISIONS.get(i))
                    .append("\": ")
                    .append(i);
        }
        WeirwiseJson.readSettings(text.append('}').toString());
        return new Tally(1, 1, 0, 0, 0);
    }

    /** Strings of one hash code: "Aa" and "BB" have the same. */
    private static String collision(int number) {
        return Integer.toBinaryString(number + (1 << 14)).replace("0", "Aa").replace("1", "BB");
    }

    private static Tally longCells(long number) {
        String cell = List.of("9", "1.", " ", "\"\"", "-", "1,", "=", "\u00e9").get((int) (number / 13 % 8));
        int times = 1 << (int) (number / 104 % 15);
        String text = "time,level (mm),cup (ml),hours,notes\n2026-05-04 08:30," + cell.repeat(times) + ",200,24,\""
                + cell.repeat(times) + "\"\n";
        ImportedTable table = new ReadingTable(ZoneOffset.UTC).read(text);
        table.faults().forEach(Object::toString);
        return new Tally(1, table.faultCount() == 0 ? 1 : 0, 0, 0, 0);
    }

    /** A legal scenario with numbers at their ends: written, read, played to its end by nobody. */
    private static Tally played(long number) {
        Scenario made = new RandomScenario(number).next(1);
        Scenario read = ScenarioJson.readScenario(ScenarioJson.writeScenario(made));
        survives(made, read);
        if (number / NAMES.size() % ONE_PLAYED_IN == 0) {
            try {
                PracticeSession.begin(read, SessionOptions.DEFAULT.withSeed((int) number))
                        .runOn();
            } catch (TankLimitException | RefusedStepException ours) {
                return new Tally(1, 1, 0, 0, 0);
            }
        }
        return new Tally(1, 1, 0, 0, 0);
    }

    private static int judged(DocumentException error, long number) {
        if (!OwnWords.says(error)) {
            System.err.println("document " + number + " is told in words of nobody: " + error.getMessage());
            return 1;
        }
        return saysWords(error.getMessage(), number);
    }

    private static Tally scenario(DocumentMutator mutator, long number) {
        String sound = builtIn(number);
        Scenario read = ScenarioJson.readScenario(mutator.mutate(sound, builtIn(number / 7)));
        survives(read, ScenarioJson.readScenario(ScenarioJson.writeScenario(read)));
        return new Tally(1, 1, 0, 0, 0);
    }

    private static Tally session(DocumentMutator mutator, long number) {
        SessionRecord sound = new SessionRecord(
                ScenarioJson.readScenario(builtIn(number)),
                SessionOptions.DEFAULT,
                List.of(new SessionStep.AskHint(), new SessionStep.Wait(360), new SessionStep.Reveal()));
        String text = mutator.mutate(ScenarioJson.writeSession(sound), builtIn(number / 7));
        SessionRecord read = ScenarioJson.readSession(text);
        survives(read, ScenarioJson.readSession(ScenarioJson.writeSession(read)));
        return new Tally(1, 1, 0, 0, 0);
    }

    private static String builtIn(long number) {
        int index = (int) (number / 13 % ScenarioJson.BUILT_IN.size());
        return TEXTS.computeIfAbsent(ScenarioJson.BUILT_IN.get(index), ScenarioJson::builtInText);
    }

    private static void survives(Object read, Object again) {
        if (!read.equals(again)) {
            throw new IllegalStateException("does not survive being written: " + read);
        }
    }

    /** A small table of readings as a spreadsheet saves it. */
    private static Tally table(DocumentMutator mutator, long number) {
        String separator = List.of(",", ";", "\t").get((int) (number / 11 % 3));
        String sound = TableDamage.csv(TableDamage.sound(5, number), separator, "\n");
        String damaged = mutator.mutate(sound, Fixtures.text("journal-file.jsonl"));
        ImportedTable table = new ReadingTable(ZoneOffset.UTC).read(damaged);
        table.faults().forEach(Object::toString);
        return new Tally(1, table.faultCount() == 0 ? 1 : 0, 0, 0, 0);
    }

    /** An error message in the words of a library underneath counts as one that is not ours. */
    private static int saysWords(String message, long number) {
        boolean plain = !BORROWED.matcher(message).find();
        if (!plain) {
            System.err.println("document " + number + " is told in borrowed words: " + message);
        }
        return plain ? 0 : 1;
    }

    private Tally lines(int kind, DocumentMutator mutator) throws IOException {
        String damaged = mutator.mutate(Fixtures.text("journal-file.jsonl"), Fixtures.text("request.json"));
        if (kind == NAMES.size()) {
            Files.write(journal, damaged.getBytes(StandardCharsets.UTF_8));
            JournalFile.open(journal);
            return new Tally(1, 1, 0, 0, 0);
        }
        byte[] bytes = damaged.getBytes(StandardCharsets.UTF_8);
        ByteArrayOutputStream answers = new ByteArrayOutputStream();
        LineFilter.filter(new ByteArrayInputStream(bytes), answers);
        long asked = damaged.endsWith("\n") || damaged.isEmpty() ? 0 : 1;
        asked += damaged.chars().filter(c -> c == '\n').count();
        long got = answers.toString(StandardCharsets.UTF_8)
                .chars()
                .filter(c -> c == '\n')
                .count();
        if (asked != got) {
            throw new IllegalStateException(asked + " lines in, " + got + " out");
        }
        return new Tally(1, 1, 0, 0, 0);
    }

    private void report(long number, int kind, Throwable foreign) {
        System.err.println("document " + number + " of seed " + seed + ", kind " + kind + ": " + foreign);
        Throwable deepest = foreign;
        while (deepest.getCause() != null) {
            deepest = deepest.getCause();
        }
        StackTraceElement[] at = deepest.getStackTrace();
        System.err.println("    " + deepest + (at.length > 0 ? " at " + at[0] : ""));
    }
}
