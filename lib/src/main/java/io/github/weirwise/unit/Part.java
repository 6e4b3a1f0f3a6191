package io.github.weirwise.unit;

import java.util.Arrays;
import java.util.List;

/**
 * Parts and places that a person can look at, clean or put right, a row each: what the part does to level and amount when it
 * is as bad as it gets, how it gets there, what work puts it right, how often that comes round, and how common its fault is. Tank, belief, upkeep and practice read these rows.
 *
 * <p>Effects, paces and efforts are stated judgement from common practice, not measured: between clean (size 0) and its worst
 * (size 1) an effect is taken as proportional to the size.
 *
 * @since 0.1
 */
public enum Part {
    /** Air line from its open end to the injector: salt crust, kink, end under water. */
    AIR_LINE(PartEffect.onAir(0.6), Fouling.over(60), Work.QUICK, 30, 0.1),
    /** Injector pump: noise, impeller, strainer. */
    INJECTOR_PUMP(PartEffect.onAir(0.45), Fouling.over(90), Work.LONG, 30, 0.07),
    /** Injector nozzle: scale. Less air, in larger bubbles that rise faster and carry less. */
    INJECTOR_NOZZLE(new PartEffect(0.35, 0, 0, 0, -0.2), Fouling.over(120), Work.LONG, 60, 0.05),
    /** Neck and cup: film of fat and dirt, which breaks the foam. */
    NECK_AND_CUP(PartEffect.onAmount(-1.3), Fouling.over(16), Work.QUICK.withFoamAwayHours(12), 7, 0.12),
    /** Cup vent and drain hose: blocked, kinked, end under water. Pressure in the cup pushes the level down. */
    CUP_VENT(PartEffect.onLevel(-12), Fouling.SUDDEN, Work.QUICK, 14, 0.06),
    /** Column, funnel and cup seating and seals: tilted, gap. Gas leaves beside the funnel. */
    SEATING(new PartEffect(0, 0.3, 0, 0, -0.2), Fouling.SUDDEN, Work.QUICK, 0, 0.05),
    /** The weir plate and its mark: slipped, leaking. */
    WEIR_PLATE(PartEffect.onLevel(-10), Fouling.SUDDEN, Work.QUICK, 0, 0.06),
    /** Filter pad after the weir: clogged, water stands on it and backs up over the weir. */
    FILTER_PAD(PartEffect.onLevel(9), Fouling.over(24), Work.QUICK, 7, 0.09),
    /** Return pump and its strainer: weak flow. */
    RETURN_PUMP(PartEffect.onFlow(0.5), Fouling.over(90), Work.LONG, 30, 0.08),
    /** Water surface in the tank: oil film, food fat. It passes; nothing is cleaned. */
    WATER_SURFACE(PartEffect.NONE, Fouling.PASSES, Work.NONE, 0, 0),
    /** Fine bubbles in the water after the unit: gas that never reached the foam. */
    RETURN_WATER(new PartEffect(0, 0.3, 0, 0, -0.2), Fouling.SUDDEN, Work.QUICK, 0, 0.05),
    /** Bottles and notes at the tank: additives, medicines, sealant used. Their effect passes. */
    ADDITIVES(PartEffect.NONE, Fouling.PASSES, Work.NONE, 0, 0),
    /** Salt in the water: less than wanted. The size 1 stands for {@value #WORST_SALINITY_LOSS} of salinity lost. */
    SALT_MIX(PartEffect.onAmount(-1.3), Fouling.over(10000), Work.SALT, 0, 0.05),
    /** Level in the sump and media under water. */
    SUMP_LEVEL(PartEffect.NONE, Fouling.PASSES, Work.NONE, 0, 0);

    /** Salinity lost at size 1 of {@link #SALT_MIX}. */
    public static final double WORST_SALINITY_LOSS = 10;

    /** Parts that can be at fault and put right by a service, in the order of this table. */
    public static final List<Part> SERVICEABLE = List.copyOf(
            Arrays.stream(values()).filter(part -> part.work != Work.NONE).toList());

    private final PartEffect worst;
    private final Fouling fouling;
    private final Work work;
    private final double upkeepDays;
    private final double faultShare;

    Part(PartEffect worst, Fouling fouling, Work work, double upkeepDays, double faultShare) {
        this.worst = worst;
        this.fouling = fouling;
        this.work = work;
        this.upkeepDays = upkeepDays;
        this.faultShare = faultShare;
    }

    /** What it does to level and amount at size 1. */
    public PartEffect worst() {
        return worst;
    }

    /** How it gets from clean to its worst. */
    public Fouling fouling() {
        return fouling;
    }

    /** What puts it right. */
    public Work work() {
        return work;
    }

    /** Usual interval of its upkeep in days (common practice); 0 when it has none. */
    public double upkeepDays() {
        return upkeepDays;
    }

    /** Share of units that come with it clearly bad, 0 to 1; stated judgement. */
    public double faultShare() {
        return faultShare;
    }
}
