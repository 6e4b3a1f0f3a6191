package io.github.weirwise.trial;

import io.github.weirwise.reading.Happening;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Service;
import io.github.weirwise.unit.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;

/** What a keeper wrote down before the trial besides readings: often the herald of a cause, sometimes not, sometimes idle. */
final class KnownDraw {
    private final RandomGenerator random;
    private final int historyDays;
    private final List<JournalEntry> known = new ArrayList<>();

    KnownDraw(RandomGenerator random, int historyDays) {
        this.random = random;
        this.historyDays = historyDays;
    }

    List<JournalEntry> draw(List<Ailment> ailments) {
        for (Ailment each : ailments) {
            herald(each);
        }
        idle(0.4, Happening.Kind.FED, 3, 20);
        idle(0.03, Happening.Kind.FED_HEAVILY, 30, 90);
        idle(0.03, Happening.Kind.HANDS_IN_TANK, 30, 90);
        idle(0.02, Happening.Kind.CONDITIONER, 140, 240);
        idle(0.05, Happening.Kind.WATER_CHANGE, 24, 120);
        return List.copyOf(known);
    }

    private void herald(Ailment ailment) {
        double at = ailment.onsetHour();
        switch (ailment.kind()) {
            case FILM -> {
                Happening.Kind[] kinds = {Happening.Kind.FED_HEAVILY, Happening.Kind.HANDS_IN_TANK, Happening.Kind.FED};
                note(0.65, kinds[random.nextInt(kinds.length)], at);
            }
            case AGENT ->
                note(0.65, random.nextDouble() < 0.7 ? Happening.Kind.CONDITIONER : Happening.Kind.SEALANT, at);
            case MEDICINE -> note(0.8, Happening.Kind.MEDICATION, at);
            case NEW_UNIT -> note(0.95, Happening.Kind.FIRST_START, at);
            case MUCH -> note(0.3, Happening.Kind.ANIMAL_DIED, -Dice.between(random, 12, 60));
            case SALT -> note(0.4, Happening.Kind.TOP_OFF, Math.max(at, -72));
            case CHANGED -> changed(at);
            case SEAT -> washed(0.5, at);
            default -> {}
        }
    }

    private void changed(double at) {
        if (random.nextDouble() < 0.7) {
            washed(0.85, at);
        } else {
            note(0.85, Happening.Kind.PUMP_RESTARTED, at);
        }
    }

    private void washed(double share, double at) {
        if (random.nextDouble() < share) {
            known.add(new Service(TrialClock.at(at), Part.NECK_AND_CUP));
        }
    }

    private void note(double share, Happening.Kind kind, double at) {
        if (random.nextDouble() < share) {
            known.add(new Happening(TrialClock.at(at), kind));
        }
    }

    private void idle(double share, Happening.Kind kind, double earliest, double latest) {
        double before = Dice.between(random, earliest, latest);
        if (random.nextDouble() < share && before < 24 * historyDays + 24) {
            known.add(new Happening(TrialClock.at(-before), kind));
        }
    }
}
