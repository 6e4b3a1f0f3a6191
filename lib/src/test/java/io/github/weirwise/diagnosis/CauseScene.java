package io.github.weirwise.diagnosis;

import io.github.weirwise.reading.DarknessWord;
import io.github.weirwise.reading.Finding;
import io.github.weirwise.reading.FoamLookWord;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.unit.FirstRoundUnits;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import io.github.weirwise.unit.SteadyInputs;
import java.time.Duration;
import java.time.Instant;

/** What a middle unit that was on target shows, by the belief's own law and without scatter, when one part goes bad. */
public final class CauseScene {
    private static final Instant NOW = Instant.parse("2026-03-10T08:00:00Z");
    private static final double CREST_MM = 205;
    private static final double SIZE = 0.4;
    private static final double BEGAN_HOURS = -68;
    private static final double GROWTH_HOURS = 40;

    private final SkimmerUnit unit = FirstRoundUnits.middle();
    private final Settings start = unit.ratedSettings(CREST_MM);
    private final Possibility sound;
    private final Possibility faulty;

    /** A scene of one cause. */
    public CauseScene(Cause cause) {
        Timeline timeline = new Timeline(unit, start, Journal.EMPTY, NOW);
        Foresight foresight = new Foresight(unit, CREST_MM);
        Unknowns nominal = new Unknowns(1, 1 + Sampler.SHAPE_MEDIAN, 0.9, 1, 1, 0, 1, 0, 0, 0, 1);
        SteadyInputs inputs = foresight.inputs(timeline.current().clean(), CREST_MM, nominal, Influence.NONE);
        Unknowns tuned = nominal.withLifeScale(foresight.lifeFor(inputs, 0).seconds() / inputs.meanLifeS());
        sound = new Possibility(foresight, timeline, CauseCourse.NONE, CauseCourse.NONE, tuned, 1);
        CauseCourse course = new CauseCourse(cause, SIZE, BEGAN_HOURS, GROWTH_HOURS);
        faulty = new Possibility(foresight, timeline, course, CauseCourse.NONE, tuned, 1);
    }

    /** The unit. */
    public SkimmerUnit unit() {
        return unit;
    }

    /** Its settings before the first entry. */
    public Settings start() {
        return start;
    }

    /** The present. */
    public Instant now() {
        return NOW;
    }

    /** The daily readings: two on target, two with the fault. */
    public Journal routine() {
        return Journal.of(routine(4, sound), routine(3, sound), routine(1, faulty), routine(0, faulty));
    }

    private Reading routine(int daysAgo, Possibility shown) {
        Outlook outlook = shown.now(CREST_MM);
        double share = Math.exp(outlook.logAmount());
        double mlPerDay = share * unit.target().skimmateMlPerDay();
        FoamLookWord look = share < 0.1
                ? FoamLookWord.LOW_IN_NECK
                : share < 0.5 ? FoamLookWord.STIFF : share < 2.4 ? FoamLookWord.CREAMY : FoamLookWord.RUNNY;
        return Reading.of(
                NOW.minus(Duration.ofDays(daysAgo)),
                new Observation.FunnelLevel(outlook.submergenceMm()),
                new Observation.CupVolume(Math.min(mlPerDay, unit.cupMl()), 24, mlPerDay >= unit.cupMl()),
                new Observation.Darkness(DarknessWord.of(outlook.darknessPtCo())),
                new Observation.FoamLook(look));
    }

    /** What a look at a part finds. */
    public Observation lookAt(Part part) {
        return new Observation.Inspection(part, faulty.faultAt(part, 0) > 0 ? Finding.BAD : Finding.GOOD);
    }

    /** Air by the meter. */
    public Observation air() {
        return new Observation.AirFlow(faulty.now(CREST_MM).airLitresPerHour());
    }

    /** Flow of the return pump. */
    public Observation flow() {
        return new Observation.ReturnFlow(faulty.flowLitresPerHour());
    }

    /** Head over the crest. */
    public Observation head() {
        return new Observation.HeadOverCrest(Math.max(0, faulty.now(CREST_MM).headMm()));
    }

    /** Level outside the column. */
    public Observation outside() {
        return new Observation.OutsideLevel(faulty.now(CREST_MM).outsideMm());
    }

    /** Crest against its mark. */
    public Observation mark() {
        return new Observation.CrestAgainstMark(faulty.slipMm());
    }

    /** Level beyond the weir. */
    public Observation beyond() {
        return new Observation.LevelBeyondWeir(faulty.drownedByMm() > 0 ? faulty.drownedByMm() : -40);
    }

    /** Salinity. */
    public Observation salinity() {
        return new Observation.Salinity(start.practicalSalinity() + faulty.salinityShift());
    }

    /** Foam collapse with the injector off. */
    public Observation collapse() {
        return new Observation.FoamCollapse(faulty.meanLifeSeconds());
    }
}
