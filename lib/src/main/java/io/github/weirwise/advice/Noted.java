package io.github.weirwise.advice;

import io.github.weirwise.reading.Happening;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.Service;
import io.github.weirwise.reading.SettingChange;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * All that the guard goes by of a journal, taken up entry by entry in one walk: of a size that does not grow with the journal, so
 * that it can be kept in its place. Immutable.
 *
 * @param unit nominal data of the unit
 * @param start settings before the first entry
 * @param begun when the first entry was made
 * @param settings settings as noted after the last one
 * @param flood the flood that the journal ends with, however old; empty when calm foam was seen since
 * @param air how the air was changed
 * @param parts what is known of each, in the order of {@link Part}
 * @param levels levels read against what the settings give
 * @param weir what amounts came at which crests
 * @param changedAt when weir, air, flow or a part were last changed
 * @param latest when and what was newest of some kinds
 */
record Noted(
        SkimmerUnit unit,
        Settings start,
        Optional<Instant> begun,
        Settings settings,
        Optional<FloodSeen> flood,
        AirNoted air,
        List<PartSeen> parts,
        LevelsNoted levels,
        WeirNoted weir,
        Optional<Instant> changedAt,
        Latest latest) {

    /**
     * The newest of some kinds of entry.
     *
     * @param reading the newest reading
     * @param visit all that was read at its visit, the newest first
     * @param pumps the newest stop or restart of pumps
     * @param runningAt when something showed that pumps run
     * @param foamAt when cup or foam were looked at
     * @param saltAt when the salinity was measured
     * @param deathAt when an animal died, unless water was changed since
     * @param crestMeasured whether the crest was measured since the weir was moved
     */
    record Latest(
            Optional<Reading> reading,
            List<Observation> visit,
            Optional<Happening> pumps,
            Optional<Instant> runningAt,
            Optional<Instant> foamAt,
            Optional<Instant> saltAt,
            Optional<Instant> deathAt,
            boolean crestMeasured) {
        private static final Duration VISIT = Duration.ofHours(2);

        private static final Latest NONE = new Latest(
                Optional.empty(),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                false);

        private List<Observation> visitWith(Reading seen) {
            List<Observation> all = new ArrayList<>(seen.observations());
            boolean same = reading.filter(
                            last -> Duration.between(last.at(), seen.at()).compareTo(VISIT) < 0)
                    .isPresent();
            if (same) {
                visit.stream()
                        .filter(old -> all.stream().noneMatch(each -> sameKind(old, each)))
                        .forEach(all::add);
            }
            return List.copyOf(all);
        }

        private static boolean sameKind(Observation one, Observation other) {
            return one instanceof Observation.Inspection look && other instanceof Observation.Inspection next
                    ? look.part() == next.part()
                    : one.getClass() == other.getClass();
        }

        private Latest after(JournalEntry entry) {
            if (entry instanceof Reading seen) {
                Optional<Instant> at = Optional.of(seen.at());
                return new Latest(
                        Optional.of(seen),
                        visitWith(seen),
                        pumps,
                        PumpRules.showsRunning(seen) ? at : runningAt,
                        FloodSeen.tells(seen) ? at : foamAt,
                        seen.find(Observation.Salinity.class).isPresent() ? at : saltAt,
                        deathAt,
                        crestMeasured
                                || seen.find(Observation.CrestAgainstMark.class).isPresent());
            }
            if (entry instanceof Happening what) {
                return new Latest(
                        reading,
                        visit,
                        PumpRules.isAboutPumps(what) ? Optional.of(what) : pumps,
                        runningAt,
                        foamAt,
                        saltAt,
                        switch (what.kind()) {
                            case ANIMAL_DIED -> Optional.of(what.at());
                            case WATER_CHANGE -> Optional.empty();
                            default -> deathAt;
                        },
                        crestMeasured);
            }
            return entry instanceof WeirMove
                    ? new Latest(reading, visit, pumps, runningAt, foamAt, saltAt, deathAt, false)
                    : this;
        }
    }

    /** Before the first entry. */
    static Noted nothing(SkimmerUnit unit, Settings start) {
        return new Noted(
                unit,
                start,
                Optional.empty(),
                start,
                Optional.empty(),
                AirNoted.before(unit, start),
                Collections.nCopies(Part.values().length, PartSeen.NEVER),
                LevelsNoted.NONE,
                WeirNoted.NONE,
                Optional.empty(),
                Latest.NONE);
    }

    /** After a journal, every entry of it. */
    static Noted of(SkimmerUnit unit, Settings start, Journal journal) {
        return nothing(unit, start).after(journal.entries());
    }

    /** After further entries, in their order. */
    Noted after(List<JournalEntry> entries) {
        LevelsNoted.Expected expected = new LevelsNoted.Expected(unit);
        Noted noted = this;
        for (JournalEntry entry : entries) {
            noted = noted.after(entry, expected);
        }
        return noted;
    }

    private Noted after(JournalEntry entry, LevelsNoted.Expected expected) {
        Settings next = entry.settingsAfter(settings);
        Optional<FloodSeen> seen = FloodSeen.after(flood, entry, latest.reading(), settings, next, unit);
        return new Noted(
                unit,
                start,
                begun.isPresent() ? begun : Optional.of(entry.at()),
                next,
                seen,
                air.after(entry, settings, next, seen),
                partsAfter(entry, next),
                levels.after(entry, next, expected),
                weir.after(
                        entry,
                        next,
                        seen.filter(each -> each.at().equals(entry.at())).isPresent(),
                        changedAt,
                        unit),
                entry instanceof WeirMove || entry instanceof SettingChange || entry instanceof Service
                        ? Optional.of(entry.at())
                        : changedAt,
                latest.after(entry));
    }

    private List<PartSeen> partsAfter(JournalEntry entry, Settings next) {
        Set<Part> told = PartSeen.toldBy(entry);
        if (told.isEmpty()) {
            return parts;
        }
        List<PartSeen> changed = new ArrayList<>(parts);
        told.forEach(part -> changed.set(part.ordinal(), part(part).after(entry, part, next, start)));
        return changed;
    }

    PartSeen part(Part part) {
        return parts.get(part.ordinal());
    }
}
