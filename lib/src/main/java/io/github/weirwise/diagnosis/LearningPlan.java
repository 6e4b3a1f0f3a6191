package io.github.weirwise.diagnosis;

import io.github.weirwise.reading.Journal;
import io.github.weirwise.report.Limit;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Range;
import io.github.weirwise.report.Unit;
import io.github.weirwise.report.WrongValueException;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * A small planned experiment that tells how a unit answers to its weir and, if wanted, to its air: some settings, each left alone
 * for some days with the cup read and emptied daily. The plan is run as ordinary entries of the journal; what was learned is then
 * the range of {@link Diagnosis#ledgers()}. A guard's answer ({@code make safe}) ends it at any time.
 *
 * @param stages what to set, in order; 3 to 6, the first at {@code now}
 * @param end when the last stage has been read and weir and air go back to where they were
 * @param homeCrestMm where the crest stood before, over the chamber floor
 * @param homeAirLitresPerHour the air before; 0 when the plan leaves it alone
 * @param daysOut days out of the wanted band that it is expected to cost
 * @param slopeNow answer to the weir as it is known now, natural logarithm a millimetre; 80 % range
 * @param slopeAfter the 80 % range to be expected after the plan
 * @param airNow answer to the air as it is known now: the power of the amount in it; 80 % range
 * @param airAfter the 80 % range to be expected after the plan
 * @since 0.2
 */
public record LearningPlan(
        List<Stage> stages,
        Instant end,
        double homeCrestMm,
        double homeAirLitresPerHour,
        double daysOut,
        Range slopeNow,
        Range slopeAfter,
        Range airNow,
        Range airAfter) {

    private static final String AS_TOLD = "diagnosis.try.planAsTold";
    private static final Limit STAGES = Limit.of("stages", 3, 6, Unit.PLAIN, AS_TOLD);
    private static final Limit HOME_CREST_MM = Limit.of("homeCrestMm", 1, 2000, Unit.MILLIMETRE, AS_TOLD);
    private static final Limit HOME_AIR_LITRES_PER_HOUR =
            Limit.of("homeAirLitresPerHour", 0, 20_000, Unit.LITRE_PER_HOUR, AS_TOLD);
    private static final Limit DAYS_OUT = Limit.of("daysOut", 0, 21, Unit.DAY, AS_TOLD);

    /**
     * One setting that is held.
     *
     * @param from when it is set
     * @param until when it is read for the last time, later
     * @param weirCrestMm where the crest stands, over the chamber floor, 1 to 2000 mm
     * @param airLitresPerHour clean air draw, 0 to 20000 L/h
     * @param skimmateMlPerDay amount to be expected on its last day; holds with about 80 % chance
     * @param floodChance greatest chance on any of its days that cup and drain are overrun, 0 to 1
     */
    public record Stage(
            Instant from,
            Instant until,
            double weirCrestMm,
            double airLitresPerHour,
            Range skimmateMlPerDay,
            double floodChance) {
        private static final Limit WEIR_CREST_MM = Limit.of("weirCrestMm", 1, 2000, Unit.MILLIMETRE, AS_TOLD);
        private static final Limit AIR_LITRES_PER_HOUR =
                Limit.of("airLitresPerHour", 0, 20_000, Unit.LITRE_PER_HOUR, AS_TOLD);
        private static final Limit FLOOD_CHANCE = Limit.of("floodChance", 0, 1, Unit.PLAIN, AS_TOLD);

        /**
         * @throws io.github.weirwise.report.OutOfRangeException if a value is out of its range
         * @throws WrongValueException if it ends before it begins
         */
        public Stage {
            if (!from.isBefore(until)) {
                throw new WrongValueException("until", Phrase.of("diagnosis.learnEnds"), Phrase.of(AS_TOLD));
            }
            WEIR_CREST_MM.check(weirCrestMm);
            AIR_LITRES_PER_HOUR.check(airLitresPerHour);
            FLOOD_CHANCE.check(floodChance);
        }
    }

    /**
     * What a keeper allows.
     *
     * @param mostDays how long it may take in all, 3 to 21 days
     * @param mostFloodChance greatest chance of a flood that a day may have, above 0 to 0.2
     * @param withAir whether the air is turned down as well
     */
    public record Wish(int mostDays, double mostFloodChance, boolean withAir) {
        private static final Limit MOST_DAYS =
                Limit.of("mostDays", 3, 21, Unit.DAY, "diagnosis.try.learnWithinThreeWeeks");
        private static final Limit MOST_FLOOD_CHANCE =
                Limit.of("mostFloodChance", 0.001, 0.2, Unit.PLAIN, "diagnosis.try.learnWithFewFloods");

        /** A week, one flood in fifty such days at most, the weir alone. */
        public static final Wish USUAL = new Wish(7, 0.02, false);

        /**
         * @throws io.github.weirwise.report.OutOfRangeException if a value is out of its range
         */
        public Wish {
            MOST_DAYS.check(mostDays);
            MOST_FLOOD_CHANCE.check(mostFloodChance);
        }
    }

    /**
     * Copies the list.
     *
     * @throws io.github.weirwise.report.OutOfRangeException if a value, or the number of stages, is out of its range
     */
    public LearningPlan {
        stages = List.copyOf(stages);
        STAGES.check(stages.size());
        HOME_CREST_MM.check(homeCrestMm);
        HOME_AIR_LITRES_PER_HOUR.check(homeAirLitresPerHour);
        DAYS_OUT.check(daysOut);
    }

    /**
     * The plan that narrows the ranges most, among those that keep to the wish; empty when none does, such as while the unit is
     * too wet to be raised and too near its lowest crest, or out of service.
     *
     * @param unit nominal data of the unit
     * @param start settings as they were before the first entry of the journal
     * @param journal entries after {@code now} are left out
     * @param now the present
     * @param wish what the keeper allows
     */
    public static Optional<LearningPlan> of(SkimmerUnit unit, Settings start, Journal journal, Instant now, Wish wish) {
        return new Experiments(Belief.of(unit, start, journal, now), wish).best();
    }

    /** The number of the stage that is due at a moment, from 0; as many as there are once all are through. */
    public int stageAt(Instant moment) {
        int number = 0;
        while (number < stages.size() && !moment.isBefore(stages.get(number).until())) {
            number++;
        }
        return number;
    }

    /** Whether it turns the air down as well. */
    public boolean setsAir() {
        return homeAirLitresPerHour > 0;
    }
}
