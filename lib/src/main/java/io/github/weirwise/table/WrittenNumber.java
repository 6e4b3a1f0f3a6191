package io.github.weirwise.table;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A number as it stands in a cell: digits with points, commas, and blanks or apostrophes between thousands, and what follows them.
 *
 * @param marks what its points and commas can mean
 * @param digits sign, digits, marks and exponent as they stand
 * @param unit what follows, stripped
 */
record WrittenNumber(Marks marks, String digits, String unit) {
    /** What the marks in a number say about the decimal mark of its writer; the first that fits. */
    enum Marks {
        /** There are none. */
        NONE("\\d+"),
        /** One point before three digits: 2.200. */
        EITHER_POINT("[1-9]\\d{0,2}\\.\\d{3}"),
        /** One comma before three digits: 2,200. */
        EITHER_COMMA("[1-9]\\d{0,2},\\d{3}"),
        /** Decimal point for certain: 22.5 or 1,234.5. */
        POINT("\\d+\\.\\d*|\\d{1,3}(,\\d{3}){2,}|\\d{1,3}(,\\d{3})+\\.\\d*"),
        /** Decimal comma for certain: 22,5 or 1.234,5. */
        COMMA("\\d+,\\d*|\\d{1,3}(\\.\\d{3}){2,}|\\d{1,3}(\\.\\d{3})+,\\d*");

        private final Pattern form;

        Marks(String form) {
            this.form = Pattern.compile(form);
        }
    }

    /** No number with its unit is longer, so that no pattern meets a long text. */
    private static final int LONGEST = 100;

    private static final Pattern THOUSANDS = Pattern.compile("(?<=\\d)[ '\u2019](?=\\d{3}(?!\\d))");
    private static final Pattern NUMBER =
            Pattern.compile("([-+]?\\d[\\d.,]*+)([eE][-+]?\\d{1,3})?+(.*)", Pattern.DOTALL);
    private static final Pattern SIGN = Pattern.compile("^[-+]");

    /** Takes a cell apart, if a number stands at its front. */
    static Optional<WrittenNumber> of(String cell) {
        if (cell.length() > LONGEST) {
            return Optional.empty();
        }
        Matcher found = NUMBER.matcher(THOUSANDS.matcher(cell).replaceAll(""));
        if (!found.matches()) {
            return Optional.empty();
        }
        String body = SIGN.matcher(found.group(1)).replaceFirst("");
        String exponent = found.group(2) == null ? "" : found.group(2);
        return Stream.of(Marks.values())
                .filter(each -> each.form.matcher(body).matches())
                .findFirst()
                .map(marks -> new WrittenNumber(
                        marks, found.group(1) + exponent, found.group(3).strip()));
    }

    /** Its value when the decimal mark is known. */
    double value(char decimalMark) {
        String plain = digits.replace(decimalMark == '.' ? "," : ".", "");
        return Double.parseDouble(plain.replace(',', '.'));
    }
}
