package io.github.weirwise.lab.rival;

import io.github.weirwise.advice.HoldReason;
import io.github.weirwise.advice.Step;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Instant;
import java.util.Optional;

/**
 * A step, and what its policy states about the days to come.
 *
 * @param step the next step
 * @param stated what is stated, when anything is
 */
public record Decision(Step step, Optional<Stated> stated) {
    /**
     * A statement that can be judged.
     *
     * @param lowMlPerDay lower end of the 80 % range
     * @param highMlPerDay its upper end
     * @param chanceInBand stated chance of an amount in band
     * @param judgeAt when both are to be judged
     * @param cause likeliest cause, for people
     * @param part part that the likeliest cause blames, if it blames one
     * @param causeChance its stated chance
     */
    public record Stated(
            double lowMlPerDay,
            double highMlPerDay,
            double chanceInBand,
            Instant judgeAt,
            String cause,
            Optional<Part> part,
            double causeChance) {}

    /** A step about which nothing is stated. */
    public static Decision of(Step step) {
        return new Decision(step, Optional.empty());
    }

    /** Leave everything until the next planned visit. */
    public static Decision hold(Instant now) {
        return of(new Step.Hold(now.plusSeconds(86400L * 30), HoldReason.WITHIN_NOISE));
    }

    /** A move by whole millimetres as far as the weir goes; a hold when it does not go at all. */
    public static Decision move(SkimmerUnit sheet, double crestMm, double byMm, Instant now) {
        double to = sheet.weir().clampMm(crestMm + byMm);
        return Math.abs(to - crestMm) < 0.05 ? hold(now) : of(new Step.MoveWeir(to - crestMm, to, false));
    }
}
