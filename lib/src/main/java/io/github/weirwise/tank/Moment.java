package io.github.weirwise.tank;

/** What several processes need to know about one instant of the integration; filled in anew for each. */
final class Moment {
    double hours;
    double celsius;
    double litres;
    double practicalSalinity;
    double sumpLitres;
    /** Share of what foam or flood would take that the water left in the tank can give. */
    double drawableShare;

    double flowLitresPerHour;
    double levelBeyondWeirMm;
    /** Skimmer at rest in this instant. */
    FoamOutput steady;
    /** Liquid that leaves into cup or container, L/h. */
    double skimmateLitresPerHour;
    /** Organics that decay to carbon dioxide and ammonia, g/h. */
    double mineralisedGPerHour;
    /** Oxygen used by nitrifying bacteria, g/h. */
    double nitrifyingOxygenGPerHour;

    double mgPerLitre(double grams) {
        return 1000 * grams / litres;
    }
}
