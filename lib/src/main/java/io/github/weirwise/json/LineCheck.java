package io.github.weirwise.json;

import io.github.weirwise.report.Phrase;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.zip.CRC32;

/**
 * The checksum at the end of a line of a journal file: a last member {@code check} of eight hexadecimal digits, the CRC-32 (as
 * in ISO/IEC/IEEE 8802-3 and in gzip, RFC 1952) of all bytes of the line before the comma in front of it. A line without
 * it is taken as it stands, so that other programs need not write it.
 */
final class LineCheck {
    private static final byte[] MEMBER = ",\"check\":\"".getBytes(StandardCharsets.US_ASCII);
    private static final byte[] END = "\"}".getBytes(StandardCharsets.US_ASCII);
    private static final int DIGITS = 8;
    private static final int LENGTH = MEMBER.length + DIGITS + END.length;

    private LineCheck() {}

    /** An object's line with its checksum. */
    static byte[] with(byte[] object) {
        int body = object.length - 1;
        byte[] line = Arrays.copyOf(object, body + LENGTH);
        byte[] digits = digits(object, body);
        System.arraycopy(MEMBER, 0, line, body, MEMBER.length);
        System.arraycopy(digits, 0, line, body + MEMBER.length, DIGITS);
        System.arraycopy(END, 0, line, body + MEMBER.length + DIGITS, END.length);
        return line;
    }

    /**
     * The object without its checksum.
     *
     * @throws DocumentException if the checksum is that of another line
     */
    static byte[] without(byte[] line) {
        int length = line.length > 0 && line[line.length - 1] == '\r' ? line.length - 1 : line.length;
        int body = length - LENGTH;
        int digits = body + MEMBER.length;
        if (body < 1
                || !Arrays.equals(line, body, digits, MEMBER, 0, MEMBER.length)
                || !Arrays.equals(line, length - END.length, length, END, 0, END.length)) {
            return line;
        }
        if (!Arrays.equals(line, digits, digits + DIGITS, digits(line, body), 0, DIGITS)) {
            throw new DocumentException("$.check", Phrase.of("json.doesNotFit"), Phrase.of("json.takeMemberCheck"));
        }
        byte[] object = Arrays.copyOf(line, body + 1);
        object[body] = '}';
        return object;
    }

    private static byte[] digits(byte[] bytes, int length) {
        CRC32 sum = new CRC32();
        sum.update(bytes, 0, length);
        String digits = Long.toHexString(sum.getValue() | 1L << 32).substring(1);
        return digits.getBytes(StandardCharsets.US_ASCII);
    }
}
