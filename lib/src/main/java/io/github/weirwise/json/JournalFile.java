package io.github.weirwise.json;

import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/**
 * The journal of one unit on disk: JSON Lines in UTF-8, a header line and then one line an entry, only ever added to.
 *
 * <p>Each entry is one line written under a file lock and forced to disk before {@link #append} returns, so several
 * programs may add to the same file. A writer that dies in the middle leaves at most a torn last line: reading reports it,
 * the next append moves it to a side file ({@code .torn} added to the name) and nothing else is touched. A corrected or
 * followed advice is simply added again; the later line counts.
 *
 * <p>Nothing stays open between calls. Thread-safe.
 *
 * @since 0.1
 */
public final class JournalFile {
    private static final byte[] HEADER_START = "{\"version\":".getBytes(StandardCharsets.UTF_8);

    private final Path path;

    private JournalFile(Path path) {
        this.path = path;
    }

    /**
     * Begins a journal.
     *
     * @param path a file that does not exist yet, is empty, or holds nothing but a header that a crash cut off
     * @param unit whose journal it is
     * @param settings how it is set at the start
     * @throws FileAlreadyExistsException if the file holds anything else
     * @throws IOException if it cannot be written
     */
    public static JournalFile create(Path path, SkimmerUnit unit, Settings settings) throws IOException {
        byte[] header = withEnd(JournalLine.of(new JournalHeader(unit, settings)));
        try (LockedFile file = LockedFile.toCreate(path)) {
            clearTornHeader(file, path);
            file.append(header);
        }
        forceDirectory(path.toAbsolutePath().getParent());
        return new JournalFile(path);
    }

    /**
     * A journal that exists.
     *
     * @throws DocumentException if its header is not one of a journal
     * @throws IOException if it cannot be read
     */
    public static JournalFile open(Path path) throws IOException {
        JournalFile file = new JournalFile(Objects.requireNonNull(path, "path"));
        file.read();
        return file;
    }

    /** Where it is. */
    public Path path() {
        return path;
    }

    /** Where a torn last line is kept, if there ever was one. */
    public Path sideFile() {
        return TornEnd.sideFile(path);
    }

    /**
     * Reads everything. Lines that cannot be read are reported and left out; the file is not changed.
     *
     * @throws DocumentException if the header cannot be read or the file is too large
     * @throws IOException if the file cannot be read
     */
    public JournalContents read() throws IOException {
        byte[] bytes;
        try (LockedFile file = LockedFile.toRead(path)) {
            checkSize(file.size());
            bytes = file.read(0, (int) file.size());
        }
        return contents(JournalText.lines(bytes));
    }

    /**
     * Adds an entry at the end; when this returns, the disk has it.
     *
     * @throws DocumentException if the entry could not be read again, for example for a time out of range or a text that is
     *     too long; nothing is written then
     * @throws IOException if it cannot be written
     */
    public void append(JournalEntry entry) throws IOException {
        byte[] line = withEnd(JournalLine.of(entry));
        try (LockedFile file = LockedFile.toWrite(path)) {
            TornEnd.mend(file, path);
            file.append(line);
        }
    }

    /**
     * Takes back the newest line, for a person who noted something wrong a moment ago. The line is kept in the side file.
     *
     * @param entry what the last line must hold
     * @return whether it was taken back; false when the file ends with anything else, for example because another program
     *     added to it meanwhile
     * @throws IOException if it cannot be written
     */
    public boolean withdraw(JournalEntry entry) throws IOException {
        byte[] line = withEnd(JournalLine.of(entry));
        try (LockedFile file = LockedFile.toWrite(path)) {
            long start = file.size() - line.length;
            if (start <= 0 || !Arrays.equals(file.read(start - 1, line.length + 1), withStart(line))) {
                return false;
            }
            TornEnd.keepAside(path, line);
            file.truncate(start);
            return true;
        }
    }

    /** The line with the line end before it, so that the tail of a longer line is not taken for it. */
    private static byte[] withStart(byte[] line) {
        byte[] whole = new byte[line.length + 1];
        whole[0] = '\n';
        System.arraycopy(line, 0, whole, 1, line.length);
        return whole;
    }

    private static JournalContents contents(List<JournalText.Line> lines) {
        if (lines.isEmpty()) {
            throw new DocumentException("line 1, $", "the file is empty", "begin the journal with JournalFile.create");
        }
        JournalHeader header = header(lines.get(0).line());
        List<JournalEntry> entries = new ArrayList<>();
        List<SpoiltLine> spoilt = new ArrayList<>();
        for (JournalText.Line each : lines.subList(1, lines.size())) {
            try {
                entries.add(each.line().entry());
            } catch (DocumentException e) {
                spoilt.add(new SpoiltLine(each.number(), each.line().shown(), !each.ended(), e.getMessage()));
            }
        }
        return new JournalContents(header.unit(), header.settings(), new Journal(entries), spoilt);
    }

    private static JournalHeader header(JournalLine line) {
        try {
            return line.header();
        } catch (DocumentException e) {
            throw e.inLine(1);
        }
    }

    /** Lets pass only what {@link #create} itself can have left behind. */
    private static void clearTornHeader(LockedFile file, Path path) throws IOException {
        long size = file.size();
        byte[] held = file.read(0, (int) Math.min(size, DocumentLimits.LONGEST_LINE_BYTES));
        boolean oneLine =
                size == held.length && JournalText.lines(held).stream().noneMatch(JournalText.Line::ended);
        if (!oneLine || !startsAlike(held)) {
            throw new FileAlreadyExistsException(path.toString(), null, "open it instead, or choose another name");
        }
        if (held.length > 0) {
            TornEnd.keepAside(path, held);
            file.truncate(0);
        }
    }

    private static boolean startsAlike(byte[] held) {
        for (int i = 0; i < Math.min(held.length, HEADER_START.length); i++) {
            if (held[i] != HEADER_START[i]) {
                return false;
            }
        }
        return true;
    }

    private static void checkSize(long size) {
        if (size > DocumentLimits.LARGEST_JOURNAL_FILE_BYTES) {
            throw new DocumentException(
                    "$",
                    "the file has " + size + " bytes, may have " + DocumentLimits.LARGEST_JOURNAL_FILE_BYTES,
                    "begin a new journal");
        }
    }

    private static byte[] withEnd(JournalLine line) {
        ByteArrayOutputStream whole = new ByteArrayOutputStream(line.bytes().length + 1);
        whole.writeBytes(line.bytes());
        whole.write('\n');
        return whole.toByteArray();
    }

    /** A new file is safe only once its directory is; systems that cannot force a directory do so themselves. */
    private static void forceDirectory(Path directory) {
        try (FileChannel channel = FileChannel.open(directory, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException notPossibleHere) {
            return;
        }
    }
}
