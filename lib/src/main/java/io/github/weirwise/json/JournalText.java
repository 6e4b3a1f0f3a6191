package io.github.weirwise.json;

import java.util.Arrays;
import java.util.function.Consumer;

/** A journal file's bytes as numbered lines, one at a time; blank ones are passed over. */
final class JournalText {
    /**
     * @param number from 1
     * @param line its bytes
     * @param ended whether a line end follows
     */
    record Line(int number, JournalLine line, boolean ended) {}

    private JournalText() {}

    static void each(byte[] bytes, Consumer<Line> reader) {
        int start = 0;
        int number = 1;
        for (int i = 0; i <= bytes.length; i++) {
            boolean end = i == bytes.length;
            if (end || bytes[i] == '\n') {
                JournalLine line = new JournalLine(Arrays.copyOfRange(bytes, start, i));
                if (!line.isBlank()) {
                    reader.accept(new Line(number, line, !end));
                }
                start = i + 1;
                number++;
            }
        }
    }
}
