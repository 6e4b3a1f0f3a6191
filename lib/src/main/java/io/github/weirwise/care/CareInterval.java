package io.github.weirwise.care;

import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Require;
import io.github.weirwise.report.Unit;
import java.util.List;
import java.util.Objects;

/**
 * How often a task comes on one unit, days: the usual interval, moved by the journal within the task's limits.
 *
 * <p>Of the last {@value #SPANS} spans that tell something: a part that fouls sooner than usual comes after the median time
 * to the first sign of dirt; a part that was seen clean for longer than usual in all of them comes after the shortest of
 * them. Our own rule, not a published one.
 *
 * @param task the task
 * @param days the interval
 * @param reason why it is what it is
 * @since 0.1
 */
public record CareInterval(CareTask task, double days, Phrase reason) {
    static final int SPANS = 3;
    static final double FILLED = 0.7;
    private static final int AMOUNTS = 5;

    /** Rejects nulls. */
    public CareInterval {
        Objects.requireNonNull(task, "task");
        Objects.requireNonNull(reason, "reason");
    }

    /** The interval that a journal asks for. */
    public static CareInterval of(CareTask task, Journal journal) {
        List<Fouling.Span> spans = newest(Fouling.of(journal, task).spans());
        List<Double> fouled = spans.stream()
                .filter(Fouling.Span::fouled)
                .map(Fouling.Span::days)
                .sorted()
                .toList();
        if (!fouled.isEmpty()) {
            double median = fouled.get((fouled.size() - 1) / 2);
            return median < task.usualDays() ? moved(task, "care.sooner", median) : usual(task);
        }
        double shortest = spans.stream().mapToDouble(Fouling.Span::days).min().orElse(0);
        boolean later = spans.size() == SPANS && shortest > task.usualDays();
        return later ? moved(task, "care.later", shortest) : usual(task);
    }

    /**
     * How often a cup, or the container that it drains into, is emptied: before the amounts that the journal tells of have
     * filled {@value #FILLED} of it; the usual interval when it tells of none.
     *
     * @param vesselMl what the vessel holds, 10 to 1e6 mL
     * @throws io.github.weirwise.report.OutOfRangeException if the vessel is out of its range
     */
    public static CareInterval ofEmptying(Journal journal, double vesselMl) {
        Require.inRange("vesselMl", vesselMl, 10, 1e6, "mL", "give what cup or container holds");
        List<Double> rates = journal.all(Reading.class).stream()
                .flatMap(reading -> reading.find(Observation.CupVolume.class).stream())
                .map(Observation.CupVolume::mlPerDay)
                .toList();
        List<Double> newest = rates.subList(Math.max(0, rates.size() - AMOUNTS), rates.size());
        double most = newest.stream().mapToDouble(Double::doubleValue).max().orElse(0);
        if (most <= 0) {
            return usual(CareTask.EMPTY_CUP);
        }
        double days = CareTask.EMPTY_CUP.limitDays().clamp(FILLED * vesselMl / most);
        return new CareInterval(
                CareTask.EMPTY_CUP,
                days,
                Phrase.of(
                        "care.emptying",
                        Quantity.of(vesselMl / 1000, Unit.LITRE),
                        Quantity.of(most, Unit.MILLILITRE_PER_DAY),
                        days(days)));
    }

    private static CareInterval usual(CareTask task) {
        return new CareInterval(task, task.usualDays(), task.usually());
    }

    private static CareInterval moved(CareTask task, String key, double seenDays) {
        double days = task.limitDays().clamp(seenDays);
        return new CareInterval(task, days, Phrase.of(key, days(seenDays), days(days)));
    }

    private static List<Fouling.Span> newest(List<Fouling.Span> spans) {
        return spans.subList(Math.max(0, spans.size() - SPANS), spans.size());
    }

    private static Quantity days(double value) {
        return Quantity.of(value, Unit.DAY);
    }
}
