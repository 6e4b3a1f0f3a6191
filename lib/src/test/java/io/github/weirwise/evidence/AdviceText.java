package io.github.weirwise.evidence;

import io.github.weirwise.advice.Advice;
import io.github.weirwise.advice.Expectation;
import io.github.weirwise.advice.Step;
import io.github.weirwise.diagnosis.ObservationWords;
import io.github.weirwise.json.Request;
import io.github.weirwise.reading.Happening;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.Service;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.PhraseBook;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.QuantityRange;
import io.github.weirwise.report.Reason;
import io.github.weirwise.report.Unit;
import java.time.Instant;

/** A journal and its advice as plain lines, everything that the advice holds. */
final class AdviceText {
    private static final PhraseBook BOOK = PhraseBook.ENGLISH_METRIC;

    private final StringBuilder text = new StringBuilder();

    private AdviceText() {}

    static String of(Request request, Advice advice) {
        AdviceText page = new AdviceText();
        page.journal(request);
        page.advice(advice);
        return page.text.toString();
    }

    private void journal(Request request) {
        line(request.unit().name() + ", weir at "
                + BOOK.say(Quantity.of(request.settings().weirCrestMm(), Unit.MILLIMETRE)) + " before the first entry");
        for (JournalEntry entry : request.journal().entries()) {
            if (entry instanceof Reading reading) {
                line(moment(entry.at()));
                reading.observations().forEach(each -> line("  " + BOOK.say(ObservationWords.of(each))));
            } else {
                line(moment(entry.at()) + "  " + words(entry));
            }
        }
    }

    private static String words(JournalEntry entry) {
        if (entry instanceof WeirMove move) {
            return BOOK.say(Phrase.of("sheet.entry.weir", Quantity.of(move.toCrestMm(), Unit.MILLIMETRE)));
        }
        if (entry instanceof Service service) {
            return BOOK.say(Phrase.of("sheet.entry.services", Phrase.of("diagnosis.part." + service.part())));
        }
        return BOOK.say(Phrase.of("sheet.entry.happening." + ((Happening) entry).kind()));
    }

    private void advice(Advice advice) {
        line("");
        line("STEP     " + BOOK.say(advice.what()));
        advice.floodLookAt().ifPresent(at -> line("FLOOD    look at " + moment(at)));
        line("JUDGE    " + moment(advice.judgeAt()));
        line("EXPECT   " + expectation(advice));
        line("WHY");
        reasons(advice.why(), 1);
        line("WOULD CHANGE IT");
        advice.wouldChangeIt().forEach(each -> line("  " + BOOK.say(each)));
        line("CAUTIONS");
        advice.cautions().forEach(each -> line("  " + each.severity() + ": " + BOOK.say(each)));
    }

    private static String expectation(Advice advice) {
        Expectation expected = advice.expectation();
        boolean nothingTuned = advice.step() instanceof Step.Look || advice.step() instanceof Step.MakeSafe;
        return "level " + BOOK.say(QuantityRange.of(expected.submergenceMm(), Unit.MILLIMETRE)) + ", skimmate "
                + BOOK.say(QuantityRange.of(expected.skimmateMlPerDay(), Unit.MILLILITRE_PER_DAY)) + ", colour "
                + BOOK.say(QuantityRange.of(expected.darknessPtCo(), Unit.PLATINUM_COBALT))
                + (nothingTuned ? "" : ", on target " + BOOK.say(Quantity.of(expected.chanceOnTarget(), Unit.CHANCE)));
    }

    private void reasons(Reason reason, int depth) {
        line("  ".repeat(depth) + BOOK.say(reason.line()));
        reason.because().forEach(each -> reasons(each, depth + 1));
    }

    private static String moment(Instant at) {
        return at.toString().substring(0, 16).replace('T', ' ');
    }

    private void line(String words) {
        text.append(words).append('\n');
    }
}
