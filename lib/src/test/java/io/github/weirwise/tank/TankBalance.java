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
        Ledger a = before.ledger();
        Ledger b = after.ledger();
        double perOrganics = plan.parameters().value(TankParameter.NITROGEN_IN_ORGANICS);
        return new TankBalance(
                error(
                        before.water().waterKg(),
                        after.water().waterKg(),
                        b.waterInKg() - a.waterInKg(),
                        b.waterEvaporatedKg()
                                - a.waterEvaporatedKg()
                                + b.waterSkimmedKg()
                                - a.waterSkimmedKg()
                                + b.waterOutKg()
                                - a.waterOutKg()),
                error(
                        before.water().saltKg(),
                        after.water().saltKg(),
                        b.saltInKg() - a.saltInKg(),
                        b.saltSkimmedKg() - a.saltSkimmedKg() + b.saltOutKg() - a.saltOutKg()),
                error(
                        nitrogenG(before, perOrganics),
                        nitrogenG(after, perOrganics),
                        b.nitrogenInG() - a.nitrogenInG(),
                        b.nitrogenSkimmedG()
                                - a.nitrogenSkimmedG()
                                + b.nitrogenRetainedG()
                                - a.nitrogenRetainedG()
                                + b.nitrogenGasG()
                                - a.nitrogenGasG()
                                + b.nitrogenOutG()
                                - a.nitrogenOutG()),
                error(
                        before.organics().totalG(),
                        after.organics().totalG(),
                        b.organicsInG() - a.organicsInG(),
                        b.organicsSkimmedG()
                                - a.organicsSkimmedG()
                                + b.organicsMineralisedG()
                                - a.organicsMineralisedG()
                                + b.organicsOutG()
                                - a.organicsOutG()));
    }

    /** The worst of the four. */
    public double worst() {
        return Math.max(Math.max(waterError, saltError), Math.max(nitrogenError, organicsError));
    }

    private static double nitrogenG(TankState state, double perOrganics) {
        return state.nitrogen().totalG()
                + state.organics().digestingNitrogenG()
                + perOrganics * state.organics().totalG();
    }

    private static double error(double before, double after, double in, double out) {
        double gap = Math.abs(after - before - in + out);
        double scale = Math.max(Math.abs(before), Math.abs(after));
        return scale > 0 ? gap / scale : gap;
    }
}
