package io.github.weirwise.lab.rival;

import io.github.weirwise.reading.FoamLookWord;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.Service;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.unit.Part;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a rule without a model takes from a journal. */
public record Log(Visit visit) {
    /** Where the weir's mark stands. */
    public double crestMm() {
        List<JournalEntry> entries = visit.journal().entries();
        for (int i = entries.size() - 1; i >= 0; i--) {
            if (entries.get(i) instanceof WeirMove move) {
                return move.toCrestMm();
            }
        }
        return visit.start().weirCrestMm();
    }

    /** The newest amount over the wanted, whatever was done since. */
    public Optional<Double> newestAmount() {
        List<JournalEntry> entries = visit.journal().entries();
        for (int i = entries.size() - 1; i >= 0; i--) {
            if (entries.get(i) instanceof Reading reading) {
                Optional<Observation.CupVolume> cup = reading.find(Observation.CupVolume.class);
                if (cup.isPresent()) {
                    return Optional.of(
                            cup.get().mlPerDay() / visit.sheet().target().skimmateMlPerDay());
                }
            }
        }
        return Optional.empty();
    }

    /** Amounts over the wanted since the last move, newest first, at most so many. */
    List<Double> amounts(int most) {
        List<Double> found = new ArrayList<>();
        List<JournalEntry> entries = visit.journal().entries();
        for (int i = entries.size() - 1; i >= 0 && found.size() < most; i--) {
            JournalEntry entry = entries.get(i);
            if (entry instanceof WeirMove) {
                break;
            }
            if (entry instanceof Reading reading) {
                reading.find(Observation.CupVolume.class)
                        .ifPresent(cup -> found.add(
                                cup.mlPerDay() / visit.sheet().target().skimmateMlPerDay()));
            }
        }
        return found;
    }

    /** Whether the cup was full and the foam runny or streaming, in the newest reading of this visit. */
    boolean runsOver() {
        boolean full = false;
        boolean wet = false;
        List<JournalEntry> entries = visit.journal().entries();
        for (int i = entries.size() - 1; i >= 0 && entries.get(i).at().equals(visit.now()); i--) {
            if (entries.get(i) instanceof WeirMove) {
                return false;
            }
            if (entries.get(i) instanceof Reading reading) {
                full |= reading.find(Observation.CupVolume.class)
                        .map(Observation.CupVolume::full)
                        .orElse(false);
                wet |= reading.find(Observation.FoamLook.class)
                        .map(look -> look.look().compareTo(FoamLookWord.RUNNY) >= 0)
                        .orElse(false);
            }
        }
        return full && wet;
    }

    /** Whether the weir was moved at this visit. */
    boolean moved() {
        return visit.journal().entries().stream()
                .anyMatch(entry -> entry instanceof WeirMove && entry.at().equals(visit.now()));
    }

    /** When a part was serviced last. */
    public Optional<Instant> serviced(Part part) {
        List<JournalEntry> entries = visit.journal().entries();
        for (int i = entries.size() - 1; i >= 0; i--) {
            if (entries.get(i) instanceof Service service && service.part() == part) {
                return Optional.of(service.at());
            }
        }
        return Optional.empty();
    }

    /** When the journal begins. */
    Instant begins() {
        List<JournalEntry> entries = visit.journal().entries();
        return entries.isEmpty() ? visit.now() : entries.get(0).at();
    }
}
