package io.github.weirwise.diagnosis;

import io.github.weirwise.report.Require;

/**
 * What a cause does to the model, as factors and shifts on the steady law's inputs. Neutral values change nothing.
 *
 * @param airFactor on the air that is drawn in, which a meter in the air line shows, 0 to 2
 * @param flowFactor on the flow over the weir, 0 to 2
 * @param lifeFactor on the mean life of bubbles in the foam, 0 to 10
 * @param riseFactor on the rise of a fresh bubble (larger bubbles rise faster), 0.2 to 5
 * @param slipMm true crest over its mark, -50 to 50 mm
 * @param backPressureMm pressure in the cup as mm of water, 0 to 200 mm
 * @param drownedByMm level beyond the weir over the crest, 0 for a free weir, to 200 mm
 * @param strengthFactor on the darkness of the skimmate beyond what the model gives, 0 to 20
 * @param salinityShift on practical salinity, -35 to 10
 * @param gasFactor on the share of the drawn air that reaches the foam, 0 to 1
 * @since 0.1
 */
public record Influence(
        double airFactor,
        double flowFactor,
        double lifeFactor,
        double riseFactor,
        double slipMm,
        double backPressureMm,
        double drownedByMm,
        double strengthFactor,
        double salinityShift,
        double gasFactor) {
    /** Changes nothing. */
    public static final Influence NONE = new Influence(1, 1, 1, 1, 0, 0, 0, 1, 0, 1);

    /**
     * @throws io.github.weirwise.report.OutOfRangeException if a value is out of its range
     */
    public Influence {
        String fix = "start from Influence.NONE";
        Require.inRange("airFactor", airFactor, 0, 2, "", fix);
        Require.inRange("flowFactor", flowFactor, 0, 2, "", fix);
        Require.inRange("lifeFactor", lifeFactor, 0, 10, "", fix);
        Require.inRange("riseFactor", riseFactor, 0.2, 5, "", fix);
        Require.inRange("slipMm", slipMm, -50, 50, "mm", fix);
        Require.inRange("backPressureMm", backPressureMm, 0, 200, "mm", fix);
        Require.inRange("drownedByMm", drownedByMm, 0, 200, "mm", fix);
        Require.inRange("strengthFactor", strengthFactor, 0, 20, "", fix);
        Require.inRange("salinityShift", salinityShift, -35, 10, "", fix);
        Require.inRange("gasFactor", gasFactor, 0, 1, "", fix);
    }

    /** Both at once: factors multiply, shifts add. */
    public Influence and(Influence other) {
        if (other == NONE) {
            return this;
        }
        if (this == NONE) {
            return other;
        }
        return new Influence(
                airFactor * other.airFactor,
                flowFactor * other.flowFactor,
                lifeFactor * other.lifeFactor,
                riseFactor * other.riseFactor,
                slipMm + other.slipMm,
                backPressureMm + other.backPressureMm,
                Math.max(drownedByMm, other.drownedByMm),
                strengthFactor * other.strengthFactor,
                salinityShift + other.salinityShift,
                gasFactor * other.gasFactor);
    }

    /** Only the air is changed. */
    public static Influence onAir(double factor) {
        return new Influence(factor, 1, 1, 1, 0, 0, 0, 1, 0, 1);
    }

    /** Only the flow is changed. */
    public static Influence onFlow(double factor) {
        return new Influence(1, factor, 1, 1, 0, 0, 0, 1, 0, 1);
    }

    /** Only the foam's life is changed, and the darkness by {@code strength}. */
    public static Influence onFoam(double life, double strength) {
        return new Influence(1, 1, life, 1, 0, 0, 0, strength, 0, 1);
    }
}
