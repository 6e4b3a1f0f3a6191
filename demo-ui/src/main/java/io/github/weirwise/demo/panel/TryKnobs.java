package io.github.weirwise.demo.panel;

import io.github.weirwise.demo.desk.Lever;
import io.github.weirwise.demo.desk.TryDesk;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.unit.Condition;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.unit.SkimmerUnit;
import io.github.weirwise.unit.Weir;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Everything that can be turned in free play, in two columns. */
public final class TryKnobs extends KnobsCard {
    private static final long serialVersionUID = 1L;

    private final transient TryDesk desk;
    private final transient Map<Lever, Knob> knobs = new EnumMap<>(Lever.class);
    private transient Dress dress;

    /** A card for the knobs, which its {@link #steps} put there. */
    public TryKnobs(TryDesk desk, Dress dress) {
        super("try.title", 2, dress);
        this.desk = desk;
        this.dress = dress;
    }

    /** What makes the knobs, one at a time, so that keys and mouse are heard in between. */
    public List<Runnable> steps() {
        SkimmerUnit unit = desk.unit();
        Weir weir = unit.weir();
        return List.of(
                () -> knob(Lever.WEIR, weir.lowestCrestMm(), weir.highestCrestMm(), 0.5),
                () -> knob(Lever.FLOW, 0, 2 * unit.ratedFlowLitresPerHour(), 20),
                () -> knob(Lever.AIR, 0, 2 * unit.ratedAirLitresPerHour(), 2),
                () -> knob(Lever.SALINITY, 0, 40, 0.5),
                () -> knob(Lever.LOAD, 0.1, 8, 0.1),
                () -> knob(Lever.NECK, 0, 1, 0.05),
                () -> knob(Lever.AIR_LINE, 0, 1, 0.05));
    }

    private void knob(Lever lever, double low, double high, double step) {
        Knob knob = put(new Knob("lever." + lever, lever.unit(), low, high, step, dress));
        knob.show(lever.of(desk.settings()));
        knob.onChange(value -> desk.turn(lever, settings -> set(lever, settings, value)));
        knobs.put(lever, knob);
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

    @Override
    public void dress(Dress other) {
        dress = other;
        super.dress(other);
    }
}
