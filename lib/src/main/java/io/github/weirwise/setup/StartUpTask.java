package io.github.weirwise.setup;

import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Severity;
import io.github.weirwise.report.Warning;

/**
 * The steps of a first filling and start, in their order; common practice.
 */
public enum StartUpTask {
    /** Look over all parts and wash them in plain water. */
    INSPECT(Severity.CAUTION),
    /** Place filter and extra sump on one flat, level base. */
    PLACE(Severity.DANGER),
    /** Lead the air line up and clip it. */
    AIR_LINE(Severity.DANGER),
    /** Join drain and return line, short and tight. */
    PLUMB(Severity.CAUTION),
    /** Lead the cup's drain to a container. */
    CUP_DRAIN(Severity.DANGER),
    /** Set the weir to its starting height. */
    SET_WEIR(Severity.NOTE),
    /** Fill, the skimmer chamber first, until half of the media is covered. */
    FILL(Severity.DANGER),
    /** Fill the tank up to its overflow. */
    FILL_TANK(Severity.CAUTION),
    /** Look for leaks while all power is still off. */
    LEAKS(Severity.DANGER),
    /** Check the electrics before the first switch. */
    POWER(Severity.DANGER),
    /** Start the return pump. */
    START_RETURN(Severity.DANGER),
    /** Bring the media side to its running level. */
    RUNNING_LEVEL(Severity.CAUTION),
    /** Start the air. */
    START_AIR(Severity.CAUTION),
    /** Check the water in the column against the funnel. */
    CHECK_SUBMERGENCE(Severity.CAUTION),
    /** Rehearse a power cut. */
    REHEARSE(Severity.DANGER);

    private final Severity danger;

    StartUpTask(Severity danger) {
        this.danger = danger;
    }

    /** What to see when it is done. */
    public Phrase see() {
        return Phrase.of("setup.see." + name());
    }

    /** What to do if that is not to be seen. */
    public Phrase ifNot() {
        return Phrase.of("setup.ifNot." + name());
    }

    /** What to mind. */
    public Warning caution() {
        return new Warning(danger, mind());
    }

    Phrase mind() {
        return Phrase.of("setup.mind." + name());
    }

    /** What to do, with this unit's figures. */
    Phrase todo(Object... values) {
        return Phrase.of("setup.do." + name(), values);
    }
}
