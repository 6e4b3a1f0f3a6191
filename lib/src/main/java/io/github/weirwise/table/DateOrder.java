package io.github.weirwise.table;

/**
 * How days such as 5/1/2026 are meant. A year that stands first, and dots between the numbers, leave no doubt.
 */
public enum DateOrder {
    /** Told by the heading or by a day over 12 in the same table, else asked. */
    UNSTATED,
    /** 5/1/2026 is the fifth of January. */
    DAY_FIRST,
    /** 5/1/2026 is the first of May. */
    MONTH_FIRST
}
