package io.github.weirwise.diagnosis;

import io.github.weirwise.reading.Finding;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.Settings;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * Readings that name a cause or its size almost by themselves: an air meter, a head, a mark, a salinity, a look at a part.
 * They only say where to draw most possibilities; the weights take that back, so the belief is the same with fewer draws.
 */
final class DirectSigns {
    private static final double SHARE_SPREAD = 0.11;
    private static final double SLIP_MM = 1.5;
    private static final double BEYOND_MM = 3.2;
    private static final double SALINITY = 0.9;
    /** Likelihood left where a measured number fits not at all. */
    private static final double MISREAD = 0.003;

    private static final double[] SIZES = {0.1, 0.3, 0.5, 0.7, 0.9};

    private final double startCrestMm;
    private final Map<Gauge, Measured> measured = new EnumMap<>(Gauge.class);
    private final Map<Part, Finding> found = new EnumMap<>(Part.class);

    /** What can be measured of a cause's influence. */
    private enum Gauge {
        AIR(Influence::airFactor),
        FLOW(Influence::flowFactor),
        SLIP(Influence::slipMm),
        BEYOND(Influence::drownedByMm),
        SALT(Influence::salinityShift);

        private final ToDoubleFunction<Influence> component;

        Gauge(ToDoubleFunction<Influence> component) {
            this.component = component;
        }

        double neutral() {
            return component.applyAsDouble(Influence.NONE);
        }

        double atSize(Cause cause, double size) {
            return component.applyAsDouble(cause.effect().at(size));
        }

        boolean shows(Cause cause) {
            return Math.abs(atSize(cause, 1) - atSize(cause, 0)) > 1e-9;
        }
    }

    private record Measured(Gauge gauge, double value, double spread, double hours) {
        double likelihood(double expected) {
            double z = (value - expected) / spread;
            return Math.exp(-0.5 * z * z) + MISREAD;
        }
    }

    /**
     * The size at which a cause gives what was measured.
     *
     * @param size at the hour of the reading; may lie outside 0 to 1
     * @param spread its standard deviation
     * @param hours when it was measured
     */
    record Hint(double size, double spread, double hours) {}

    DirectSigns(Timeline timeline) {
        startCrestMm = timeline.segments().get(0).settings().weirCrestMm();
        for (Timeline.TimedReading each : timeline.readings()) {
            Settings settings =
                    timeline.segments().get(timeline.segmentAt(each.hours())).settings();
            for (Observation observation : each.reading().observations()) {
                add(observation, settings, each.hours(), timeline);
            }
        }
    }

    private void add(Observation observation, Settings settings, double hours, Timeline timeline) {
        if (observation instanceof Observation.Inspection look) {
            if (Double.isNaN(timeline.servicedBetween(look.part(), hours, 0))) {
                found.put(look.part(), look.finding());
            } else {
                found.remove(look.part());
            }
            return;
        }
        Measured one = measured(observation, settings, hours);
        if (one != null && servicedSince(one, timeline)) {
            measured.remove(one.gauge());
        } else if (one != null) {
            measured.put(one.gauge(), one);
        }
    }

    private static boolean servicedSince(Measured one, Timeline timeline) {
        for (Cause cause : Cause.values()) {
            boolean serviced = cause.servicePart()
                    .filter(part -> !Double.isNaN(timeline.servicedBetween(part, one.hours(), 0)))
                    .isPresent();
            if (serviced && one.gauge().shows(cause)) {
                return true;
            }
        }
        return false;
    }

    private Measured measured(Observation observation, Settings settings, double hours) {
        if (observation instanceof Observation.AirFlow air) {
            return share(Gauge.AIR, air.litresPerHour() / Math.max(1, settings.airLitresPerHour()), hours);
        }
        if (observation instanceof Observation.ReturnFlow flow) {
            return share(Gauge.FLOW, flow.litresPerHour() / Math.max(1, settings.flowLitresPerHour()), hours);
        }
        if (observation instanceof Observation.CrestAgainstMark mark) {
            return new Measured(Gauge.SLIP, mark.mm(), SLIP_MM, hours);
        }
        if (observation instanceof Observation.LevelBeyondWeir beyond) {
            double overStart = beyond.mm() + settings.weirCrestMm() - startCrestMm;
            return new Measured(Gauge.BEYOND, beyond.mm() > 0 ? Math.max(0, overStart) : 0, BEYOND_MM, hours);
        }
        if (observation instanceof Observation.Salinity salinity) {
            double shift = salinity.practicalSalinity() - settings.practicalSalinity();
            return new Measured(Gauge.SALT, shift, SALINITY, hours);
        }
        return null;
    }

    private static Measured share(Gauge gauge, double ratio, double hours) {
        return new Measured(gauge, ratio, SHARE_SPREAD * Math.max(0.1, ratio), hours);
    }

    /** Where the size of a cause most likely lies, or null when nothing measured it. */
    Hint hint(Cause cause) {
        for (Measured each : measured.values()) {
            if (each.gauge().shows(cause)) {
                double none = each.gauge().atSize(cause, 0);
                double slope = each.gauge().atSize(cause, 1) - none;
                return new Hint((each.value() - none) / slope, each.spread() / Math.abs(slope), each.hours());
            }
        }
        return null;
    }

    /** How well a cause fits the direct signs, averaged over its sizes; relative. */
    double fit(Cause cause) {
        double sum = 0;
        for (double size : SIZES) {
            double fit = 1;
            for (Measured each : measured.values()) {
                Gauge gauge = each.gauge();
                fit *= each.likelihood(gauge.shows(cause) ? gauge.atSize(cause, size) : gauge.neutral());
            }
            for (Map.Entry<Part, Finding> each : found.entrySet()) {
                boolean shown =
                        cause.servicePart().filter(each.getKey()::equals).isPresent() || cause.shownBy(each.getKey());
                fit *= Math.exp(Likelihood.finding(each.getValue(), shown ? size : 0));
            }
            sum += fit;
        }
        return sum / SIZES.length;
    }
}
