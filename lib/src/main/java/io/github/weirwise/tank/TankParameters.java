package io.github.weirwise.tank;

import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;

/**
 * Values of the {@link TankParameter}s and which {@link TankProcess}es run. Immutable.
 *
 * @param changed values that differ from their default
 * @param off processes that are switched off
 */
public record TankParameters(Map<TankParameter, Double> changed, Set<TankProcess> off) {
    /** All defaults, everything on. */
    public static final TankParameters DEFAULT = new TankParameters(Map.of(), Set.of());

    /**
     * @throws io.github.weirwise.report.OutOfRangeException if a value is out of its parameter's limits
     */
    public TankParameters {
        EnumMap<TankParameter, Double> values = new EnumMap<>(TankParameter.class);
        changed.forEach((parameter, value) -> values.put(parameter, checked(parameter, value)));
        changed = Collections.unmodifiableMap(values);
        EnumSet<TankProcess> stopped = EnumSet.noneOf(TankProcess.class);
        stopped.addAll(off);
        off = Collections.unmodifiableSet(stopped);
    }

    private static double checked(TankParameter parameter, double value) {
        return parameter.limit().check(value);
    }

    /** The value of a parameter. */
    public double value(TankParameter parameter) {
        Double value = changed.get(parameter);
        return value == null ? parameter.byDefault() : value;
    }

    /** Whether a process runs. */
    public boolean runs(TankProcess process) {
        return !off.contains(process);
    }

    /** The same with one value changed. */
    public TankParameters with(TankParameter parameter, double value) {
        EnumMap<TankParameter, Double> values = new EnumMap<>(TankParameter.class);
        values.putAll(changed);
        values.put(parameter, value);
        return new TankParameters(values, off);
    }

    /** The same with the given processes switched off. */
    public TankParameters without(TankProcess... processes) {
        EnumSet<TankProcess> stopped = EnumSet.noneOf(TankProcess.class);
        stopped.addAll(off);
        Collections.addAll(stopped, processes);
        return new TankParameters(changed, stopped);
    }

    /** The same values with only the given processes running. */
    public TankParameters only(TankProcess... processes) {
        EnumSet<TankProcess> stopped = EnumSet.allOf(TankProcess.class);
        for (TankProcess process : processes) {
            stopped.remove(process);
        }
        return new TankParameters(changed, stopped);
    }
}
