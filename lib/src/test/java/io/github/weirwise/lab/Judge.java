package io.github.weirwise.lab;

import io.github.weirwise.advice.Step;
import io.github.weirwise.lab.rival.Decision;

/**
 * Judges a statement by replay: a copy of the tank, on which the stated step was done and nothing after it, is run to the stated
 * time; what came is the true mean over the 12 hours before.
 */
final class Judge {
    static final int OVER_HOURS = 12;
    private static final double LEAST_AMOUNT = 0.01;

    private Judge() {}

    /** The tank stands after the step, if it was followed; a move that was not followed is done on the copy. */
    static Outcome.Told of(Tank tank, Step step, Decision.Stated stated, double before) {
        Tank copy = tank.fork();
        if (step instanceof Step.MoveWeir move && Math.abs(copy.markMm() - move.toCrestMm()) > 0.05) {
            copy.moveWeir(tank.plan().sheet().weir().clampMm(move.toCrestMm()));
        } else if (step instanceof Step.ServicePart service) {
            service.parts().forEach(copy::service);
        }
        int last = tank.plan().horizonHours() + Plan.AFTERWARDS_HOURS;
        int due = Math.min(last, Math.max(copy.hour() + OVER_HOURS, LabClock.hourNotBefore(stated.judgeAt())));
        copy.runTo(due);
        double came = copy.course().mean(due, OVER_HOURS);
        double wanted = tank.plan().sheet().target().skimmateMlPerDay();
        boolean right =
                stated.part().map(part -> tank.fouling().of(part) > 0.25).orElse(false);
        return new Outcome.Told(
                log(stated.lowMlPerDay() / wanted),
                log(stated.highMlPerDay() / wanted),
                stated.chanceInBand(),
                log(came),
                Cost.inBand(came),
                Double.isNaN(before) ? before : log(before),
                stated.causeChance(),
                stated.part().isPresent(),
                right);
    }

    /** Amounts under a hundredth of the wanted are all "nothing". */
    static double log(double amount) {
        return Math.log(Math.max(LEAST_AMOUNT, amount));
    }
}
