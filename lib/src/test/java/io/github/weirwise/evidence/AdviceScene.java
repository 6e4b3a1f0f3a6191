package io.github.weirwise.evidence;

import io.github.weirwise.Weirwise;
import io.github.weirwise.advice.Advice;
import io.github.weirwise.advice.AdviserOptions;
import io.github.weirwise.reading.DarknessWord;
import io.github.weirwise.reading.FoamLookWord;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.unit.FirstRoundUnits;
import io.github.weirwise.unit.OperatingPoint;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** A seeded journal of the middle unit that runs dry, gets three weir moves and is read twice a day; for timing the advice. */
public final class AdviceScene {
    private static final Instant START = Instant.parse("2026-03-02T08:00:00Z");
    private static final Duration BETWEEN = Duration.ofHours(12);

    private final SkimmerUnit unit = FirstRoundUnits.middle();
    private final Settings start = unit.ratedSettings(198);
    private final Journal journal;
    private final Instant now;

    /**
     * A journal.
     *
     * @param entries how many entries it has
     */
    public AdviceScene(int entries) {
        Random random = new Random(1);
        List<JournalEntry> all = new ArrayList<>();
        double crestMm = start.weirCrestMm();
        Instant at = START;
        while (all.size() < entries) {
            if (all.size() > 0 && all.size() % 9 == 0 && all.size() < 30) {
                all.add(new WeirMove(at.plus(Duration.ofMinutes(5)), crestMm + 2, false));
                crestMm += 2;
            } else {
                all.add(reading(at, crestMm, random));
                at = at.plus(BETWEEN);
            }
        }
        journal = Journal.of(all.toArray(JournalEntry[]::new));
        now = at;
    }

    private Reading reading(Instant at, double crestMm, Random random) {
        OperatingPoint point = OperatingPoint.of(unit, unit.ratedSettings(crestMm));
        double amount = point.skimmateMlPerDay() * Math.exp(0.2 * random.nextGaussian());
        return Reading.of(
                at,
                new Observation.FunnelLevel(point.submergenceMm() + random.nextGaussian()),
                new Observation.CupVolume(0.5 * amount, 12, false),
                new Observation.Darkness(DarknessWord.COFFEE),
                new Observation.FoamLook(FoamLookWord.STIFF));
    }

    /** The whole way from the journal to the advice, nothing kept from before. */
    public Advice advise() {
        return Weirwise.advise(unit, start, journal, now, AdviserOptions.DEFAULT);
    }
}
