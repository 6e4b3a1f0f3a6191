package io.github.weirwise.diagnosis;

import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Range;
import io.github.weirwise.report.Unit;
import io.github.weirwise.report.Warning;
import io.github.weirwise.unit.FoamState;
import io.github.weirwise.unit.Target;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Sums a belief up: the state of the foam, the share of each cause, ranges, and doubts about the readings. */
final class Findings {
    /** A state is named only when it is at least this likely. */
    private static final double NAMED_FROM = 0.5;
    /** A fault up to this share of its worst has only just begun; nobody would call it the reason for anything. */
    private static final double NOTICED = 0.1;
    /** When something in the newest reading fits so ill with all else (about three spreads), it should be read again. */
    private static final double MISFIT_LOG = -4.5;

    private final Belief belief;
    private final List<Possibility> possibilities;
    private final Outlook[] outlooks;

    Findings(Belief belief) {
        this.belief = belief;
        this.possibilities = belief.possibilities();
        this.outlooks = new Outlook[possibilities.size()];
        for (int i = 0; i < outlooks.length; i++) {
            outlooks[i] = possibilities.get(i).now(belief.crestMm());
        }
    }

    Diagnosis diagnosis() {
        Map<FoamState, Double> states = states();
        Map.Entry<FoamState, Double> likeliest =
                states.entrySet().stream().max(Map.Entry.comparingByValue()).orElseThrow();
        boolean tellable =
                likeliest.getValue() >= NAMED_FROM && !belief.observations().isEmpty();
        double target = belief.unit().target().skimmateMlPerDay();
        return new Diagnosis(
                tellable ? Verdict.of(likeliest.getKey()) : Verdict.CANNOT_TELL,
                states,
                causes(),
                spread(i -> outlooks[i].submergenceMm()),
                spread(i -> target * Math.exp(outlooks[i].logAmount())),
                spread(i -> belief.unit().traits().meanLifeSeconds()
                        * possibilities.get(i).unknowns().lifeScale()),
                warnings());
    }

    private Map<FoamState, Double> states() {
        Map<FoamState, Double> states = new EnumMap<>(FoamState.class);
        for (FoamState state : FoamState.values()) {
            states.put(state, 0.0);
        }
        for (int i = 0; i < outlooks.length; i++) {
            states.merge(state(outlooks[i]), possibilities.get(i).weight(), Double::sum);
        }
        return states;
    }

    private FoamState state(Outlook outlook) {
        Target target = belief.unit().target();
        return FoamState.of(Math.exp(outlook.logAmount()) * target.skimmateMlPerDay(), outlook.flooding(), target);
    }

    private List<CauseShare> causes() {
        Map<Cause, Double> shares = new EnumMap<>(Cause.class);
        Cause[] named = new Cause[outlooks.length];
        for (int i = 0; i < outlooks.length; i++) {
            named[i] = named(possibilities.get(i), outlooks[i]);
            shares.merge(named[i], possibilities.get(i).weight(), Double::sum);
        }
        state(shares);
        CauseEvidence evidence = new CauseEvidence(belief, named);
        List<CauseShare> list = new ArrayList<>();
        List<Map.Entry<Cause, Double>> ordered = shares.entrySet().stream()
                .sorted(Map.Entry.<Cause, Double>comparingByValue(Comparator.reverseOrder()))
                .toList();
        for (int rank = 0; rank < ordered.size(); rank++) {
            Cause cause = ordered.get(rank).getKey();
            list.add(new CauseShare(
                    cause, ordered.get(rank).getValue(), sizes(cause, named), evidence.tree(cause, rank < 3)));
        }
        return list;
    }

    /**
     * Puts the chance that experience gives in the place of the likeliest cause's share; the others give or take, but none
     * becomes likelier than it. What then is left is something else.
     */
    private void state(Map<Cause, Double> shares) {
        Cause top = shares.entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .orElseThrow()
                .getKey();
        double before = shares.remove(top);
        double stated = StatedChance.forCause(top, belief.pooled()).of(before);
        double scale = before < 1 - 1e-9 ? (1 - stated) / (1 - before) : 0;
        shares.replaceAll((cause, share) -> Math.min(stated, share * scale));
        double given =
                stated + shares.values().stream().mapToDouble(share -> share).sum();
        shares.put(top, stated);
        shares.merge(Cause.SOMETHING_ELSE, Math.max(0, 1 - given), Double::sum);
    }

    /** A possibility without a fault that can be noticed is told by where its weir stands. */
    private Cause named(Possibility possibility, Outlook outlook) {
        Cause cause = possibility.cause();
        double noticed = cause.serviceable() ? NOTICED : 0;
        boolean gone = cause != Cause.NOTHING_WRONG && possibility.sizeNow() <= noticed && cause != Cause.READING_ERROR;
        if (gone) {
            cause = possibility.secondCause();
        }
        if (cause != Cause.NOTHING_WRONG) {
            return cause;
        }
        return switch (state(outlook)) {
            case NO_FOAM, TOO_DRY -> Cause.WEIR_TOO_LOW;
            case ON_TARGET -> Cause.NOTHING_WRONG;
            case TOO_WET, FLOODING -> Cause.WEIR_TOO_HIGH;
        };
    }

    private Range sizes(Cause cause, Cause[] named) {
        return WeightedSpread.of(possibilities, i -> possibilities.get(i).size(), i -> named[i] == cause)
                .range(0.1, 0.9);
    }

    private Range spread(java.util.function.IntToDoubleFunction value) {
        return WeightedSpread.of(possibilities, value, i -> true).range(0.1, 0.9);
    }

    private List<Warning> warnings() {
        List<Warning> warnings = new ArrayList<>();
        if (belief.observations().isEmpty()) {
            warnings.add(Warning.note("diagnosis.nothingRead"));
            return warnings;
        }
        double misfit = new CauseEvidence(belief, new Cause[0]).worstFitLog();
        if (misfit < MISFIT_LOG) {
            warnings.add(Warning.caution("diagnosis.doNotFit"));
        }
        if (belief.effectiveCount() < 8) {
            warnings.add(Warning.note("diagnosis.fewExplain", Quantity.of(belief.effectiveCount(), Unit.COUNT)));
        }
        return Warning.ranked(warnings);
    }
}
