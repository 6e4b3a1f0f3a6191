package io.github.weirwise.json;

import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.report.Phrase;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;

/** One line of a journal file as bytes, its end not included. */
record JournalLine(byte[] bytes) {
    private static final Shapes SHAPES = new Shapes();
    private static final Shape<JournalItem> ITEM = JournalItem.shape(SHAPES.of(JournalEntry.class));
    private static final Document<JournalHeader> HEADER = new Document<>(SHAPES.of(JournalHeader.class));
    static final String HEADER_START = "{\"version\":";
    private static final int SHOWN = 200;

    /**
     * The line of an entry.
     *
     * @throws DocumentException if it could not be read again, so that nothing unreadable is ever written
     */
    static JournalLine of(JournalItem item) {
        JournalLine line = checked(Tree.print(ITEM.write(item)));
        if (!line.item().equals(item)) {
            throw new DocumentException("$", Phrase.of("json.entryDoesNot"), Phrase.of("json.usePlainUnicode"));
        }
        return line;
    }

    static JournalLine of(JournalHeader header) {
        JournalLine line = checked(HEADER.write(header));
        if (!line.header().equals(header)) {
            throw new DocumentException("$", Phrase.of("json.headerDoesNot"), Phrase.of("json.usePlainUnicode"));
        }
        return line;
    }

    private static JournalLine checked(String object) {
        return new JournalLine(LineCheck.with(object.getBytes(StandardCharsets.UTF_8)));
    }

    JournalItem item() {
        return ITEM.read(Parser.parse(text()));
    }

    JournalHeader header() {
        return HEADER.read(text());
    }

    /** Whether it begins as headers do. */
    boolean isHeader() {
        int length = Math.min(bytes.length, HEADER_START.length());
        return new String(bytes, 0, length, StandardCharsets.ISO_8859_1).equals(HEADER_START);
    }

    boolean isBlank() {
        return bytes.length < SHOWN && new String(bytes, StandardCharsets.UTF_8).isBlank();
    }

    boolean isEntry() {
        try {
            item();
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

    /** White space before it does no harm. */
    private boolean startsWithBrace() {
        int at = 0;
        while (at < bytes.length && (bytes[at] == ' ' || bytes[at] == '\t' || bytes[at] == '\r')) {
            at++;
        }
        return at < bytes.length && bytes[at] == '{';
    }

    private String text() {
        if (bytes.length > DocumentLimits.LONGEST_LINE_BYTES) {
            throw new DocumentException(
                    "$",
                    Phrase.of("json.lineBytes", bytes.length, DocumentLimits.LONGEST_LINE_BYTES),
                    Phrase.of("json.keepEntriesShort"));
        }
        if (!startsWithBrace()) {
            throw new DocumentException("$", Phrase.of("json.jsonObject"), Phrase.of("json.writeEachEntry"));
        }
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(LineCheck.without(bytes)))
                    .toString();
        } catch (CharacterCodingException e) {
            throw new DocumentException("$", Phrase.of("json.lineNotUtf"), Phrase.of("json.saveFileUtf"), e);
        }
    }
}
