package io.github.weirwise.setup;

import io.github.weirwise.report.Range;

/** Grades numbers against a wanted and a bearable limit. */
final class Grade {
    private Grade() {}

    /** Fits up to {@code wanted}, tight up to {@code bearable}. */
    static Fit atMost(double value, double wanted, double bearable) {
        if (value <= wanted) {
            return Fit.FITS;
        }
        return value <= bearable ? Fit.TIGHT : Fit.FAILS;
    }

    /** Fits from {@code wanted} up, tight from {@code bearable} up. */
    static Fit atLeast(double value, double wanted, double bearable) {
        return atMost(-value, -wanted, -bearable);
    }

    /** Fits inside {@code wanted}, tight inside {@code bearable}. */
    static Fit inside(double value, Range wanted, Range bearable) {
        if (wanted.contains(value)) {
            return Fit.FITS;
        }
        return bearable.contains(value) ? Fit.TIGHT : Fit.FAILS;
    }

    /** Distance to the nearer end of a range, negative outside. */
    static double margin(double value, Range range) {
        return Math.min(value - range.low(), range.high() - value);
    }
}
