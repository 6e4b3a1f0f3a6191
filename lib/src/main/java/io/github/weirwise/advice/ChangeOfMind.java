package io.github.weirwise.advice;

import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Range;
import io.github.weirwise.report.Unit;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.SkimmerUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Results that would prove an advice wrong, by the kind of step and against the wanted band, and what to do then. */
final class ChangeOfMind {
    /** A meter this far under what was set is no scatter. */
    private static final double FAR_BELOW = 0.8;

    private static final double SALINITY_OFF = 2;
    private static final double CREST_OFF_MM = 3;

    private final GuardScene scene;
    private final Quantity low;
    private final Quantity high;

    ChangeOfMind(GuardScene scene) {
        this.scene = scene;
        Range band = scene.unit().target().skimmateBandMlPerDay();
        low = Quantity.of(band.low(), Unit.MILLILITRE_PER_DAY);
        high = Quantity.of(band.high(), Unit.MILLILITRE_PER_DAY);
    }

    /** What would change a step; with a rule of the guard the way back comes first. */
    List<Phrase> lines(Step step, Optional<GuardRule> rule) {
        List<Phrase> lines = new ArrayList<>();
        rule.ifPresent(each -> lines.add(back(step, each)));
        boolean aboutLevel = !(step instanceof Step.Look look) || LevelOff.tellsOfLevel(look.what());
        if (rule.isEmpty() && aboutLevel && LevelOff.in(scene).isPresent()) {
            lines.add(Phrase.of("advice.back.LEVEL_OFF"));
        }
        if (step instanceof Step.MoveWeir move) {
            Quantity half = Quantity.of(Math.max(1, Math.abs(move.byMm()) / 2), Unit.MILLIMETRE);
            boolean up = move.byMm() > 0;
            lines.add(
                    up
                            ? Phrase.of("advice.mind.raisedTooFar", high, half)
                            : Phrase.of("advice.mind.loweredTooFar", low, half));
            lines.add(up ? Phrase.of("advice.mind.raisedInVain", low) : Phrase.of("advice.mind.loweredInVain", high));
        } else if (step instanceof Step.ServicePart) {
            lines.add(Phrase.of("advice.mind.service", low, high));
        } else if (step instanceof Step.Look look) {
            lines.addAll(afterLook(look.what()));
        } else if (step instanceof Step.Hold hold && hold.reason() != HoldReason.AIR_OFF) {
            lines.add(Phrase.of("advice.mind.hold", low, high));
            lines.add(Phrase.of("advice.mind.flood"));
        } else if (step instanceof Step.MakeSafe) {
            lines.add(Phrase.of("advice.mind.flood"));
        }
        return lines;
    }

    private static Phrase back(Step step, GuardRule rule) {
        return step instanceof Step.MakeSafe safe
                ? Phrase.of("advice.back." + safe.how())
                : Phrase.of("advice.back." + rule);
    }

    private List<Phrase> afterLook(LookKind kind) {
        if (kind.part().isPresent()) {
            return part(kind.part().get());
        }
        SkimmerUnit unit = scene.unit();
        return switch (kind.instrument().orElseThrow()) {
            case AIR_FLOW ->
                measured(kind, Quantity.of(FAR_BELOW * scene.settings().airLitresPerHour(), Unit.LITRE_PER_HOUR));
            case RETURN_FLOW ->
                measured(kind, Quantity.of(FAR_BELOW * scene.settings().flowLitresPerHour(), Unit.LITRE_PER_HOUR));
            case SALINITY ->
                measured(
                        kind,
                        Quantity.of(scene.start().practicalSalinity(), Unit.SALINITY),
                        Quantity.of(SALINITY_OFF, Unit.SALINITY));
            case CREST_AGAINST_MARK -> measured(kind, Quantity.of(CREST_OFF_MM, Unit.MILLIMETRE));
            case FUNNEL_LEVEL -> measured(kind, Quantity.of(unit.target().submergenceMm(), Unit.MILLIMETRE));
            case CUP_VOLUME -> measured(kind, low, high);
            case DARKNESS,
                    DARKNESS_MATCH,
                    FOAM_LOOK,
                    HEAD_OVER_CREST,
                    OUTSIDE_LEVEL,
                    FOAM_COLLAPSE,
                    FOAM_CREEP,
                    LEVEL_BEYOND_WEIR,
                    WATER_TEMPERATURE,
                    INSPECTION -> measured(kind);
        };
    }

    private static List<Phrase> measured(LookKind kind, Object... limits) {
        return List.of(Phrase.of("advice.mind.look." + kind, limits));
    }

    private static List<Phrase> part(Part part) {
        return List.of(
                Phrase.of("advice.mind.partBad", Phrase.of("advice.service." + part)),
                Phrase.of("advice.mind.partGood"));
    }
}
