package io.github.weirwise.evidence;

import io.github.weirwise.Weirwise;
import io.github.weirwise.json.WeirwiseJson;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.unit.FirstRoundUnits;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Instant;

/** Asks the library one thing for the first and for the second time, in a program that has just started. */
final class StartUpProbe {

    private StartUpProbe() {}

    /**
     * Prints milliseconds of the first and of the second time.
     *
     * @param args what to ask, a name of {@link Question}
     */
    public static void main(String[] args) {
        Runnable question = Question.valueOf(args[0]).asked;
        System.out.println(milliseconds(question) + " " + milliseconds(question));
    }

    private static double milliseconds(Runnable question) {
        long from = System.nanoTime();
        question.run();
        return (System.nanoTime() - from) / 1e6;
    }

    /** Questions, the least first; a runnable touches no class of the library before it is run. */
    enum Question {
        /** The front door stands open: classes loaded, one state at rest computed. */
        DOOR(() -> Weirwise.operatingPoint(unit(), unit().ratedSettings(205))),
        /** The door for texts stands open: readers and writers made, a state at rest written. */
        JSON(() -> WeirwiseJson.writeOperatingPoint(Weirwise.operatingPoint(unit(), unit().ratedSettings(205)))),
        /** One reading: nearly all of it is loading. */
        SMALL_ADVICE(() -> Weirwise.advise(
                unit(),
                unit().ratedSettings(205),
                Journal.of(Reading.of(now(), new Observation.FunnelLevel(20))),
                now())),
        /** Thirty entries and the usual belief, by code that no compiler has yet seen. */
        FULL_ADVICE(() -> new AdviceScene(30).advise());

        private final Runnable asked;

        Question(Runnable asked) {
            this.asked = asked;
        }

        private static SkimmerUnit unit() {
            return FirstRoundUnits.middle();
        }

        private static Instant now() {
            return Instant.parse("2026-03-02T08:00:00Z");
        }
    }
}
