package io.github.weirwise.report;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;

/** Days and times in words; how they are written stands in the texts, the names of days and months come with the language. */
final class Dates {
    private final PhraseBook book;

    Dates(PhraseBook book) {
        this.book = book;
    }

    String moment(Moment moment) {
        return form(moment.patternKey()).format(moment.at().atZone(moment.zone()));
    }

    String date(LocalDate date) {
        return form("report.date").format(date);
    }

    String practiceTime(PracticeTime time) {
        String clock = form("report.clock").format(LocalTime.ofSecondOfDay(60L * time.minuteOfDay()));
        return book.say(Phrase.of("report.practiceTime", time.day(), clock));
    }

    private DateTimeFormatter form(String key) {
        return DateTimeFormatter.ofPattern(book.pattern(key), book.language());
    }
}
