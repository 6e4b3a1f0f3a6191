package io.github.weirwise.trial;

import java.util.random.RandomGenerator;

/**
 * What goes with time in one tank.
 *
 * @param lagHours time constant with which the amount follows the steady law, h
 * @param restartLoss share of life lost by a restart
 * @param washLoss share of life lost by washing neck and cup
 * @param returnHours time constant of its return, h
 * @param neckPerDay share of life that ordinary neck film takes a day
 * @param rhythm daily swing of life
 * @param rhythmHour hour of its crest
 * @param unrest standard deviation of life by the load's unrest
 * @param unrestHours its correlation time, h
 * @param feedingDip share of life lost after the daily feeding
 * @param feedingHour hour of the day of the daily feeding
 */
record Pace(
        double lagHours,
        double restartLoss,
        double washLoss,
        double returnHours,
        double neckPerDay,
        double rhythm,
        double rhythmHour,
        double unrest,
        double unrestHours,
        double feedingDip,
        int feedingHour) {
    static Pace draw(RandomGenerator random, Hardship hardship) {
        return new Pace(
                Dice.between(random, 2, 6) * hardship.lag(),
                Dice.between(random, 0.05, 0.2),
                Dice.between(random, 0.2, 0.5),
                Dice.between(random, 1.5, 4) * hardship.lag(),
                Dice.between(random, 0, 0.002),
                Dice.between(random, 0, 0.008),
                Dice.between(random, 0, 24),
                Dice.between(random, 0.008, 0.018) * hardship.noise(),
                Dice.between(random, 8, 30),
                Dice.between(random, 0, 0.1),
                random.nextInt(24));
    }
}
