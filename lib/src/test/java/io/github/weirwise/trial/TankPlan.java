package io.github.weirwise.trial;

import io.github.weirwise.reading.JournalEntry;
import java.util.List;

/**
 * A hidden tank before anybody acts.
 *
 * @param seed its seed, for all noise
 * @param label row of the table per cause that it counts in
 * @param unit the true unit
 * @param ailments hidden causes
 * @param startCrestMm where the weir's mark stands
 * @param historyDays days of readings in the journal before the trial starts
 * @param known what the keeper noted besides readings
 * @param misreadAtStart whether the first reading is grossly wrong
 * @param pace what goes with time
 * @param hardship how the trial is bent
 */
record TankPlan(
        long seed,
        String label,
        TrueUnit unit,
        List<Ailment> ailments,
        double startCrestMm,
        int historyDays,
        List<JournalEntry> known,
        boolean misreadAtStart,
        Pace pace,
        Hardship hardship) {

    /** Whether the only hidden cause is one that passes by itself. */
    boolean onlyPasses() {
        return ailments.size() == 1 && ailments.get(0).kind().course() == HiddenCause.Course.PASSING;
    }

    /** Whether there is so little to skim that darkness is waived. */
    boolean lowLoad() {
        return ailments.stream().anyMatch(each -> each.kind() == HiddenCause.LITTLE);
    }
}
