package io.github.weirwise.diagnosis;

import io.github.weirwise.reading.Happening;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.Service;
import io.github.weirwise.reading.SettingChange;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.report.Times;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import io.github.weirwise.unit.SteadyInputs;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** The journal replayed from the start settings, with times in hours and now at 0. Entries after now are left out. */
final class Timeline {
    /** A reading with the hour it was taken. */
    record TimedReading(double hours, Reading reading) {}

    /** A service with its hour. */
    record TimedService(double hours, Part part) {}

    /** A happening with its hour. */
    record TimedHappening(double hours, Happening.Kind kind) {}

    private final List<Segment> segments = new ArrayList<>();
    private final List<TimedReading> readings = new ArrayList<>();
    private final List<TimedService> services = new ArrayList<>();
    private final List<TimedHappening> happenings = new ArrayList<>();
    private final double startHours;

    Timeline(SkimmerUnit unit, Settings start, Journal journal, Instant now) {
        Settings settings = start;
        List<JournalEntry> known = journal.until(now).entries();
        startHours = known.isEmpty() ? 0 : hours(known.get(0).at(), now);
        segments.add(new Segment(Double.NEGATIVE_INFINITY, start, SteadyInputs.of(unit, start)));
        for (JournalEntry entry : known) {
            double at = hours(entry.at(), now);
            if (entry instanceof WeirMove move) {
                settings = change(unit, at, settings.withWeirCrestMm(move.toCrestMm()));
            } else if (entry instanceof SettingChange change) {
                settings = change(unit, at, changed(settings, change));
            } else if (entry instanceof Reading reading) {
                readings.add(new TimedReading(at, reading));
            } else if (entry instanceof Service service) {
                services.add(new TimedService(at, service.part()));
            } else if (entry instanceof Happening happening) {
                happenings.add(new TimedHappening(at, happening.kind()));
            }
        }
    }

    private Settings change(SkimmerUnit unit, double at, Settings settings) {
        segments.add(new Segment(at, settings, SteadyInputs.of(unit, settings)));
        return settings;
    }

    private static Settings changed(Settings settings, SettingChange change) {
        return change.what() == SettingChange.Knob.FLOW
                ? settings.withFlowLitresPerHour(change.litresPerHour())
                : settings.withAirLitresPerHour(change.litresPerHour());
    }

    private static double hours(Instant at, Instant now) {
        return 24 * Times.days(now, at);
    }

    List<Segment> segments() {
        return segments;
    }

    Segment current() {
        return segments.get(segments.size() - 1);
    }

    List<TimedReading> readings() {
        return readings;
    }

    List<TimedService> services() {
        return services;
    }

    List<TimedHappening> happenings() {
        return happenings;
    }

    /** Hours of the first entry, 0 or negative. */
    double startHours() {
        return startHours;
    }

    /** Index of the segment that holds at an hour. */
    int segmentAt(double hours) {
        int index = segments.size() - 1;
        while (index > 0 && segments.get(index).fromHours() > hours) {
            index--;
        }
        return index;
    }

    /** Hour of the newest service of a part at or before {@code until} and after {@code from}, or NaN. */
    double servicedBetween(Part part, double from, double until) {
        double found = Double.NaN;
        for (TimedService service : services) {
            if (service.part() == part && service.hours() > from && service.hours() <= until) {
                found = service.hours();
            }
        }
        return found;
    }

    /** Hour of the newest happening of one of the kinds at or before {@code until}, or NaN. */
    double lastHappening(java.util.Set<Happening.Kind> kinds, double until) {
        double found = Double.NaN;
        for (TimedHappening happening : happenings) {
            if (happening.hours() <= until && kinds.contains(happening.kind())) {
                found = happening.hours();
            }
        }
        return found;
    }
}
