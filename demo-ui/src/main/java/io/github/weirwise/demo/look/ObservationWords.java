package io.github.weirwise.demo.look;

import static io.github.weirwise.demo.look.Words.phrase;

import io.github.weirwise.reading.AdviceGiven;
import io.github.weirwise.reading.Happening;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Note;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.Service;
import io.github.weirwise.reading.SettingChange;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Unit;
import java.util.List;

/** What was seen and done, as phrases. */
public final class ObservationWords {
    private ObservationWords() {}

    /** One journal line. */
    public static Phrase of(JournalEntry entry) {
        if (entry instanceof Reading reading) {
            List<Phrase> parts =
                    reading.observations().stream().map(ObservationWords::of).toList();
            return parts.isEmpty() ? phrase("entry.nothing") : phrase("entry.reading", parts);
        }
        if (entry instanceof WeirMove move) {
            return phrase(move.probe() ? "entry.probe" : "entry.weir", mm(move.toCrestMm()));
        }
        if (entry instanceof SettingChange change) {
            return phrase("entry.set." + change.what(), Quantity.of(change.litresPerHour(), Unit.LITRE_PER_HOUR));
        }
        if (entry instanceof Service service) {
            return phrase("entry.service", phrase("part." + service.part()));
        }
        if (entry instanceof Happening happening) {
            return phrase("happening." + happening.kind());
        }
        if (entry instanceof AdviceGiven advice) {
            return phrase("entry.advice." + advice.followed(), advice.step());
        }
        return phrase("entry.note", ((Note) entry).text());
    }

    /** One thing seen. */
    public static Phrase of(Observation seen) {
        if (seen instanceof Observation.FunnelLevel level) {
            return level.mm() < 0 ? phrase("seen.levelBelow", mm(-level.mm())) : phrase("seen.level", mm(level.mm()));
        }
        if (seen instanceof Observation.CupVolume cup) {
            return phrase(
                    cup.full() ? "seen.cupFull" : "seen.cup",
                    Quantity.of(cup.ml(), Unit.MILLILITRE),
                    Quantity.of(cup.hours(), Unit.HOUR),
                    Quantity.of(cup.mlPerDay(), Unit.MILLILITRE_PER_DAY));
        }
        if (seen instanceof Observation.Darkness darkness) {
            return phrase("seen.darkness", phrase("darkness." + darkness.word()));
        }
        if (seen instanceof Observation.DarknessMatch match) {
            return phrase("seen.match", Quantity.of(match.ptCo(), Unit.PLATINUM_COBALT));
        }
        if (seen instanceof Observation.FoamLook look) {
            return phrase("seen.foam", phrase("foam." + look.look()));
        }
        if (seen instanceof Observation.Inspection inspection) {
            return phrase("seen.part", phrase("part." + inspection.part()), phrase("finding." + inspection.finding()));
        }
        return measured(seen);
    }

    private static Phrase measured(Observation seen) {
        if (seen instanceof Observation.HeadOverCrest head) {
            return phrase("seen.head", mm(head.mm()));
        }
        if (seen instanceof Observation.CrestAgainstMark crest) {
            return phrase("seen.crest", mm(crest.mm()));
        }
        if (seen instanceof Observation.OutsideLevel level) {
            return phrase("seen.outside", mm(level.mm()));
        }
        if (seen instanceof Observation.LevelBeyondWeir level) {
            return phrase("seen.beyond", mm(level.mm()));
        }
        if (seen instanceof Observation.AirFlow air) {
            return phrase("seen.air", Quantity.of(air.litresPerHour(), Unit.LITRE_PER_HOUR));
        }
        if (seen instanceof Observation.ReturnFlow flow) {
            return phrase("seen.flow", Quantity.of(flow.litresPerHour(), Unit.LITRE_PER_HOUR));
        }
        if (seen instanceof Observation.FoamCollapse collapse) {
            return phrase("seen.collapse", Quantity.of(collapse.seconds(), Unit.SECOND));
        }
        if (seen instanceof Observation.Salinity salinity) {
            return phrase("seen.salinity", Quantity.of(salinity.practicalSalinity(), Unit.SALINITY));
        }
        Observation.WaterTemperature temperature = (Observation.WaterTemperature) seen;
        return phrase("seen.temperature", Quantity.of(temperature.celsius(), Unit.CELSIUS));
    }

    private static Quantity mm(double value) {
        return Quantity.of(value, Unit.MILLIMETRE);
    }
}
