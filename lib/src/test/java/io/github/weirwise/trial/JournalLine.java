package io.github.weirwise.trial;

import io.github.weirwise.advice.Step;
import io.github.weirwise.reading.Happening;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.Service;
import io.github.weirwise.reading.WeirMove;
import java.util.Locale;
import java.util.stream.Collectors;

/** Short lines for people who study a tank's journal. */
final class JournalLine {
    private JournalLine() {}

    static String of(JournalEntry entry) {
        if (entry instanceof Reading reading) {
            return reading.by() + ": "
                    + reading.observations().stream().map(JournalLine::of).collect(Collectors.joining(", "));
        }
        if (entry instanceof WeirMove move) {
            return String.format(Locale.ROOT, "WEIR to %.1f mm%s", move.toCrestMm(), move.probe() ? " (probe)" : "");
        }
        if (entry instanceof Service service) {
            return "SERVICE " + service.part();
        }
        if (entry instanceof Happening happening) {
            return "(" + happening.kind() + ")";
        }
        return entry.toString();
    }

    private static String of(Observation seen) {
        if (seen instanceof Observation.CupVolume cup) {
            return String.format(
                    Locale.ROOT, "cup %.0f mL in %.0f h%s", cup.ml(), cup.hours(), cup.full() ? " FULL" : "");
        }
        if (seen instanceof Observation.FunnelLevel level) {
            return String.format(Locale.ROOT, "level %.0f", level.mm());
        }
        if (seen instanceof Observation.Darkness darkness) {
            return darkness.word().toString();
        }
        if (seen instanceof Observation.FoamLook look) {
            return look.look().toString();
        }
        return seen.toString();
    }

    static String of(Decision decision) {
        Step step = decision.step();
        String what = step instanceof Step.Hold hold ? "Hold " + hold.reason() : step.toString();
        return what
                + decision.stated()
                        .map(stated -> String.format(
                                Locale.ROOT,
                                "   {%s %.2f, in band %.2f, %.0f to %.0f mL/day, judge %s}",
                                stated.topCause(),
                                stated.topChance(),
                                stated.bandChance(),
                                stated.mlPerDay().low(),
                                stated.mlPerDay().high(),
                                stated.judgeAt()))
                        .orElse("");
    }
}
