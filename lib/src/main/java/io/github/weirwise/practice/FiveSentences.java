package io.github.weirwise.practice;

import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** A debrief in five sentences. */
record FiveSentences(Debrief debrief) {
    private static final double DAY = 24;
    /** A habit that cost less than this is named without a price. */
    private static final double WORTH_SAYING_DAYS = 0.2;

    List<Phrase> all() {
        List<Phrase> all = new ArrayList<>(List.of(outcome(), hidden(), cost()));
        well().ifPresent(all::add);
        all.add(debrief.predictionScore().words());
        return List.copyOf(all);
    }

    private Phrase outcome() {
        Outcome own = debrief.outcome();
        Outcome sound = debrief.lanes().get(1).outcome();
        Quantity of = days(own.hours());
        if (!debrief.session().over()) {
            Quantity whole = days(debrief.session().scenario().goals().lastsHours());
            return Phrase.of("practice.short.stopped", of, whole, days(own.hoursInBand()));
        }
        String key = own.solved() ? "practice.short.reached" : "practice.short.notReached";
        return Phrase.of(key, days(own.hoursInBand()), of, days(sound.hoursInBand()));
    }

    private Phrase hidden() {
        List<HiddenFault> faults = debrief.hidden();
        return faults.isEmpty()
                ? Phrase.of("practice.short.nothing")
                : Phrase.of(
                        "practice.short.was",
                        faults.stream().map(HiddenFault::words).collect(Collectors.joining(" ")));
    }

    private Phrase cost() {
        Optional<ProcessPoint> worst = debrief.costliest();
        if (worst.isEmpty()) {
            return idle() ? nothingDone() : Phrase.of("practice.short.noCost");
        }
        ProcessPoint point = worst.get();
        return point.costDays() < WORTH_SAYING_DAYS
                ? Phrase.of("practice.short.missed", point.habit().words(), point.reason())
                : Phrase.of(
                        "practice.short.cost",
                        point.habit().words(),
                        point.reason(),
                        Quantity.of(point.costDays(), Unit.DAY));
    }

    /** Whether no act was made where some were called for, or there was no time for any. */
    private boolean idle() {
        return debrief.lanes().get(0).marks().stream().noneMatch(Lane.Mark::act)
                && !debrief.outcome().solved();
    }

    private Phrase nothingDone() {
        Optional<Lane.Mark> first =
                debrief.lanes().get(1).marks().stream().filter(Lane.Mark::act).findFirst();
        return debrief.session().over() && first.isPresent()
                ? Phrase.of(
                        "practice.short.idle",
                        first.get().what(),
                        SessionClock.words(first.get().atHours()))
                : Phrase.of("practice.short.noAct");
    }

    private Optional<Phrase> well() {
        if (idle()) {
            return Optional.empty();
        }
        return debrief.points().stream()
                .filter(each -> each.verdict() == ProcessPoint.Verdict.KEPT)
                .reduce((first, last) -> last)
                .map(each -> Phrase.of("practice.short.well", each.habit().words(), each.reason()));
    }

    private static Quantity days(double hours) {
        return Quantity.of(hours / DAY, Unit.DAY);
    }
}
