package io.github.weirwise.practice;

import io.github.weirwise.report.Band;
import io.github.weirwise.report.Count;
import io.github.weirwise.report.Limit;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Quantity;
import io.github.weirwise.report.Require;
import io.github.weirwise.report.Unit;
import io.github.weirwise.report.WrongValueException;
import io.github.weirwise.unit.SkimmerUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.regex.Pattern;

/**
 * One thing to learn on a virtual tank. Hours count from the Monday's midnight of the week in which the trainee comes in.
 *
 * @param name short name: small letters, digits and hyphens
 * @param title what a list shows; must not give the fault away
 * @param level how far a trainee should be
 * @param teaches the one thing it teaches, for the debrief and the trainer
 * @param told what the trainee is told at the start
 * @param unit the unit as its sheet describes it
 * @param tank the tank, hidden truth included
 * @param start how it begins
 * @param events what happens, hidden unless noted
 * @param messages what the trainee is told on the way
 * @param faults what is really the matter; empty when nothing is
 * @param offers what can be looked at and done
 * @param coaching hints and questions
 * @param goals when it is solved
 * @param limits what must not happen
 */
public record Scenario(
        String name,
        String title,
        ScenarioLevel level,
        String teaches,
        List<String> told,
        SkimmerUnit unit,
        ScenarioTank tank,
        ScenarioStart start,
        List<ScenarioEvent> events,
        List<Message> messages,
        List<HiddenFault> faults,
        Offers offers,
        Coaching coaching,
        Goals goals,
        Limits limits) {
    private static final Limit TITLE_COUNT = Limit.of("title", 1, 120, Unit.COUNT, "practice.try.aTitleIsShort");
    private static final Limit EVENTS_COUNT =
            Limit.of("events", 0, 500, Unit.COUNT, "practice.try.fewerEventsTeachMore");

    /** Names of scenarios. */
    public static final String NAME_PATTERN = "[a-z0-9]+(-[a-z0-9]+)*";

    private static final Pattern NAME = Pattern.compile(NAME_PATTERN);

    /**
     * Copies the lists.
     *
     * @throws io.github.weirwise.report.OutOfRangeException if a number is out of its range
     * @throws IllegalArgumentException if a name or a text is missing
     */
    public Scenario {
        Require.text("name", name);
        if (name.length() > 60 || !NAME.matcher(name).matches()) {
            throw new WrongValueException("name", Phrase.of("practice.wrong.name"), Phrase.of("practice.try.suchAs"));
        }
        Require.text("title", title);
        TITLE_COUNT.check(title.length());
        Objects.requireNonNull(level, "level");
        ScenarioText.required("teaches", teaches);
        told = ScenarioText.all("told", told);
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(tank, "tank");
        Objects.requireNonNull(start, "start");
        EVENTS_COUNT.check(events.size());
        events = List.copyOf(events);
        ScenarioText.few("messages", messages.size());
        messages = List.copyOf(messages);
        ScenarioText.few("faults", faults.size());
        faults = List.copyOf(faults);
        Objects.requireNonNull(offers, "offers");
        Objects.requireNonNull(coaching, "coaching");
        Objects.requireNonNull(goals, "goals");
        Objects.requireNonNull(limits, "limits");
    }

    /** What is asked of the trainee; what would give the hidden away is left to the debrief. */
    public List<Phrase> asks() {
        List<Phrase> asks = new ArrayList<>();
        Quantity days = Quantity.of(goals.lastsHours() / 24, Unit.DAY);
        if (goals.onTarget()) {
            asks.add(Phrase.of(
                    "practice.asks.onTarget",
                    Band.of(unit.target().skimmateBandMlPerDay(), Unit.MILLILITRE_PER_DAY),
                    days));
        } else {
            asks.add(Phrase.of("practice.asks.keep", days));
        }
        asks.add(Phrase.of("practice.asks.changes", Count.of(goals.mostChanges(), "report.count.changes")));
        asks.add(Phrase.of(
                "practice.asks.limits",
                Quantity.of(limits.floodHours(), Unit.HOUR),
                Quantity.of(limits.spilledLitres(), Unit.LITRE)));
        return asks;
    }

    /** What holds at every unit, before anything is touched. */
    public static Phrase safety() {
        return Phrase.of("practice.safety");
    }

    /** Hour at which it ends. */
    public double endsAtHour() {
        return start.arrivesAtHour() + goals.lastsHours();
    }

    /** The causes at work at an hour. */
    public List<HiddenFault> faultsAt(double hours) {
        return faults.stream().filter(fault -> fault.fromHours() <= hours).toList();
    }
}
