package io.github.weirwise.practice;

import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.Service;
import io.github.weirwise.reading.SettingChange;
import io.github.weirwise.reading.WeirMove;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Which questions stand open at a moment. */
record OpenQuestions(Scenario scenario, List<Question> asked, Journal journal, Set<String> answered, double hours) {
    List<Question> now() {
        return Stream.concat(asked.stream(), scenario.coaching().questions().stream())
                .filter(each -> !answered.contains(each.name()))
                .filter(this::due)
                .toList();
    }

    private boolean due(Question question) {
        return switch (question.when()) {
            case START -> true;
            case FIRST_LOOK -> since(Reading.class::isInstance);
            case FIRST_ACT ->
                since(entry -> entry instanceof WeirMove || entry instanceof Service || entry instanceof SettingChange);
            case AT_HOUR -> hours >= question.hours();
            case END -> hours >= scenario.endsAtHour();
        };
    }

    private boolean since(Predicate<JournalEntry> kind) {
        Instant arrival = SessionClock.at(scenario.start().arrivesAtHour());
        return journal.entries().stream()
                .anyMatch(entry -> entry.at().isAfter(arrival) && kind.test(entry)
                        || entry.at().equals(arrival) && kind.test(entry) && !(entry instanceof Reading));
    }
}
