package io.github.weirwise.json;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A journal file's bytes as numbered lines; blank ones are passed over. */
final class JournalText {
    /**
     * @param number from 1
     * @param line its bytes
     * @param ended whether a line end follows
     */
    record Line(int number, JournalLine line, boolean ended) {}

    private JournalText() {}

    static List<Line> lines(byte[] bytes) {
        List<Line> lines = new ArrayList<>();
        int start = 0;
        int number = 1;
        for (int i = 0; i <= bytes.length; i++) {
            boolean end = i == bytes.length;
            if (end || bytes[i] == '\n') {
                JournalLine line = new JournalLine(Arrays.copyOfRange(bytes, start, i));
                if (!line.isBlank()) {
                    lines.add(new Line(number, line, !end));
                }
                start = i + 1;
                number++;
            }
        }
        return lines;
    }
}
