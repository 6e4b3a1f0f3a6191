package io.github.weirwise.tank;

import static io.github.weirwise.tank.Stock.*;

import java.util.HashMap;
import java.util.Map;
import java.util.function.BiConsumer;

/** What each kind of event does to a tank. One line a kind; a new kind needs a record, a line and a test. */
final class EventEffects {
    /** Dry organics hold less nitrogen than a fish: 2.5 % of its wet mass is nitrogen (from memory). */
    private static final double NITROGEN_IN_ANIMAL = 0.025;
    /** Film breaker that left-over food gives off, against a meal's, for each gram. */
    private static final double LEFTOVER_OIL_FACTOR = 4;
    /** Share of the film on the neck that a stop or a weir move costs; assumed. */
    private static final double FILM_LOST_WHEN_IT_FALLS = 0.2;

    private final TankPlan plan;
    private final PartEffects parts;
    private final double nitrogenInOrganics;
    private final double mealOil;
    private final double alkalinity;
    private final Map<Class<? extends TankEvent>, BiConsumer<TankDraft, TankEvent>> effects = new HashMap<>();

    EventEffects(TankPlan plan) {
        this.plan = plan;
        parts = new PartEffects(plan);
        TankParameters p = plan.parameters();
        nitrogenInOrganics = p.value(TankParameter.NITROGEN_IN_ORGANICS);
        mealOil = p.value(TankParameter.MEAL_OIL);
        alkalinity = p.value(TankParameter.ALKALINITY_MEQ_PER_LITRE);
        settings();
        water();
        life();
        on(TankEvent.Serviced.class, (d, e) -> parts.service(d, e.part()));
        on(TankEvent.Fouled.class, (d, e) -> parts.foul(d, e.part(), e.share()));
    }

    private <E extends TankEvent> void on(Class<E> kind, BiConsumer<TankDraft, E> effect) {
        effects.put(kind, (draft, event) -> effect.accept(draft, kind.cast(event)));
    }

    private void settings() {
        on(TankEvent.WeirSet.class, (d, e) -> {
            d.y[WEIR_CREST_MM] = plan.unit().weir().clampMm(e.crestMm());
            foamFallsBack(d);
        });
        on(
                TankEvent.WeirSlipped.class,
                (d, e) -> d.y[WEIR_SLIP_MM] = Math.max(-100, Math.min(100, d.y[WEIR_SLIP_MM] + e.byMm())));
        on(TankEvent.FlowSet.class, (d, e) -> d.y[FLOW_LITRES_PER_HOUR] = e.litresPerHour());
        on(TankEvent.AirSet.class, (d, e) -> d.y[AIR_LITRES_PER_HOUR] = e.litresPerHour());
        on(TankEvent.TemperatureSet.class, (d, e) -> d.y[WATER_CELSIUS] = e.celsius());
        on(TankEvent.CupPressure.class, (d, e) -> d.y[BACK_PRESSURE_PA] = e.pascal());
        on(TankEvent.AirLine.class, (d, e) -> d.set(AIR_LINE_IN_WATER, e.inWater()));
        on(TankEvent.InjectorPump.class, (d, e) -> d.set(INJECTOR_ON, e.on()));
        on(TankEvent.ReturnPump.class, (d, e) -> {
            boolean before = d.flowing();
            d.set(RETURN_PUMP_ON, e.on());
            flowChanged(d, before);
        });
        on(TankEvent.PowerCut.class, (d, e) -> {
            boolean before = d.flowing();
            d.y[POWER_BACK_AT_HOURS] = e.atHours() + e.lastsHours();
            flowChanged(d, before);
        });
    }

    private void water() {
        on(TankEvent.Poured.class, (d, e) -> {
            d.add(e.litres(), e.practicalSalinity(), alkalinity);
            d.spillOver(plan.body(), nitrogenInOrganics);
        });
        on(TankEvent.WaterChanged.class, (d, e) -> {
            double litres = Math.min(e.litres(), 0.95 * d.litres());
            d.remove(litres, nitrogenInOrganics);
            d.add(litres, e.practicalSalinity(), alkalinity);
        });
        on(TankEvent.ReservoirFilled.class, (d, e) -> parts.fillReservoir(d, e.practicalSalinity()));
        on(TankEvent.TopOffSet.class, (d, e) -> {
            d.set(TOP_OFF_ON, e.topOff() != TankEvent.TopOff.OFF);
            d.set(TOP_OFF_STUCK, e.topOff() == TankEvent.TopOff.STUCK_OPEN);
        });
    }

    private void life() {
        on(TankEvent.Fed.class, (d, e) -> eat(d, e.grams()));
        on(TankEvent.Overfed.class, (d, e) -> {
            double left = e.grams() * e.uneatenShare();
            eat(d, e.grams() - left);
            leave(d, FeedWaste.nitrogenG(left, Feeding.PROTEIN_SHARE));
            oil(d, LEFTOVER_OIL_FACTOR * left);
        });
        on(TankEvent.OilFilm.class, (d, e) -> d.y[OIL] = Math.min(1, d.y[OIL] + e.amount()));
        on(TankEvent.FoamingAgent.class, (d, e) -> d.y[AGENT] = Math.min(3, d.y[AGENT] + e.amount()));
        on(TankEvent.AnimalDied.class, (d, e) -> leave(d, NITROGEN_IN_ANIMAL * e.wetGrams()));
        on(TankEvent.SolidsRemoved.class, (d, e) -> parts.takeOut(d, SOLIDS_G, e.share()));
    }

    boolean knows(Class<?> kind) {
        return effects.containsKey(kind);
    }

    void apply(TankDraft draft, TankEvent event) {
        effects.get(event.getClass()).accept(draft, event);
    }

    void powerBack(TankDraft draft) {
        draft.y[POWER_BACK_AT_HOURS] = Double.POSITIVE_INFINITY;
        flowChanged(draft, false);
    }

    void eat(TankDraft draft, double grams) {
        double nitrogen = FeedWaste.nitrogenG(grams, Feeding.PROTEIN_SHARE);
        draft.y[DIGESTING_G] += nitrogen;
        draft.y[NITROGEN_IN_G] += nitrogen;
        oil(draft, grams);
    }

    private void oil(TankDraft draft, double grams) {
        draft.y[OIL] = Math.min(1, draft.y[OIL] + mealOil * grams * 100 / draft.litres());
    }

    private void leave(TankDraft draft, double nitrogenG) {
        double organics = nitrogenG / nitrogenInOrganics;
        draft.y[SOLIDS_G] += organics;
        draft.y[ORGANICS_IN_G] += organics;
        draft.y[NITROGEN_IN_G] += nitrogenG;
    }

    private void flowChanged(TankDraft draft, boolean before) {
        if (before && !draft.flowing()) {
            draft.spillOver(plan.body(), nitrogenInOrganics);
        } else if (!before && draft.flowing()) {
            restart(draft);
        }
    }

    private static void foamFallsBack(TankDraft draft) {
        draft.y[FILM_LOST] = Math.max(draft.y[FILM_LOST], FILM_LOST_WHEN_IT_FALLS);
    }

    private void restart(TankDraft draft) {
        foamFallsBack(draft);
        if (draft.flowing() && draft.is(INJECTOR_ON)) {
            parts.surge(draft);
        }
    }
}
