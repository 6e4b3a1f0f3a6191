package io.github.weirwise.tank;

import static io.github.weirwise.tank.TankDraft.*;

/** Between the records of a state and the vector that is integrated. */
final class TankVector {
    private TankVector() {}

    static double[] of(TankState state) {
        double[] y = new double[SIZE];
        stocks(state, y);
        parts(state, y);
        ledger(state.ledger(), y);
        return y;
    }

    private static void stocks(TankState state, double[] y) {
        TankState.Water water = state.water();
        y[WATER] = water.waterKg();
        y[SALT] = water.saltKg();
        y[ALKALINITY] = water.alkalinityEq();
        y[OXYGEN] = water.oxygenMgPerLitre();
        TankState.Organics organics = state.organics();
        y[SKIMMABLE] = organics.skimmableG();
        y[REFRACTORY] = organics.refractoryG();
        y[SOLIDS] = organics.solidsG();
        y[PAD_SOLIDS] = organics.padSolidsG();
        y[DIGESTING] = organics.digestingNitrogenG();
        y[AMMONIA] = state.nitrogen().ammoniaG();
        y[NITRITE] = state.nitrogen().nitriteG();
        y[NITRATE] = state.nitrogen().nitrateG();
        y[AMMONIA_COLONY] = state.media().ammoniaColony();
        y[NITRITE_COLONY] = state.media().nitriteColony();
    }

    private static void parts(TankState state, double[] y) {
        TankState.Parts parts = state.parts();
        y[NECK] = parts.neckFilm();
        y[AIR_LINE] = parts.airLineCreep();
        y[NOZZLE] = parts.nozzleScale();
        y[WEAR] = parts.pumpWear();
        y[PAD] = parts.padClog();
        y[STRAINER] = parts.strainerClog();
        y[BREAK_IN] = parts.breakInLeft();
        TankState.Foam foam = state.foam();
        y[SKIMMATE] = foam.skimmateMlPerDay();
        y[FILM_LOST] = foam.filmLost();
        y[OIL] = foam.oil();
        y[AGENT] = foam.agent();
        TankState.Vessels vessels = state.vessels();
        y[CUP] = vessels.cupMl();
        y[CONTAINER] = vessels.containerMl();
        y[COLLECTED] = vessels.collectedOrganicsG();
        y[RESERVOIR] = vessels.reservoirLitres();
    }

    private static void ledger(Ledger ledger, double[] y) {
        y[WATER_IN] = ledger.waterInKg();
        y[EVAPORATED] = ledger.waterEvaporatedKg();
        y[WATER_SKIMMED] = ledger.waterSkimmedKg();
        y[WATER_OUT] = ledger.waterOutKg();
        y[SALT_IN] = ledger.saltInKg();
        y[SALT_SKIMMED] = ledger.saltSkimmedKg();
        y[SALT_OUT] = ledger.saltOutKg();
        y[NITROGEN_IN] = ledger.nitrogenInG();
        y[NITROGEN_SKIMMED] = ledger.nitrogenSkimmedG();
        y[NITROGEN_RETAINED] = ledger.nitrogenRetainedG();
        y[NITROGEN_GAS] = ledger.nitrogenGasG();
        y[NITROGEN_OUT] = ledger.nitrogenOutG();
        y[ORGANICS_IN] = ledger.organicsInG();
        y[ORGANICS_SKIMMED] = ledger.organicsSkimmedG();
        y[ORGANICS_MINERALISED] = ledger.organicsMineralisedG();
        y[ORGANICS_OUT] = ledger.organicsOutG();
        y[SKIMMATE_ML] = ledger.skimmateMl();
        y[SPILLED] = ledger.spilledLitres();
    }

    static TankState state(double hours, double[] y, Controls controls) {
        return new TankState(
                hours,
                new TankState.Water(y[WATER], y[SALT], y[ALKALINITY], y[OXYGEN]),
                new TankState.Organics(y[SKIMMABLE], y[REFRACTORY], y[SOLIDS], y[PAD_SOLIDS], y[DIGESTING]),
                new TankState.Nitrogen(y[AMMONIA], y[NITRITE], y[NITRATE]),
                new TankState.Media(y[AMMONIA_COLONY], y[NITRITE_COLONY]),
                new TankState.Parts(y[NECK], y[AIR_LINE], y[NOZZLE], y[WEAR], y[PAD], y[STRAINER], y[BREAK_IN]),
                new TankState.Foam(y[SKIMMATE], y[FILM_LOST], y[OIL], y[AGENT]),
                new TankState.Vessels(y[CUP], y[CONTAINER], y[COLLECTED], y[RESERVOIR]),
                controls,
                new Ledger(
                        y[WATER_IN],
                        y[EVAPORATED],
                        y[WATER_SKIMMED],
                        y[WATER_OUT],
                        y[SALT_IN],
                        y[SALT_SKIMMED],
                        y[SALT_OUT],
                        y[NITROGEN_IN],
                        y[NITROGEN_SKIMMED],
                        y[NITROGEN_RETAINED],
                        y[NITROGEN_GAS],
                        y[NITROGEN_OUT],
                        y[ORGANICS_IN],
                        y[ORGANICS_SKIMMED],
                        y[ORGANICS_MINERALISED],
                        y[ORGANICS_OUT],
                        y[SKIMMATE_ML],
                        y[SPILLED]));
    }
}
