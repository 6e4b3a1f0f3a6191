package io.github.weirwise.json;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;

/** Mends a file whose last line lacks its end, because a writer was stopped in the middle. */
final class TornEnd {
    private static final byte[] LINE_END = {'\n'};
    private static final int BLOCK = 8192;

    private TornEnd() {}

    /** Where a torn last line is kept: beside the journal, with {@code .torn} added to its name. */
    static Path sideFile(Path journal) {
        return journal.resolveSibling(journal.getFileName() + ".torn");
    }

    /**
     * Makes the file end with a whole line. A last line that only lacks its line end gets it; anything else is first put
     * into the side file and forced to disk, then cut off.
     */
    static void mend(LockedFile file, Path path) throws IOException {
        long size = file.size();
        long start = startOfLastLine(file, size);
        if (start == 0) {
            mendHeader(file, size);
            return;
        }
        if (start == size) {
            return;
        }
        byte[] torn = file.read(start, (int) Math.min(size - start, Integer.MAX_VALUE - 8));
        if (new JournalLine(torn).isEntry()) {
            file.append(LINE_END);
            return;
        }
        keepAside(path, torn);
        file.truncate(start);
    }

    /** A file that is one line without end: nothing may be added unless that line is a whole header. */
    private static void mendHeader(LockedFile file, long size) throws IOException {
        int length = (int) Math.min(size, DocumentLimits.LONGEST_LINE_BYTES + 1);
        try {
            new JournalLine(file.read(0, length)).header();
        } catch (DocumentException e) {
            throw e.inLine(1);
        }
        file.append(LINE_END);
    }

    static void keepAside(Path journal, byte[] torn) throws IOException {
        byte[] line = Arrays.copyOf(torn, torn.length + 1);
        line[torn.length] = '\n';
        LockedFile.append(sideFile(journal), line);
    }

    /** Offset just behind the last line end before {@code size}, which is the size of a file that ends with a whole line. */
    static long startOfLastLine(LockedFile file, long size) throws IOException {
        long from = size;
        while (from > 0) {
            int length = (int) Math.min(BLOCK, from);
            from -= length;
            byte[] block = file.read(from, length);
            for (int i = block.length - 1; i >= 0; i--) {
                if (block[i] == '\n') {
                    return from + i + 1;
                }
            }
        }
        return 0;
    }
}
