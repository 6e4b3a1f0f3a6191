package io.github.weirwise.tank;

/**
 * How well the balances close between two moments: what is there now, less what was there, less what came in, plus what
 * went out, against the largest of these amounts.
 *
 * @param waterError relative, dimensionless
 * @param saltError relative
 * @param nitrogenError relative, over all forms in water, solids, food and pad
 * @param organicsError relative
 * @since 0.1
 */
public record TankBalance(double waterError, double saltError, double nitrogenError, double organicsError) {
    /** Balances of a plan's tank from one state to a later one of the same run. */
    public static TankBalance between(TankPlan plan, TankState before, TankState after) {
        double perOrganics = plan.parameters().value(TankParameter.NITROGEN_IN_ORGANICS);
        return new TankBalance(
                error(
                        before.of(Stock.WATER_KG),
                        after.of(Stock.WATER_KG),
                        after.of(Stock.WATER_IN_KG) - before.of(Stock.WATER_IN_KG),
                        after.of(Stock.EVAPORATED_KG)
                                - before.of(Stock.EVAPORATED_KG)
                                + after.of(Stock.WATER_SKIMMED_KG)
                                - before.of(Stock.WATER_SKIMMED_KG)
                                + after.of(Stock.WATER_OUT_KG)
                                - before.of(Stock.WATER_OUT_KG)),
                error(
                        before.of(Stock.SALT_KG),
                        after.of(Stock.SALT_KG),
                        after.of(Stock.SALT_IN_KG) - before.of(Stock.SALT_IN_KG),
                        after.of(Stock.SALT_SKIMMED_KG)
                                - before.of(Stock.SALT_SKIMMED_KG)
                                + after.of(Stock.SALT_OUT_KG)
                                - before.of(Stock.SALT_OUT_KG)),
                error(
                        nitrogenG(before, perOrganics),
                        nitrogenG(after, perOrganics),
                        after.of(Stock.NITROGEN_IN_G) - before.of(Stock.NITROGEN_IN_G),
                        after.of(Stock.NITROGEN_SKIMMED_G)
                                - before.of(Stock.NITROGEN_SKIMMED_G)
                                + after.of(Stock.NITROGEN_RETAINED_G)
                                - before.of(Stock.NITROGEN_RETAINED_G)
                                + after.of(Stock.NITROGEN_GAS_G)
                                - before.of(Stock.NITROGEN_GAS_G)
                                + after.of(Stock.NITROGEN_OUT_G)
                                - before.of(Stock.NITROGEN_OUT_G)),
                error(
                        organicsG(before),
                        organicsG(after),
                        after.of(Stock.ORGANICS_IN_G) - before.of(Stock.ORGANICS_IN_G),
                        after.of(Stock.ORGANICS_SKIMMED_G)
                                - before.of(Stock.ORGANICS_SKIMMED_G)
                                + after.of(Stock.ORGANICS_MINERALISED_G)
                                - before.of(Stock.ORGANICS_MINERALISED_G)
                                + after.of(Stock.ORGANICS_OUT_G)
                                - before.of(Stock.ORGANICS_OUT_G)));
    }

    /** The worst of the four. */
    public double worst() {
        return Math.max(Math.max(waterError, saltError), Math.max(nitrogenError, organicsError));
    }

    private static double nitrogenG(TankState state, double perOrganics) {
        return Tanks.nitrogenG(state) + state.of(Stock.DIGESTING_G) + perOrganics * organicsG(state);
    }

    static double organicsG(TankState state) {
        return state.of(Stock.SKIMMABLE_G)
                + state.of(Stock.REFRACTORY_G)
                + state.of(Stock.SOLIDS_G)
                + state.of(Stock.PAD_SOLIDS_G);
    }

    private static double error(double before, double after, double in, double out) {
        double gap = Math.abs(after - before - in + out);
        double scale = Math.max(Math.abs(before), Math.abs(after));
        return scale > 0 ? gap / scale : gap;
    }
}
