package io.github.weirwise.json;

import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.Objects;
import java.util.Optional;

/**
 * The journal of one unit on disk: JSON Lines in UTF-8, a header line, its copy, and then one line an entry, only ever added
 * to. Each line ends with a checksum, so that a line which a disk or an editor changed is told and not believed.
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
    private static final byte[] LINE_END = {'\n'};
    private static final int MOST_REPLACEMENTS = 5;

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
        byte[] start = concat(concat(header, LINE_END), header);
        try (LockedFile file = LockedFile.toCreate(path)) {
            clearTornHeader(file, path);
            file.append(start);
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
        return new JournalReader().read(bytes(path));
    }

    /**
     * Reads the entries of a journal that has lost its header and the copy of it. The file is not changed; begin a new one and
     * append the entries to it.
     *
     * @param unit whose journal it is
     * @param settings how it was set at the start
     * @throws DocumentException if the file is empty or too large
     * @throws IOException if the file cannot be read
     */
    public static JournalContents salvage(Path path, SkimmerUnit unit, Settings settings) throws IOException {
        return new JournalReader(new JournalHeader(unit, settings)).read(bytes(path));
    }

    private static byte[] bytes(Path path) throws IOException {
        try (LockedFile file = LockedFile.toRead(path)) {
            checkSize(file.size());
            return file.read(0, (int) file.size());
        }
    }

    /**
     * Adds an entry at the end; when this returns, the disk has it.
     *
     * @throws DocumentException if the entry could not be read again, for example for a time out of range or a text that is
     *     too long; nothing is written then
     * @throws IOException if it cannot be written
     */
    public void append(JournalEntry entry) throws IOException {
        append(JournalItem.of(entry));
    }

    /**
     * Adds an entry under an identifier of the caller's. An entry that is sent again under the same identifier, because nobody
     * knows whether it came through, counts once; a corrected one replaces it.
     *
     * @param id 1 to 100 characters, unique in this journal
     * @throws DocumentException if entry or identifier could not be read again; nothing is written then
     * @throws IOException if it cannot be written
     */
    public void append(JournalEntry entry, String id) throws IOException {
        append(new JournalItem(Optional.of(id), entry));
    }

    private void append(JournalItem item) throws IOException {
        byte[] line = withEnd(JournalLine.of(item));
        for (int attempt = 0; attempt < MOST_REPLACEMENTS; attempt++) {
            try (LockedFile file = LockedFile.toWrite(path)) {
                TornEnd.mend(file, path);
                boolean copied = attempt > 0 && endsWith(file, line);
                if (!copied) {
                    file.append(line);
                }
                if (file.isInPlace()) {
                    return;
                }
            }
        }
        throw new IOException(
                path + " is replaced by another program again and again; stop that program and try again");
    }

    private static boolean endsWith(LockedFile file, byte[] line) throws IOException {
        long start = file.size() - line.length;
        return start > 0 && Arrays.equals(file.read(start, line.length), line);
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
        try (LockedFile file = LockedFile.toWrite(path)) {
            long size = file.size();
            long start = size < 1 ? 0 : TornEnd.startOfLastLine(file, size - 1);
            byte[] line = file.read(start, (int) Math.min(size - start, DocumentLimits.LONGEST_LINE_BYTES + 1));
            boolean ended = line.length > 0 && line[line.length - 1] == '\n' && start + line.length == size;
            JournalLine last = new JournalLine(Arrays.copyOf(line, Math.max(0, line.length - 1)));
            if (!ended || start == 0 || !last.isEntry() || !last.item().entry().equals(entry)) {
                return false;
            }
            TornEnd.keepAside(path, last.bytes());
            file.truncate(start);
            return true;
        }
    }

    /** Lets pass only what {@link #create} itself can have left behind: the beginning of one header line. */
    private static void clearTornHeader(LockedFile file, Path path) throws IOException {
        byte[] held = file.read(0, (int) Math.min(file.size(), DocumentLimits.LONGEST_LINE_BYTES));
        String text = new String(held, StandardCharsets.ISO_8859_1);
        boolean begun = text.startsWith(JournalLine.HEADER_START) || JournalLine.HEADER_START.startsWith(text);
        if (file.size() != held.length || text.indexOf('\n') >= 0 || !begun) {
            throw new FileAlreadyExistsException(path.toString(), null, "open it instead, or choose another name");
        }
        if (held.length > 0) {
            TornEnd.keepAside(path, held);
            file.truncate(0);
        }
    }

    private static void checkSize(long size) {
        if (size > DocumentLimits.LARGEST_JOURNAL_FILE_BYTES) {
            throw new DocumentException(
                    "$",
                    Phrase.of("json.fileBytes", size, DocumentLimits.LARGEST_JOURNAL_FILE_BYTES),
                    Phrase.of("json.beginNewJournal"));
        }
    }

    private static byte[] withEnd(JournalLine line) {
        return concat(line.bytes(), LINE_END);
    }

    private static byte[] concat(byte[] first, byte[] second) {
        byte[] both = Arrays.copyOf(first, first.length + second.length);
        System.arraycopy(second, 0, both, first.length, second.length);
        return both;
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
