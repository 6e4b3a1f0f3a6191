package io.github.weirwise.json;

import io.github.weirwise.care.CarePlan;
import io.github.weirwise.care.CareTask;
import io.github.weirwise.diagnosis.LearningPlan;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.report.Require;
import io.github.weirwise.setup.Installation;
import io.github.weirwise.table.DateOrder;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import io.github.weirwise.watch.SensorValue;
import io.github.weirwise.watch.WatchState;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/** What each operation is asked with, a record each; advice is asked with a {@link Request}. */
final class Asked {
    static final Shapes SHAPES = new Shapes();

    private Asked() {}

    /** How a unit runs with settings. */
    record Point(SkimmerUnit unit, Settings settings) {}

    /** Whether a unit fits, or how it is started. */
    record Site(Installation installation) {}

    /**
     * What is due.
     *
     * @param vesselMl what the cup holds, or the container that it drains into; 0 when that is not known
     */
    record Upkeep(Journal journal, Instant now, double vesselMl) {
        CarePlan plan() {
            return vesselMl == 0 ? CarePlan.of(journal, now) : CarePlan.of(journal, now, vesselMl);
        }
    }

    /**
     * What is due on which day, as an iCalendar file.
     *
     * @param name what the unit's keeper calls it
     * @param zone its time zone
     * @param days how many days
     * @param tasks which tasks; none means all but the daily look
     */
    record Calendar(
            Journal journal, Instant now, double vesselMl, String name, ZoneId zone, int days, List<CareTask> tasks) {
        Calendar {
            Require.text("name", name);
        }

        Upkeep upkeep() {
            return new Upkeep(journal, now, vesselMl);
        }
    }

    /**
     * A table of readings.
     *
     * @param lines of a CSV file, the headings first
     * @param zone time zone of times without an offset
     * @param dateOrder how days such as 5/1/2026 are meant
     * @param soundRowsOnly whether rows with a fault are left out instead of the whole table
     */
    record Table(List<String> lines, ZoneId zone, DateOrder dateOrder, boolean soundRowsOnly) {
        String text() {
            return String.join("\n", lines);
        }
    }

    /**
     * Advice from what was kept of a journal.
     *
     * @param state what the last answer gave; left out the first time
     * @param unit the unit, the first time
     * @param settings as they were before the first entry, the first time
     * @param journal the entries since, the first time all of them
     */
    record Extension(
            Optional<StateText> state,
            Optional<SkimmerUnit> unit,
            Optional<Settings> settings,
            Journal journal,
            Instant now) {}

    /**
     * A plan to learn a unit, and its step.
     *
     * @param wish what the keeper allows; the usual when it is left out
     * @param plan the plan that runs, as it was told; left out the first time
     */
    record Learning(
            SkimmerUnit unit,
            Settings settings,
            Journal journal,
            Instant now,
            Optional<LearningPlan.Wish> wish,
            Optional<LearningPlan> plan) {}

    /** A journal whose own readings are forecast. */
    record Past(SkimmerUnit unit, Settings settings, Journal journal) {}

    /**
     * What sensors said since the state was given.
     *
     * @param settings as they were before the first entry of the journal
     * @param state what the last answer gave; left out the first time
     * @param values in the order in which they came
     * @param tick the host's time after them
     */
    record Watch(
            SkimmerUnit unit,
            Settings settings,
            Journal journal,
            Optional<WatchState> state,
            List<SensorValue> values,
            Optional<Instant> tick) {}
}
