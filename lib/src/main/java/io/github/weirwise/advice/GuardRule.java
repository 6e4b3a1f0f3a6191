package io.github.weirwise.advice;

import io.github.weirwise.report.Phrase;
import java.util.Optional;
import java.util.function.Function;

/** What must not be argued away, most urgent first: each rule with its test on what was noted and the step it asks for. */
enum GuardRule {
    /** A flood was seen and nothing was done about it yet. */
    FLOOD_SEEN(FloodRules::makeSafe),
    /** The air is off, or was turned down against a flood. */
    AIR_OFF(AirRules::backToAir),
    /** Pumps were noted as stopped, and nothing shows that they run again. */
    PUMPS_STOPPED(PumpRules::stopped),
    /** Something was done about a flood; whether it helped was not seen yet. */
    FLOOD_ANSWERED(FloodRules::afterAnswer),
    /** A flood was noted more than half a day ago, and nobody looked since. */
    FLOOD_LONG_AGO(FloodRules::longAgo),
    /** A cup with a drain was found full. */
    DRAIN_BACKS_UP(FloodRules::drainBacksUp),
    /** Pumps were started again, and nobody looked since. */
    PUMPS_RESTARTED(PumpRules::restarted),
    /** The noted crest is one that this weir cannot have. */
    CREST_OUTSIDE(OtherRules::crestOutside),
    /** An animal died, and the water was not tested since. */
    ANIMAL_DIED(OtherRules::death);

    private final Function<GuardScene, Optional<Step>> test;

    GuardRule(Function<GuardScene, Optional<Step>> test) {
        this.test = test;
    }

    /** The step that the rule asks for; empty when it does not apply. */
    Optional<Step> step(GuardScene scene) {
        return test.apply(scene);
    }

    /** Why, in words. */
    Phrase words() {
        return Phrase.of("advice.guard." + name());
    }
}
