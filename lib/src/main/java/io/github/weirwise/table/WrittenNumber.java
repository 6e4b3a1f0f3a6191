package io.github.weirwise.table;

import java.util.Optional;

/**
 * A number as it stands in a cell: digits with points and commas, and what follows them.
 *
 * @param marks what its points and commas can mean
 * @param digits sign, digits, marks and exponent as they stand
 * @param unit what follows, stripped
 */
record WrittenNumber(Marks marks, String digits, String unit) {
    /** What the marks in a number say about the decimal mark of its writer. */
    enum Marks {
        /** There are none. */
        NONE,
        /** Decimal point for certain: 22.5 or 1,234.5. */
        POINT,
        /** Decimal comma for certain: 22,5 or 1.234,5. */
        COMMA,
        /** One point before three digits: 2.200. */
        EITHER_POINT,
        /** One comma before three digits: 2,200. */
        EITHER_COMMA
    }

    private static final int LONGEST = 34;

    /** Takes a cell apart, if a number stands at its front. */
    static Optional<WrittenNumber> of(String text) {
        Scanner scanner = new Scanner(text);
        String sign = scanner.peek() == '+' || scanner.peek() == '-' ? String.valueOf(scanner.peek()) : "";
        scanner.take("+-");
        String body = scanner.run("0123456789.,");
        if (body.isEmpty() || body.length() > LONGEST || !Character.isDigit(body.charAt(0))) {
            return Optional.empty();
        }
        Optional<Marks> marks = marks(body);
        String exponent = exponent(scanner);
        return marks.map(found -> new WrittenNumber(found, sign + body + exponent, scanner.rest()));
    }

    /** Its value when the decimal mark is known. */
    double value(char decimalMark) {
        String plain = digits.replace(decimalMark == '.' ? "," : ".", "");
        return Double.parseDouble(plain.replace(',', '.'));
    }

    private static String exponent(Scanner scanner) {
        if (scanner.peek() != 'e' && scanner.peek() != 'E') {
            return "";
        }
        scanner.take("eE");
        boolean negative = scanner.peek() == '-';
        scanner.take("+-");
        int power = scanner.digits(1, 3);
        return power < 0 ? "e" : "e" + (negative ? -power : power);
    }

    private static Optional<Marks> marks(String body) {
        long points = count(body, '.');
        long commas = count(body, ',');
        if (points == 0 && commas == 0) {
            return Optional.of(Marks.NONE);
        }
        if (points > 0 && commas > 0) {
            char last = body.lastIndexOf('.') > body.lastIndexOf(',') ? '.' : ',';
            char groups = last == '.' ? ',' : '.';
            boolean sound = count(body, last) == 1 && isGrouped(body.substring(0, body.lastIndexOf(last)), groups);
            return sound ? Optional.of(last == '.' ? Marks.POINT : Marks.COMMA) : Optional.empty();
        }
        char only = points > 0 ? '.' : ',';
        boolean grouped = isGrouped(body, only);
        if (points + commas > 1) {
            return grouped ? Optional.of(only == '.' ? Marks.COMMA : Marks.POINT) : Optional.empty();
        }
        if (grouped && body.charAt(0) != '0') {
            return Optional.of(only == '.' ? Marks.EITHER_POINT : Marks.EITHER_COMMA);
        }
        return Optional.of(only == '.' ? Marks.POINT : Marks.COMMA);
    }

    /** One to three digits, then groups of three behind the mark. */
    private static boolean isGrouped(String body, char mark) {
        int first = body.indexOf(mark);
        if (first < 1 || first > 3) {
            return false;
        }
        boolean sound = (body.length() - first) % 4 == 0;
        for (int i = first; i < body.length() && sound; i++) {
            sound = (i - first) % 4 == 0 == (body.charAt(i) == mark);
        }
        return sound;
    }

    private static long count(String body, char mark) {
        return body.chars().filter(c -> c == mark).count();
    }
}
