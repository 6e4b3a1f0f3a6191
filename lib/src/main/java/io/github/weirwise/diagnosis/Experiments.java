package io.github.weirwise.diagnosis;

import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.SettingChange;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.report.Range;
import io.github.weirwise.report.Times;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.Target;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The designs of a small experiment, each played forward on a copy of the belief with the readings that are expected: a Kalman
 * filter's variances hang on what is set and read, hardly on the values that come, so the range after it is known before.
 * (Optimal design of experiments; Atkinson, Donev and Tobias 2007.)
 */
final class Experiments {
    /** Settings over the present crest, in multiples of the spacing; to and fro, so that drift is not taken for an answer. */
    private static final int[][] WAYS = {
        {1, -1, 1},
        {-1, 1, -1},
        {0, -1, 0},
        {0, 1, 0},
        {1, -1, 1, -1},
        {-1, 1, -1, 1},
        {1, 0, -1, 0},
        {-1, 0, 1, 0},
        {1, -1, 0, 1, -1},
        {-1, 1, 0, -1, 1},
        {1, -1, 1, -1, 1, -1}
    };

    private static final int[] SPACINGS_MM = {2, 3, 4, 5, 6, 8, 10};
    private static final int MOST_DAYS_A_STAGE = 4;
    private static final int MOST_STAGES = 6;
    /** The air is turned down to this share: enough to be seen, too little to lose the foam. */
    private static final double LESS_AIR = 0.85;
    /** A plan that is longer by a day has to narrow the range by this much. */
    private static final double DAY_WORTH = 0.03;
    /** And one more day out of the band by this much besides. */
    private static final double DAY_OUT_WORTH = 0.1;

    /** A cup smaller than this is emptied before it is full. */
    private static final double LEAST_FLOOD_LOG = Math.log(1.5);

    private static final double LOW = Math.log(Target.AMOUNT_BAND.low());
    private static final double HIGH = Math.log(Target.AMOUNT_BAND.high());

    private final Belief belief;
    private final LearningPlan.Wish wish;
    private final double floodLog;
    private final double wanted;

    Experiments(Belief belief, LearningPlan.Wish wish) {
        this.belief = belief;
        this.wish = wish;
        this.wanted = belief.unit().target().skimmateMlPerDay();
        this.floodLog = Math.max(LEAST_FLOOD_LOG, belief.unit().fillsCupLog());
    }

    Optional<LearningPlan> best() {
        if (belief.airOff()) {
            return Optional.empty();
        }
        LearningPlan best = null;
        double least = Double.POSITIVE_INFINITY;
        for (int[] way : WAYS) {
            if (way.length + (wish.withAir() ? 1 : 0) > MOST_STAGES) {
                continue;
            }
            for (int spacing : SPACINGS_MM) {
                for (int days = 1; days <= MOST_DAYS_A_STAGE; days++) {
                    int all = days * (way.length + (wish.withAir() ? 1 : 0));
                    Optional<LearningPlan> plan = all <= wish.mostDays() && within(way, spacing)
                            ? play(way, spacing, days)
                            : Optional.empty();
                    if (plan.isPresent() && worth(plan.get(), all) < least) {
                        least = worth(plan.get(), all);
                        best = plan.get();
                    }
                }
            }
        }
        return Optional.ofNullable(best);
    }

    private double worth(LearningPlan plan, int days) {
        double slope = Math.log(plan.slopeAfter().high() / plan.slopeAfter().low());
        double air = wish.withAir() ? plan.airAfter().width() / plan.airNow().width() : 0;
        return slope + air + DAY_WORTH * days + DAY_OUT_WORTH * plan.daysOut();
    }

    private boolean within(int[] way, int spacing) {
        for (int at : way) {
            double crest = belief.settings().weirCrestMm() + at * spacing;
            if (crest != belief.unit().weir().clampMm(crest)) {
                return false;
            }
        }
        return true;
    }

    /** Plays one design; empty when a day of it would flood too easily. */
    private Optional<LearningPlan> play(int[] way, int spacing, int days) {
        Settings from = belief.settings();
        Play play = new Play(belief.bankNow());
        List<LearningPlan.Stage> stages = new ArrayList<>();
        for (int i = 0; i <= way.length; i++) {
            boolean airStage = i == way.length;
            if (airStage && !wish.withAir()) {
                break;
            }
            double crest = from.weirCrestMm() + (airStage ? 0 : way[i] * spacing);
            double air = from.airLitresPerHour() * (airStage ? LESS_AIR : 1);
            Optional<LearningPlan.Stage> stage = play.stage(crest, air, days);
            if (stage.isEmpty()) {
                return Optional.empty();
            }
            stages.add(stage.get());
        }
        Ledgers before = belief.ledgers();
        Ledgers after = Ledgers.of(play.bank);
        return Optional.of(new LearningPlan(
                stages,
                play.time,
                from.weirCrestMm(),
                wish.withAir() ? from.airLitresPerHour() : 0,
                play.daysOut,
                before.slopePerMm(),
                after.slopePerMm(),
                before.airExponent(),
                after.airExponent()));
    }

    /** One design on its own copy of the belief. */
    private final class Play {
        private final Bank bank;
        private Instant time;
        private double daysOut;

        Play(Bank bank) {
            this.bank = bank;
            this.time = belief.now();
        }

        Optional<LearningPlan.Stage> stage(double crest, double air, int days) {
            Instant from = time;
            if (crest != bank.settings().weirCrestMm()) {
                bank.take(new WeirMove(from, crest, false), false);
            }
            if (air != bank.settings().airLitresPerHour()) {
                bank.take(new SettingChange(from, SettingChange.Knob.AIR, air), false);
            }
            double flood = 0;
            Range amount = new Range(0, 0);
            for (int day = 0; day < days; day++) {
                time = Times.later(time, Duration.ofDays(1));
                bank.forward(time);
                Mixture expected = bank.amount(Belief.AMOUNT_SD);
                Mixture told = expected.told(belief.width());
                flood = Math.max(flood, 1 - told.below(floodLog));
                daysOut += 1 - told.between(LOW, HIGH);
                Range log = told.middle80();
                amount = new Range(wanted * Math.exp(log.low()), wanted * Math.exp(log.high()));
                double ml = Math.min(belief.unit().cupMl(), wanted * Math.exp(expected.mean()));
                bank.take(Reading.of(time, new Observation.CupVolume(ml, 24, false)), false);
            }
            return flood > wish.mostFloodChance()
                    ? Optional.empty()
                    : Optional.of(new LearningPlan.Stage(from, time, crest, air, amount, flood));
        }
    }
}
