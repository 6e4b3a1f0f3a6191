package io.github.weirwise.diagnosis;

import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Range;
import io.github.weirwise.report.Reason;
import io.github.weirwise.report.Unit;
import io.github.weirwise.report.Warning;
import io.github.weirwise.unit.FoamState;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.Sum;
import io.github.weirwise.unit.Target;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Turns a belief into what is told of it. */
final class Diagnoses {
    /** A part is clearly at fault from this size on. */
    private static final double FAULTY = 0.3;

    private static final double LOW = Math.log(Target.AMOUNT_BAND.low());
    private static final double HIGH = Math.log(Target.AMOUNT_BAND.high());
    private static final double NO_FOAM = Math.log(0.05);
    /** A state is named from this chance on. */
    private static final double NAMED = 0.5;

    private static final double STIRRED_LOG = 0.5;
    private static final double FOAM_LOG = 0.7;
    private static final double MINUTES_A_DAY = 24 * 60;

    private final Belief belief;
    private final Bank bank;

    Diagnoses(Belief belief, Bank bank) {
        this.belief = belief;
        this.bank = bank;
    }

    Diagnosis tell(double floodLog) {
        Mixture amount = belief.amountNow().told(belief.width());
        Map<FoamState, Double> states = states(amount, floodLog);
        Range log = amount.middle80();
        double wanted = bank.model().sheet().wantedMlPerDay();
        List<Warning> warnings = new ArrayList<>();
        if (bank.nothingRead()) {
            warnings.add(Warning.note("diagnosis.nothingRead"));
        }
        return new Diagnosis(
                bank.nothingRead() ? Verdict.CANNOT_TELL : verdict(states),
                states,
                causes(amount),
                belief.sum(Sum.LEVEL, 0.5).middle80(),
                new Range(wanted * Math.exp(log.low()), wanted * Math.exp(log.high())),
                belief.ledgers(),
                belief.forecastsMade(),
                belief.forecastsHeld(),
                warnings);
    }

    private static Map<FoamState, Double> states(Mixture amount, double floodLog) {
        Map<FoamState, Double> states = new EnumMap<>(FoamState.class);
        double none = amount.below(NO_FOAM);
        double dry = amount.below(LOW);
        double good = amount.below(HIGH);
        double wet = amount.below(floodLog);
        states.put(FoamState.NO_FOAM, none);
        states.put(FoamState.TOO_DRY, Math.max(0, dry - none));
        states.put(FoamState.ON_TARGET, Math.max(0, good - dry));
        states.put(FoamState.TOO_WET, Math.max(0, wet - good));
        states.put(FoamState.FLOODING, Math.max(0, 1 - wet));
        return states;
    }

    private static Verdict verdict(Map<FoamState, Double> states) {
        for (Map.Entry<FoamState, Double> each : states.entrySet()) {
            if (each.getValue() >= NAMED) {
                return Verdict.of(each.getKey());
            }
        }
        return Verdict.CANNOT_TELL;
    }

    private List<CauseShare> causes(Mixture amount) {
        List<CauseShare> all = new ArrayList<>();
        double sound = bank.branches().chanceAllUnder(FAULTY);
        for (Part part : Part.SERVICEABLE) {
            Mixture size = belief.size(part);
            Range range = size.middle80();
            Range shown = new Range(Math.max(0, Math.min(1, range.low())), Math.max(0, Math.min(1, range.high())));
            Cause cause = Cause.of(part).orElseThrow();
            all.add(new CauseShare(cause, belief.chanceOver(part, FAULTY), shown, evidence(cause)));
        }
        Mixture passing = belief.passing();
        all.add(simple(Cause.FILM_BREAKER, passing.below(-STIRRED_LOG)));
        all.add(simple(Cause.FOAMING_AGENT, 1 - passing.below(STIRRED_LOG)));
        Mixture foam = belief.foaminess();
        all.add(simple(Cause.LOW_LOAD, foam.below(-FOAM_LOG)));
        all.add(simple(Cause.HIGH_LOAD, 1 - foam.below(FOAM_LOG)));
        all.add(simple(Cause.WEIR_TOO_LOW, sound * amount.below(LOW)));
        all.add(simple(Cause.WEIR_TOO_HIGH, sound * (1 - amount.below(HIGH))));
        all.add(simple(Cause.NOTHING_WRONG, sound * amount.between(LOW, HIGH)));
        all.sort(Comparator.comparingDouble(CauseShare::probability).reversed());
        return all;
    }

    private CauseShare simple(Cause cause, double chance) {
        return new CauseShare(cause, Math.max(0, Math.min(1, chance)), new Range(0, 0), evidence(cause));
    }

    private Reason evidence(Cause cause) {
        List<Reason> lines = new ArrayList<>(bank.readings().traces().of(cause));
        cause.part().filter(part -> part.upkeepDays() > 0).ifPresent(part -> lines.add(Reason.of(since(part))));
        return new Reason(Phrase.of(cause.nameKey()), lines);
    }

    /** How long a part has fouled. */
    private Phrase since(Part part) {
        return belief.service(part)
                .map(at -> Phrase.of(
                        "diagnosis.since.service",
                        Quantity.of(Duration.between(at, belief.now()).toMinutes() / MINUTES_A_DAY, Unit.DAY)))
                .orElse(Phrase.of("diagnosis.since.nothing"));
    }
}
