package io.github.weirwise.tank;

/**
 * What came in and went out since the clock's start; with the stocks it closes the balances.
 *
 * @param waterInKg fresh water part of all that was added
 * @param waterEvaporatedKg evaporated
 * @param waterSkimmedKg left with skimmate
 * @param waterOutKg left otherwise: water changes, spills
 * @param saltInKg salt added
 * @param saltSkimmedKg salt that left with skimmate
 * @param saltOutKg salt that left otherwise
 * @param nitrogenInG nitrogen of food and dead animals, g N
 * @param nitrogenSkimmedG nitrogen that left with skimmate, dissolved and organic
 * @param nitrogenRetainedG nitrogen kept by the animals
 * @param nitrogenGasG nitrogen that left as gas
 * @param nitrogenOutG nitrogen that left otherwise: water changes, pad, spills
 * @param organicsInG dry organics from food and animals
 * @param organicsSkimmedG organics that left with skimmate
 * @param organicsMineralisedG organics that decayed
 * @param organicsOutG organics that left otherwise
 * @param skimmateMl liquid that left with the foam
 * @param spilledLitres water and skimmate on the floor
 */
public record Ledger(
        double waterInKg,
        double waterEvaporatedKg,
        double waterSkimmedKg,
        double waterOutKg,
        double saltInKg,
        double saltSkimmedKg,
        double saltOutKg,
        double nitrogenInG,
        double nitrogenSkimmedG,
        double nitrogenRetainedG,
        double nitrogenGasG,
        double nitrogenOutG,
        double organicsInG,
        double organicsSkimmedG,
        double organicsMineralisedG,
        double organicsOutG,
        double skimmateMl,
        double spilledLitres) {
    /** Nothing came in or went out. */
    public static final Ledger EMPTY = new Ledger(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0);
}
