package io.github.weirwise.trial;

import java.util.random.RandomGenerator;

/** Draws size and course of one hidden cause. */
final class AilmentDraw {
    private static final double LEAST_SIZE = 0.25;

    private final RandomGenerator random;
    private final HiddenCause kind;
    private final int historyDays;
    private final double trueCrestMm;

    AilmentDraw(RandomGenerator random, HiddenCause kind, int historyDays, double trueCrestMm) {
        this.random = random;
        this.kind = kind;
        this.historyDays = historyDays;
        this.trueCrestMm = trueCrestMm;
    }

    Ailment draw() {
        double size = Dice.between(random, LEAST_SIZE, 1);
        double variant = kind == HiddenCause.PAD ? trueCrestMm : random.nextDouble();
        return switch (kind.course()) {
            case GROWING -> new Ailment(kind, size, -faultHours(), Dice.between(random, 0, 0.015), 1, variant);
            case SUDDEN -> new Ailment(kind, size, -faultHours(), 0, 1, variant);
            case PASSING -> passing(size, variant);
            case LASTING, SETTING -> new Ailment(kind, size, -1000, 0, 1, variant);
        };
    }

    private double faultHours() {
        return historyDays == 0 ? Dice.between(random, 24, 120) : Dice.between(random, 12, 24 * historyDays + 24);
    }

    private Ailment passing(double size, double variant) {
        return switch (kind) {
            case FILM -> faded(size, 1, 8, 6, 20, variant);
            case AGENT -> faded(size, 1, 20, 20, 60, variant);
            case MEDICINE -> faded(size, 2, 30, 24, 72, variant);
            case NEW_UNIT -> faded(size, 2, 24, 24, 72, variant);
            default -> faded(size, 1, 6, 3, 7, variant);
        };
    }

    private Ailment faded(
            double size, double earliest, double latest, double shortFade, double longFade, double variant) {
        double onset = -Dice.between(random, earliest, latest);
        return new Ailment(kind, size, onset, 0, Dice.between(random, shortFade, longFade), variant);
    }
}
