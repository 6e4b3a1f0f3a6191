package io.github.weirwise.table;

import io.github.weirwise.report.Phrase;
import io.github.weirwise.table.TableUnit.Kind;
import io.github.weirwise.table.WrittenNumber.Marks;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * How the writer of a table writes days and numbers, told from all of it: a day over 12 shows the order, a number such as 22,5
 * the decimal mark.
 *
 * @param order order of day and month; unstated when nothing tells it
 * @param seen kinds of marks that occur in columns of numbers
 * @param commaParts whether the comma parts the cells, so that a point is the usual decimal mark
 */
record TableHabits(DateOrder order, Set<Marks> seen, boolean commaParts) {
    /** Copies the set. */
    TableHabits {
        seen = Set.copyOf(seen);
    }

    /** Looks through a table. */
    static TableHabits of(TableHeader header, List<CsvRows.Row> rows, DateOrder stated) {
        Set<DateOrder> orders = EnumSet.noneOf(DateOrder.class);
        Set<Marks> seen = EnumSet.noneOf(Marks.class);
        for (CsvRows.Row row : rows) {
            orders.add(TableMoment.order(header.moment(row)));
            for (int i = 0; i < header.headings().size(); i++) {
                TableHeading heading = header.headings().get(i);
                if (heading.isKnown() && heading.column().kind() != Kind.NONE) {
                    WrittenNumber.of(row.cell(i).strip()).ifPresent(number -> seen.add(number.marks()));
                }
            }
        }
        orders.remove(DateOrder.UNSTATED);
        DateOrder told = orders.size() == 1 ? orders.iterator().next() : DateOrder.UNSTATED;
        DateOrder named = header.order() == DateOrder.UNSTATED ? stated : header.order();
        return new TableHabits(named == DateOrder.UNSTATED ? told : named, seen, header.separator() == ',');
    }

    /**
     * The value of a number.
     *
     * @param pointOnly whether a point can only be a decimal mark here, as in a specific gravity
     * @param shown the cell's text, short enough for a message
     */
    double value(WrittenNumber number, boolean pointOnly, String shown) throws Unfit {
        return switch (number.marks()) {
            case NONE, POINT -> number.value('.');
            case COMMA -> {
                if (isPoint() && commaParts) {
                    throw new Unfit(Phrase.of("table.noNumber", shown));
                }
                yield number.value(',');
            }
            case EITHER_POINT -> number.value(pointOnly ? '.' : mark(commaParts, shown));
            case EITHER_COMMA -> number.value(pointOnly ? ',' : mark(false, shown));
        };
    }

    private char mark(boolean pointIsUsual, String shown) throws Unfit {
        if (seen.contains(Marks.COMMA) && !seen.contains(Marks.POINT)) {
            return ',';
        }
        if (isPoint() && !seen.contains(Marks.COMMA) || pointIsUsual) {
            return '.';
        }
        throw new Unfit(Phrase.of("table.eitherMark", shown));
    }

    private boolean isPoint() {
        return seen.contains(Marks.POINT);
    }
}
