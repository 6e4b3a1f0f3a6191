package io.github.weirwise.report;

import java.util.Optional;

/**
 * A number lies outside the limits in which it has a meaning. The message is English and metric; {@link #problem()} and
 * {@link #tryThis()} are its two halves for readers of other languages and units.
 *
 * @since 0.1
 */
public final class OutOfRangeException extends IllegalArgumentException {
    private static final long serialVersionUID = 2L;

    private final String name;
    private final double value;
    private final double low;
    private final double high;
    private final transient Unit unit;
    private final transient Phrase problem;
    private final transient Phrase tryThis;
    private transient String message;

    /** For a limit whose unit people know. */
    OutOfRangeException(Limit limit, double value, double low, double high) {
        this.name = limit.name();
        this.value = value;
        this.low = low;
        this.high = high;
        unit = limit.unit();
        problem = Phrase.of("report.outOfRange", name, Bounds.of(value, unit), new Bounds(low, high, unit));
        tryThis = limit.tryThis();
    }

    /** For a formula's limit, in a unit of physics. */
    OutOfRangeException(String name, double value, double low, double high, String unit, String tryThis) {
        this.name = name;
        this.value = value;
        this.low = low;
        this.high = high;
        this.unit = Unit.PLAIN;
        problem = Phrase.of(
                unit.isEmpty() ? "report.outOfRange" : "report.outOfRange.unit",
                unit.isEmpty()
                        ? new Object[] {name, Bounds.of(value, Unit.PLAIN), new Bounds(low, high, Unit.PLAIN)}
                        : new Object[] {name, Bounds.of(value, Unit.PLAIN), new Bounds(low, high, Unit.PLAIN), unit});
        this.tryThis = Phrase.of("report.words", tryThis);
    }

    /** Made when somebody reads it: a stream of sensor values is checked by the thousand and mostly silently. */
    @Override
    public String getMessage() {
        if (message == null) {
            // Sent through a stream, the exception keeps its numbers but not its phrases.
            message = problem == null
                    ? name + " is " + value + ", must be " + low + " to " + high
                    : PhraseBook.ENGLISH_METRIC.say(problem) + "; " + PhraseBook.ENGLISH_METRIC.say(tryThis);
        }
        return message;
    }

    /** Name of the value. */
    public String name() {
        return name;
    }

    /** The value given. */
    public double value() {
        return value;
    }

    /** The limits. */
    public Range limits() {
        return new Range(low, high);
    }

    /** The unit of value and limits, if people know it. */
    public Optional<Unit> unit() {
        return unit == Unit.PLAIN ? Optional.empty() : Optional.ofNullable(unit);
    }

    /** What is wrong, with the value and the limits. */
    public Phrase problem() {
        return problem;
    }

    /** What to try. */
    public Phrase tryThis() {
        return tryThis;
    }
}
