package io.github.weirwise.setup;

import io.github.weirwise.report.Phrase;

/**
 * What is asked before a unit is filled, in the order in which it is asked.
 */
public enum Question {
    /** How much water the return pump brings up. */
    WORKING_POINT,
    /** How often an hour that is the tank's volume. */
    TURNOVER,
    /** How high the water stands at the overflow, against the tank's rim. */
    OVERFLOW_HEAD,
    /** Whether the drain takes the flow quietly, with air in the pipe. */
    DRAIN_QUIET,
    /** Whether the drain takes the flow at all, running full. */
    DRAIN_FULL,
    /** Whether the pipes are short and straight. */
    PLUMBING,
    /** Whether the flow suits the unit. */
    UNIT_FLOW,
    /** Whether the weir reaches its starting height. */
    WEIR_TRAVEL,
    /** Whether what runs back at a power cut fits into filter and sump. */
    POWER_CUT,
    /** Whether an extra sump is needed, and how large. */
    EXTRA_SUMP,
    /** Whether the tank holds what the pump can bring up while the drain is blocked. */
    BLOCKED_DRAIN,
    /** How much water to add or take out after the start. */
    FILLING,
    /** Whether the pump stays under water. */
    PUMP_INTAKE,
    /** Whether filter and extra sump stand level. */
    LEVEL_BASE,
    /** Whether the container is large enough for the skimmate. */
    CONTAINER,
    /** Whether the drain hose falls all the way. */
    HOSE_FALL,
    /** Whether the cup can be lifted out. */
    HEADROOM,
    /** What the stand has to carry. */
    STAND_LOAD,
    /** How far an automatic top-off could dilute the salt. */
    TOP_OFF;

    /** The question in words. */
    public Phrase asked() {
        return Phrase.of("setup.question." + name());
    }

    /** Whose formula or custom the answer rests on. */
    public Phrase source() {
        return Phrase.of("setup.source." + name());
    }

    /** What to change when the answer is not that it fits. */
    Phrase remedy() {
        return Phrase.of("setup.remedy." + name());
    }
}
