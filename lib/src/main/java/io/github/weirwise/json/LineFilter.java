package io.github.weirwise.json;

import io.github.weirwise.report.Phrase;
import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.ByteArrayOutputStream;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;

/**
 * A program that answers requests line by line, so that a program in any language can use the library: one request document
 * a line in, one answer or one error document a line out, in the same order, UTF-8, until the input ends.
 *
 * <p>A bad line gives an error document and the next line is read as if nothing had been. Each answer is flushed, so a host
 * may wait for it before it asks again. Exit status: 0 at the end of the input, 1 when the output cannot be written, 2 for a
 * wrong call.
 *
 * @since 0.1
 */
public final class LineFilter {
    /** Bytes in one line; more are passed over. */
    static final int LONGEST_LINE_BYTES = 3 * DocumentLimits.MOST_CHARACTERS;

    private LineFilter() {}

    /**
     * Runs on standard input and output.
     *
     * @param args none, or {@code --schema} and the name of a schema, which is written instead
     */
    public static void main(String[] args) {
        boolean schema = args.length == 2 && args[0].equals("--schema") && Schemas.NAMES.contains(args[1]);
        if (args.length > 0 && !schema) {
            System.err.println(
                    "One request a line on standard input, one answer or error a line out; or --schema and one of "
                            + String.join(", ", Schemas.NAMES));
            System.exit(2);
        }
        try (OutputStream out = new FileOutputStream(FileDescriptor.out)) {
            if (schema) {
                out.write(Schemas.text(args[1]).getBytes(StandardCharsets.UTF_8));
                return;
            }
            filter(System.in, out);
        } catch (IOException e) {
            System.err.println("Stopped: " + e.getMessage());
            System.exit(1);
        }
    }

    /**
     * Answers every line of the input.
     *
     * @param in requests; read to its end, not closed
     * @param out answers; flushed after each, not closed
     * @throws IOException if reading or writing fails
     */
    public static void filter(InputStream in, OutputStream out) throws IOException {
        InputStream requests = new BufferedInputStream(in);
        OutputStream answers = new BufferedOutputStream(out);
        for (Line line = Line.next(requests); line != null; line = Line.next(requests)) {
            answers.write(answer(line).getBytes(StandardCharsets.UTF_8));
            answers.write('\n');
            answers.flush();
        }
    }

    private static String answer(Line line) {
        try {
            return WeirwiseJson.reply(line.text());
        } catch (DocumentException e) {
            return new ServiceLine().error(e);
        }
    }

    /**
     * @param bytes the line without its end, cut at the limit
     * @param whole whether nothing was cut
     */
    private record Line(byte[] bytes, boolean whole) {
        /** The next line; null at the end of the input. */
        static Line next(InputStream in) throws IOException {
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            boolean whole = true;
            int next = in.read();
            if (next < 0) {
                return null;
            }
            while (next >= 0 && next != '\n') {
                if (bytes.size() < LONGEST_LINE_BYTES) {
                    bytes.write(next);
                } else {
                    whole = false;
                }
                next = in.read();
            }
            return new Line(bytes.toByteArray(), whole);
        }

        String text() {
            if (!whole) {
                throw new DocumentException(
                        "$", Phrase.of("json.lineMoreThan", LONGEST_LINE_BYTES), Phrase.of("json.sendFewerJournal"));
            }
            try {
                return StandardCharsets.UTF_8
                        .newDecoder()
                        .decode(ByteBuffer.wrap(bytes))
                        .toString();
            } catch (CharacterCodingException e) {
                throw new DocumentException("$", Phrase.of("json.lineNotUtf"), Phrase.of("json.encodeRequestsUtf"), e);
            }
        }
    }
}
