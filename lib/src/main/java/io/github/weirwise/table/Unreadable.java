package io.github.weirwise.table;

/** A table as a whole cannot be read. */
final class Unreadable extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient TableFault fault;

    Unreadable(TableFault fault) {
        super(fault.what().key(), null, false, false);
        this.fault = fault;
    }

    TableFault fault() {
        return fault;
    }
}
