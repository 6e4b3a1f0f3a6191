package io.github.weirwise.diagnosis;

import io.github.weirwise.reading.Observation;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Unit;

/**
 * An observation as a phrase, for reasons.
 *
 * @since 0.1
 */
public final class ObservationWords {
    private static final double DAY_HOURS = 24;

    private ObservationWords() {}

    /** What was seen, as a noun phrase. */
    public static Phrase of(Observation observation) {
        if (observation instanceof Observation.FunnelLevel level) {
            return side("FunnelLevel", level.mm());
        }
        if (observation instanceof Observation.CupVolume cup) {
            return Phrase.of(
                    cup(cup),
                    Quantity.of(cup.ml(), Unit.MILLILITRE),
                    Quantity.of(cup.hours(), Unit.HOUR),
                    Quantity.of(cup.mlPerDay(), Unit.MILLILITRE_PER_DAY));
        }
        if (observation instanceof Observation.Darkness darkness) {
            return Phrase.of("diagnosis.saw.Darkness", Phrase.of("diagnosis.darkness." + darkness.word()));
        }
        if (observation instanceof Observation.DarknessMatch match) {
            return Phrase.of("diagnosis.saw.DarknessMatch", Quantity.of(match.ptCo(), Unit.PLATINUM_COBALT));
        }
        if (observation instanceof Observation.FoamLook look) {
            return Phrase.of("diagnosis.saw.FoamLook", Phrase.of("diagnosis.look." + look.look()));
        }
        if (observation instanceof Observation.HeadOverCrest head) {
            return Phrase.of("diagnosis.saw.HeadOverCrest", mm(head.mm()));
        }
        if (observation instanceof Observation.CrestAgainstMark mark) {
            return side("CrestAgainstMark", mark.mm());
        }
        if (observation instanceof Observation.OutsideLevel outside) {
            return side("OutsideLevel", outside.mm());
        }
        if (observation instanceof Observation.AirFlow air) {
            return Phrase.of("diagnosis.saw.AirFlow", Quantity.of(air.litresPerHour(), Unit.LITRE_PER_HOUR));
        }
        if (observation instanceof Observation.FoamCollapse collapse) {
            return Phrase.of("diagnosis.saw.FoamCollapse", Quantity.of(collapse.seconds(), Unit.SECOND));
        }
        if (observation instanceof Observation.FoamCreep creep) {
            return Phrase.of("diagnosis.saw.FoamCreep", Quantity.of(creep.mmPerMinute(), Unit.MILLIMETRE_PER_MINUTE));
        }
        if (observation instanceof Observation.LevelBeyondWeir beyond) {
            return side("LevelBeyondWeir", beyond.mm());
        }
        if (observation instanceof Observation.ReturnFlow flow) {
            return Phrase.of("diagnosis.saw.ReturnFlow", Quantity.of(flow.litresPerHour(), Unit.LITRE_PER_HOUR));
        }
        if (observation instanceof Observation.Salinity salinity) {
            return Phrase.of("diagnosis.saw.Salinity", Quantity.of(salinity.practicalSalinity(), Unit.SALINITY));
        }
        if (observation instanceof Observation.WaterTemperature temperature) {
            return Phrase.of("diagnosis.saw.WaterTemperature", Quantity.of(temperature.celsius(), Unit.CELSIUS));
        }
        Observation.Inspection inspection = (Observation.Inspection) observation;
        return Phrase.of(
                "diagnosis.saw.Inspection",
                Phrase.of("diagnosis.part." + inspection.part()),
                Phrase.of("diagnosis.finding." + inspection.finding()));
    }

    /** What came in a day is an amount a day as it stands. */
    private static String cup(Observation.CupVolume cup) {
        if (cup.full()) {
            return "diagnosis.saw.CupFull";
        }
        return cup.hours() == DAY_HOURS ? "diagnosis.saw.CupDay" : "diagnosis.saw.CupVolume";
    }

    /** A height over or under what it is read against. */
    private static Phrase side(String what, double mm) {
        return Phrase.of((mm < 0 ? "diagnosis.under." : "diagnosis.over.") + what, mm(Math.abs(mm)));
    }

    private static Quantity mm(double value) {
        return Quantity.of(value, Unit.MILLIMETRE);
    }
}
