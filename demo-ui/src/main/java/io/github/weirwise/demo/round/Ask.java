package io.github.weirwise.demo.round;

import io.github.weirwise.advice.LookKind;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.reading.Instrument;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.report.Unit;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import javax.swing.JComponent;

/** The one box or choice that a look needs. */
interface Ask {
    /** What goes into a form, without its name. */
    JComponent part();

    /** Where typing begins. */
    JComponent first();

    /** What was typed or picked; what cannot be taken is told to {@code faults}. */
    Optional<Observation> seen(Faults faults);

    /** Empties it. */
    void clear();

    /** What stands in it, as text that {@link #draft(String)} understands; empty when nothing does. */
    String draft();

    /** Puts back what was left in it. */
    void draft(String text);

    /** Calls this whenever something is typed or picked. */
    void onChange(Runnable listener);

    /** Other words or colours. */
    void dress(Dress dress);

    /** What a look needs. */
    static Ask of(LookKind look, Dress dress) {
        return look.part()
                .<Ask>map(part -> new PickAsk.OfPart(look, part, dress))
                .orElseGet(() -> of(look.instrument().orElseThrow(), dress));
    }

    /** What an instrument needs. */
    static Ask of(Instrument instrument, Dress dress) {
        return switch (instrument) {
            case CUP_VOLUME -> new CupAsk(dress);
            case DARKNESS, DARKNESS_MATCH -> new PickAsk.OfColour(dress);
            case FOAM_LOOK -> new PickAsk.OfFoam(dress);
            default -> new NumberAsk(instrument.name(), NUMBERS.get(instrument), dress);
        };
    }

    /** What is read as one number. */
    record Numbered(Unit unit, DoubleFunction<Observation> make) {}

    /** Instruments that are read as one number. */
    Map<Instrument, Numbered> NUMBERS = Map.ofEntries(
            Map.entry(Instrument.FUNNEL_LEVEL, new Numbered(Unit.MILLIMETRE, Observation.FunnelLevel::new)),
            Map.entry(Instrument.HEAD_OVER_CREST, new Numbered(Unit.MILLIMETRE, Observation.HeadOverCrest::new)),
            Map.entry(Instrument.CREST_AGAINST_MARK, new Numbered(Unit.MILLIMETRE, Observation.CrestAgainstMark::new)),
            Map.entry(Instrument.OUTSIDE_LEVEL, new Numbered(Unit.MILLIMETRE, Observation.OutsideLevel::new)),
            Map.entry(Instrument.LEVEL_BEYOND_WEIR, new Numbered(Unit.MILLIMETRE, Observation.LevelBeyondWeir::new)),
            Map.entry(Instrument.AIR_FLOW, new Numbered(Unit.LITRE_PER_HOUR, Observation.AirFlow::new)),
            Map.entry(Instrument.RETURN_FLOW, new Numbered(Unit.LITRE_PER_HOUR, Observation.ReturnFlow::new)),
            Map.entry(Instrument.FOAM_COLLAPSE, new Numbered(Unit.SECOND, Observation.FoamCollapse::new)),
            Map.entry(Instrument.FOAM_CREEP, new Numbered(Unit.PLAIN, Observation.FoamCreep::new)),
            Map.entry(Instrument.SALINITY, new Numbered(Unit.SALINITY, Observation.Salinity::new)),
            Map.entry(Instrument.WATER_TEMPERATURE, new Numbered(Unit.CELSIUS, Observation.WaterTemperature::new)));
}
