package io.github.weirwise.json;

import io.github.weirwise.reading.JournalEntry;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;

/** One line of a journal file as bytes, its end not included. */
record JournalLine(byte[] bytes) {
    private static final Shapes SHAPES = new Shapes();
    private static final Shape<JournalEntry> ENTRY = SHAPES.of(JournalEntry.class);
    private static final Document<JournalHeader> HEADER = new Document<>(SHAPES.of(JournalHeader.class));
    private static final int SHOWN = 200;

    /**
     * The line of an entry.
     *
     * @throws DocumentException if it could not be read again, so that nothing unreadable is ever written
     */
    static JournalLine of(JournalEntry entry) {
        Objects.requireNonNull(entry, "entry");
        JournalLine line = new JournalLine(Parser.print(ENTRY.write(entry)).getBytes(StandardCharsets.UTF_8));
        if (!line.entry().equals(entry)) {
            throw new DocumentException("$", "the entry does not survive being written", "use plain Unicode text");
        }
        return line;
    }

    static JournalLine of(JournalHeader header) {
        JournalLine line = new JournalLine(HEADER.write(header).getBytes(StandardCharsets.UTF_8));
        if (!line.header().equals(header)) {
            throw new DocumentException("$", "the header does not survive being written", "use plain Unicode text");
        }
        return line;
    }

    JournalEntry entry() {
        return ENTRY.read(Parser.parse(text()));
    }

    JournalHeader header() {
        return HEADER.read(text());
    }

    boolean isBlank() {
        return bytes.length < SHOWN && new String(bytes, StandardCharsets.UTF_8).isBlank();
    }

    boolean isEntry() {
        try {
            entry();
            return true;
        } catch (DocumentException e) {
            return false;
        }
    }

    /** Its beginning, for a person. */
    String shown() {
        int length = Math.min(bytes.length, 4 * SHOWN);
        return Quote.plain(new String(bytes, 0, length, StandardCharsets.UTF_8), SHOWN);
    }

    private String text() {
        if (bytes.length > DocumentLimits.LONGEST_LINE_BYTES) {
            throw new DocumentException(
                    "$",
                    "the line has " + bytes.length + " bytes, may have " + DocumentLimits.LONGEST_LINE_BYTES,
                    "keep entries short");
        }
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            throw new DocumentException("$", "the line is not UTF-8", "save the file as UTF-8", e);
        }
    }
}
