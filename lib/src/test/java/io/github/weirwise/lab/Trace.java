package io.github.weirwise.lab;

import io.github.weirwise.advice.Step;
import io.github.weirwise.lab.rival.Decision;
import io.github.weirwise.lab.truth.Response;
import io.github.weirwise.reading.Happening;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.Service;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.unit.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** A play written down, one line an entry or answer, for people who want to see why a tank went badly. */
final class Trace {
    private final List<String> lines = new ArrayList<>();

    void wrote(Tank tank, JournalEntry entry) {
        String what;
        if (entry instanceof Reading reading) {
            what = reading.observations().stream().map(Trace::seen).collect(Collectors.joining(" "));
        } else if (entry instanceof WeirMove move) {
            what = String.format(Locale.ROOT, "== weir to %.1f", move.toCrestMm());
        } else if (entry instanceof Service service) {
            what = "== serviced " + service.part();
        } else if (entry instanceof Happening happening) {
            what = "-- noted " + happening.kind();
        } else {
            what = entry.toString();
        }
        lines.add(String.format(Locale.ROOT, "%6.2f %-62s %s", LabClock.day(entry.at()), what, truth(tank)));
    }

    private static String truth(Tank tank) {
        Response now = tank.now();
        StringBuilder parts = new StringBuilder();
        for (Part part : tank.fouling().over(0.2)) {
            parts.append(
                    String.format(Locale.ROOT, " %s %.2f", part, tank.fouling().of(part)));
        }
        var water = tank.plan().water();
        return String.format(
                Locale.ROOT,
                "| true x%.2f rest x%.2f day x%.2f level %.1f foam %+.2f pass %+.2f%s%s",
                Math.exp(tank.log()),
                Math.exp(now.logAmount()),
                tank.course().mean(tank.hour(), 24),
                now.levelMm(),
                water.foaminess(tank.hour()),
                water.passing(tank.hour()),
                tank.airOn() ? "" : " AIR OFF",
                parts);
    }

    void decided(Tank tank, Decision decision) {
        double wanted = tank.plan().sheet().target().skimmateMlPerDay();
        String stated = decision.stated()
                .map(each -> String.format(
                        Locale.ROOT,
                        "  expects x%.2f..%.2f in band %.2f by day %.1f, %s %.2f",
                        each.lowMlPerDay() / wanted,
                        each.highMlPerDay() / wanted,
                        each.chanceInBand(),
                        LabClock.day(each.judgeAt()),
                        each.cause(),
                        each.causeChance()))
                .orElse("");
        lines.add("       -> " + step(decision.step()) + stated);
    }

    private static String step(Step step) {
        if (step instanceof Step.MoveWeir move) {
            return String.format(
                    Locale.ROOT,
                    "MOVE %+.1f mm to %.1f%s",
                    move.byMm(),
                    move.toCrestMm(),
                    move.probe() ? " (probe)" : "");
        }
        if (step instanceof Step.Hold hold) {
            return String.format(Locale.ROOT, "HOLD %s until day %.2f", hold.reason(), LabClock.day(hold.until()));
        }
        return step.toString();
    }

    private static String seen(Observation seen) {
        if (seen instanceof Observation.FunnelLevel level) {
            return String.format(Locale.ROOT, "level %.0f", level.mm());
        }
        if (seen instanceof Observation.CupVolume cup) {
            return String.format(Locale.ROOT, "cup %.0f/%.0fh%s", cup.ml(), cup.hours(), cup.full() ? " FULL" : "");
        }
        if (seen instanceof Observation.FoamLook look) {
            return look.look().name();
        }
        if (seen instanceof Observation.Darkness dark) {
            return dark.word().name();
        }
        if (seen instanceof Observation.Inspection inspection) {
            return inspection.part() + " " + inspection.finding();
        }
        return seen.toString();
    }

    List<String> lines() {
        return lines;
    }
}
