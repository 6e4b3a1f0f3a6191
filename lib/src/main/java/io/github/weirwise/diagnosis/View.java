package io.github.weirwise.diagnosis;

import io.github.weirwise.reading.FoamLookWord;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;

/**
 * Everything that the likelihood of an observation may hang on, for one possibility at one time; logarithms that many
 * readings share are taken once, when they are first asked for.
 */
final class View {
    private final Outlook outlook;
    private final Possibility possibility;
    private final Influence influence;
    private final Settings settings;
    private final double hours;
    private double logAmountSeen = Double.NaN;
    private double logDarknessSeen = Double.NaN;
    private final double[] lookLogs = new double[FoamLookWord.values().length];

    View(Outlook outlook, Possibility possibility, Influence influence, Settings settings, double hours) {
        this.outlook = outlook;
        this.possibility = possibility;
        this.influence = influence;
        this.settings = settings;
        this.hours = hours;
    }

    /** The same with another amount in the cup. */
    View withAmount(double logAmount) {
        return new View(outlook.withLogAmount(logAmount), possibility, influence, settings, hours);
    }

    Outlook outlook() {
        return outlook;
    }

    Unknowns unknowns() {
        return possibility.unknowns();
    }

    Influence influence() {
        return influence;
    }

    /** Level beyond the weir over its mark, mm; 0 or less for a free weir. */
    double beyondMm() {
        return possibility.beyondMm(influence, settings.weirCrestMm());
    }

    Settings settings() {
        return settings;
    }

    SkimmerUnit unit() {
        return possibility.unit();
    }

    double faultSize(Part part) {
        return possibility.faultAt(part, hours);
    }

    /** Logarithm of the amount over the target, with the floor under which nothing can be measured. */
    double logAmountSeen() {
        if (Double.isNaN(logAmountSeen)) {
            logAmountSeen = Math.log(Math.exp(outlook.logAmount()) + Likelihood.LEAST_SHARE);
        }
        return logAmountSeen;
    }

    /** Logarithm of the darkness, with a floor. */
    double logDarknessSeen() {
        if (Double.isNaN(logDarknessSeen)) {
            logDarknessSeen = Math.log(outlook.darknessPtCo() + Likelihood.DARKNESS_FLOOR);
        }
        return logDarknessSeen;
    }

    /** Logarithm of the likelihood of a look of the foam when it has settled. */
    double lookLog(FoamLookWord look) {
        int index = look.ordinal();
        if (lookLogs[index] == 0) {
            lookLogs[index] = Likelihood.look(look, outlook, 0);
        }
        return lookLogs[index];
    }
}
