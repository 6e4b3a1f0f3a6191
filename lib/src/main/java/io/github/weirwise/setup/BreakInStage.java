package io.github.weirwise.setup;

import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Range;
import java.util.List;

/**
 * What to expect of a new unit in its first days; common practice, from memory: a few days to two weeks, because new
 * surfaces and a young tank give no steady foam.
 *
 * @param days days after the first start
 * @param expect what to expect and what to leave alone
 */
public record BreakInStage(Range days, Phrase expect) {
    /** Seldom does tuning make sense before this day. */
    public static final double EARLIEST_TUNING_DAY = 3;
    /** Usually it begins about this day. */
    public static final double USUAL_TUNING_DAY = 7;

    /** The stages in order. */
    public static List<BreakInStage> usual() {
        return List.of(
                new BreakInStage(new Range(0, 1), Phrase.of("setup.breakIn.first")),
                new BreakInStage(new Range(1, EARLIEST_TUNING_DAY), Phrase.of("setup.breakIn.fickle")),
                new BreakInStage(new Range(EARLIEST_TUNING_DAY, USUAL_TUNING_DAY), Phrase.of("setup.breakIn.steadier")),
                new BreakInStage(new Range(USUAL_TUNING_DAY, 14), Phrase.of("setup.breakIn.tune")));
    }
}
