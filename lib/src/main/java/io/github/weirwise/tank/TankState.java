package io.github.weirwise.tank;

import io.github.weirwise.internal.physics.seawater.Seawater;

/**
 * One moment of a tank. Immutable; keep it, branch from it, compare it. Masses are of the whole installation.
 *
 * @param hours time since a Monday's midnight
 * @param water water and what is dissolved in it
 * @param organics organic matter by kind
 * @param nitrogen inorganic nitrogen
 * @param media how far the bacteria have settled
 * @param parts dirt and wear of the equipment
 * @param foam foam and what disturbs it
 * @param vessels cup, container, reservoir
 * @param controls what hands and accidents set
 * @param ledger what came in and went out since the clock's start
 */
public record TankState(
        double hours,
        Water water,
        Organics organics,
        Nitrogen nitrogen,
        Media media,
        Parts parts,
        Foam foam,
        Vessels vessels,
        Controls controls,
        Ledger ledger) {
    /**
     * Water of the whole installation.
     *
     * @param waterKg fresh water part
     * @param saltKg salt part
     * @param alkalinityEq alkalinity in equivalents
     * @param oxygenMgPerLitre dissolved oxygen
     */
    public record Water(double waterKg, double saltKg, double alkalinityEq, double oxygenMgPerLitre) {
        /** Practical salinity from the masses. */
        public double practicalSalinity() {
            return 1000 * saltKg / (waterKg + saltKg) / Seawater.GRAMS_PER_KG_PER_PRACTICAL;
        }
    }

    /**
     * Organic matter, g dry mass.
     *
     * @param skimmableG dissolved, surface-active
     * @param refractoryG dissolved, slow to decay, not skimmable
     * @param solidsG solids in the water and on the bottom
     * @param padSolidsG solids held by the filter pad
     * @param digestingNitrogenG nitrogen of food being digested, g N
     */
    public record Organics(
            double skimmableG, double refractoryG, double solidsG, double padSolidsG, double digestingNitrogenG) {
        /** All organic matter outside the animals, g. */
        public double totalG() {
            return skimmableG + refractoryG + solidsG + padSolidsG;
        }
    }

    /**
     * Inorganic nitrogen, g N.
     *
     * @param ammoniaG total ammonia
     * @param nitriteG nitrite
     * @param nitrateG nitrate
     */
    public record Nitrogen(double ammoniaG, double nitriteG, double nitrateG) {
        /** All three. */
        public double totalG() {
            return ammoniaG + nitriteG + nitrateG;
        }
    }

    /**
     * Colonies on the media, 0 to 1 of what the media can carry.
     *
     * @param ammoniaColony bacteria that oxidise ammonia
     * @param nitriteColony bacteria that oxidise nitrite
     */
    public record Media(double ammoniaColony, double nitriteColony) {}

    /**
     * Dirt and wear, each 0 (clean, new) to 1.
     *
     * @param neckFilm fat and dirt in the neck
     * @param airLineCreep share of the air line closed by salt
     * @param nozzleScale share of the air draw lost to scale
     * @param pumpWear share of the air draw lost to a worn injector pump
     * @param padClog share of the pad closed
     * @param strainerClog share of the return pump's strainer closed
     * @param breakInLeft foaming residues of new surfaces that are left
     */
    public record Parts(
            double neckFilm,
            double airLineCreep,
            double nozzleScale,
            double pumpWear,
            double padClog,
            double strainerClog,
            double breakInLeft) {}

    /**
     * Foam and what disturbs it.
     *
     * @param skimmateMlPerDay liquid that the foam gives now; follows the skimmer's law with a lag of hours
     * @param filmLost share of the film on the neck still missing after washing or a stop, 0 to 1
     * @param oil film-breaking oil or food, 0 (none) to 1 (foam nearly gone), decays
     * @param agent foaming agent, 0 (none) to 3 (severe), decays
     */
    public record Foam(double skimmateMlPerDay, double filmLost, double oil, double agent) {}

    /**
     * Vessels.
     *
     * @param cupMl liquid in a cup that is not drained
     * @param containerMl liquid in the container
     * @param collectedOrganicsG organics in the liquid collected since the last emptying
     * @param reservoirLitres water left in the top-off reservoir
     */
    public record Vessels(double cupMl, double containerMl, double collectedOrganicsG, double reservoirLitres) {
        /** Mean organics of the collected liquid, mg/L; zero when there is none. */
        public double collectedMgPerLitre() {
            double litres = (cupMl + containerMl) / 1000;
            return litres > 0 ? 1000 * collectedOrganicsG / litres : 0;
        }
    }

    /** The same moment on another day: the clock moved, everything else kept. */
    public TankState atHours(double other) {
        return new TankState(other, water, organics, nitrogen, media, parts, foam, vessels, controls, ledger);
    }

    /** This moment in the water of another, with that one's parts; vessels, controls and ledger stay. */
    public TankState inWaterOf(TankState other, Foam given) {
        return new TankState(
                hours,
                other.water,
                other.organics,
                other.nitrogen,
                other.media,
                other.parts,
                given,
                vessels,
                controls,
                ledger);
    }
}
