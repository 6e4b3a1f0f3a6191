package io.github.weirwise.demo.tank;

import io.github.weirwise.unit.Condition;
import io.github.weirwise.unit.LanternQuay;
import io.github.weirwise.unit.OperatingPoint;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import io.github.weirwise.unit.SteadyLaw;
import io.github.weirwise.unit.WeirSetting;
import java.time.Duration;
import java.time.Instant;

/**
 * A unit of the Lantern Quay aquarium on a virtual clock. The level follows the weir at once, the foam creeps after it
 * with a lag of hours ({@value #LAG_HOURS} h, assumed), the cup collects what comes over. Not thread-safe.
 */
public final class TrainingTank {
    /** When the clock of every tank starts. */
    public static final Instant START = Instant.parse("2026-03-02T08:00:00Z");

    private static final double LAG_HOURS = 4;
    private static final double SETTLED = 0.05;
    private static final Duration LONGEST_STEP = Duration.ofMinutes(15);
    /** Under this amount the foam's answer is told as this, so that its logarithm exists. */
    private static final double LEAST_ML_PER_DAY = 0.05;

    private final SkimmerUnit unit;
    private final SteadyLaw law;
    private Settings settings;
    private Instant now = START;
    private OperatingPoint rest;
    private double skimmateMlPerDay;
    private double cupMl;
    private double cupPtCoMl;
    private Instant cupEmptied = START;

    /** A tank at rest with the given settings and an empty cup. */
    public TrainingTank(SkimmerUnit unit, Settings settings) {
        this.unit = unit;
        this.law = new SteadyLaw(unit);
        set(settings);
        skimmateMlPerDay = restMlPerDay();
    }

    /**
     * The tank of the tuning run: a middle unit whose weir stands {@code tooLowMm} too low for a load nobody was told.
     */
    public static TrainingTank tooLow(double tooLowMm, double hiddenSkimmableMgPerLitre) {
        SkimmerUnit unit = LanternQuay.jetty();
        Settings hidden = unit.ratedSettings(200)
                .withCondition(Condition.REFERENCE.withSkimmableMgPerLitre(hiddenSkimmableMgPerLitre));
        double right = WeirSetting.crestForSkimmate(unit, hidden, unit.target().skimmateMlPerDay())
                .orElseThrow();
        return new TrainingTank(unit, hidden.withWeirCrestMm(Math.round(right - tooLowMm)));
    }

    /** A unit in reference water whose weir stands where it gives what is wanted. */
    public static TrainingTank onTarget(SkimmerUnit unit) {
        Settings rated = unit.ratedSettings(unit.weir().lowestCrestMm());
        double right = WeirSetting.crestForSkimmate(unit, rated, unit.target().skimmateMlPerDay())
                .orElseThrow();
        return new TrainingTank(unit, rated.withWeirCrestMm(Math.round(2 * right) / 2.0));
    }

    /** Lets the time run. */
    public void run(Duration time) {
        Instant until = now.plus(time);
        while (now.isBefore(until)) {
            Duration left = Duration.between(now, until);
            step(left.compareTo(LONGEST_STEP) < 0 ? left : LONGEST_STEP);
        }
    }

    private void step(Duration time) {
        double hours = time.toMillis() / 3.6e6;
        double keep = Math.exp(-hours / LAG_HOURS);
        double before = skimmateMlPerDay;
        skimmateMlPerDay = Math.exp(keep * Math.log(before) + (1 - keep) * Math.log(restMlPerDay()));
        double came = 0.5 * (before + skimmateMlPerDay) * hours / 24;
        double fits = Math.min(came, unit.cupMl() - cupMl);
        cupMl += fits;
        cupPtCoMl += fits * rest.darknessPtCo();
        now = now.plus(time);
    }

    private double restMlPerDay() {
        return Math.max(LEAST_ML_PER_DAY, rest.skimmateMlPerDay());
    }

    /** Changes the settings; the level follows at once, the foam later. */
    public void set(Settings other) {
        settings = other;
        rest = OperatingPoint.of(unit, other, law);
    }

    /** Sets the weir's mark. */
    public void setWeir(double crestMm) {
        set(settings.withWeirCrestMm(unit.weir().clampMm(crestMm)));
    }

    /** Empties the cup. */
    public void emptyCup() {
        cupMl = 0;
        cupPtCoMl = 0;
        cupEmptied = now;
    }

    public SkimmerUnit unit() {
        return unit;
    }

    /** How it is really set, with what nobody is told. */
    public Settings settings() {
        return settings;
    }

    /** Where it would come to rest with these settings. */
    public OperatingPoint rest() {
        return rest;
    }

    public Instant now() {
        return now;
    }

    /** Whether the foam is within a twentieth of where these settings bring it. */
    public boolean settled() {
        return Math.abs(Math.log(skimmateMlPerDay / restMlPerDay())) < SETTLED;
    }

    /** What comes over the lip at this moment. */
    public double skimmateMlPerDay() {
        return skimmateMlPerDay;
    }

    public double cupMl() {
        return cupMl;
    }

    public boolean cupFull() {
        return cupMl >= unit.cupMl();
    }

    /** Darkness of what stands in the cup, of what would come when it is empty. */
    public double cupPtCo() {
        return cupMl > 0 ? cupPtCoMl / cupMl : rest.darknessPtCo();
    }

    /** Hours since the cup was emptied. */
    public double cupHours() {
        return Duration.between(cupEmptied, now).toMillis() / 3.6e6;
    }
}
