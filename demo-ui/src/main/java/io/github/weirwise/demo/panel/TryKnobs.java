package io.github.weirwise.demo.panel;

import io.github.weirwise.demo.desk.Lever;
import io.github.weirwise.demo.desk.TryDesk;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.unit.Condition;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Everything that can be turned in free play, in two columns. */
public final class TryKnobs extends KnobsCard {
    private static final long serialVersionUID = 1L;

    private final transient TryDesk desk;
    private final transient Map<Lever, Knob> knobs;

    /** The knobs for free play. */
    public static TryKnobs of(TryDesk desk, Dress dress) {
        SkimmerUnit unit = desk.unit();
        Map<Lever, Knob> knobs = new EnumMap<>(Lever.class);
        knobs.put(
                Lever.WEIR,
                knob(Lever.WEIR, unit.weir().lowestCrestMm(), unit.weir().highestCrestMm(), 0.5, dress));
        knobs.put(Lever.FLOW, knob(Lever.FLOW, 0, 2 * unit.ratedFlowLitresPerHour(), 20, dress));
        knobs.put(Lever.AIR, knob(Lever.AIR, 0, 2 * unit.ratedAirLitresPerHour(), 2, dress));
        knobs.put(Lever.SALINITY, knob(Lever.SALINITY, 0, 40, 0.5, dress));
        knobs.put(Lever.LOAD, knob(Lever.LOAD, 0.1, 8, 0.1, dress));
        knobs.put(Lever.NECK, knob(Lever.NECK, 0, 1, 0.05, dress));
        knobs.put(Lever.AIR_LINE, knob(Lever.AIR_LINE, 0, 1, 0.05, dress));
        return new TryKnobs(desk, knobs, dress);
    }

    private static Knob knob(Lever lever, double low, double high, double step, Dress dress) {
        return new Knob("lever." + lever, lever.unit(), low, high, step, dress);
    }

    private TryKnobs(TryDesk desk, Map<Lever, Knob> knobs, Dress dress) {
        super("try.title", List.copyOf(knobs.values()), 2, dress);
        this.desk = desk;
        this.knobs = knobs;
        knobs.forEach((lever, knob) ->
                knob.onChange(value -> desk.turn(lever, settings -> set(lever, settings, value))));
        refresh();
    }

    private static Settings set(Lever lever, Settings settings, double value) {
        Condition condition = settings.condition();
        return switch (lever) {
            case WEIR -> settings.withWeirCrestMm(value);
            case FLOW -> settings.withFlowLitresPerHour(value);
            case AIR -> settings.withAirLitresPerHour(value);
            case SALINITY -> settings.withPracticalSalinity(value);
            case LOAD -> settings.withCondition(condition.withSkimmableMgPerLitre(value));
            case NECK -> settings.withCondition(condition.withNeckFouling(value));
            case AIR_LINE -> settings.withCondition(condition.withAirLineOpening(value));
        };
    }

    /** Shows what is set. */
    public void refresh() {
        knobs.forEach((lever, knob) -> knob.show(lever.of(desk.settings())));
    }
}
