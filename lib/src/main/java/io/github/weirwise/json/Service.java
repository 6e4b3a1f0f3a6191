package io.github.weirwise.json;

import io.github.weirwise.advice.Advice;
import io.github.weirwise.advice.Adviser;
import io.github.weirwise.advice.KeptState;
import io.github.weirwise.advice.LearningStep;
import io.github.weirwise.advice.Step;
import io.github.weirwise.care.CareCalendar;
import io.github.weirwise.care.CareTask;
import io.github.weirwise.diagnosis.LearningPlan;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.report.OutOfRangeException;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.WrongValueException;
import io.github.weirwise.score.JournalScore;
import io.github.weirwise.setup.FitCheck;
import io.github.weirwise.setup.StartUpPlan;
import io.github.weirwise.sheet.CareCalendarFile;
import io.github.weirwise.table.ImportedTable;
import io.github.weirwise.table.ReadingTable;
import io.github.weirwise.unit.OperatingPoint;
import io.github.weirwise.unit.Settings;
import io.github.weirwise.watch.Attention;
import io.github.weirwise.watch.Counsel;
import io.github.weirwise.watch.SensorWatch;
import io.github.weirwise.watch.UnitBook;
import io.github.weirwise.watch.WatchOptions;
import io.github.weirwise.watch.WatchState;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Answers every {@link Operation} of the contract: from what is asked with to what is told. Keeps nothing. */
final class Service {
    private static final List<String> MORE_THAN_THE_STEP = List.of("diagnosis", "why", "wouldChangeIt");

    private final ServiceOptions options;
    private final Shapes write;

    private Service(ServiceOptions options, Shapes write) {
        this.options = options;
        this.write = write;
    }

    static Service of(ServiceOptions options) {
        return new Service(options, new Shapes(options.book(), true));
    }

    /** What is told; what lies in range member by member but together describes nothing that runs is an error of the whole. */
    JsonNode answer(Operation operation, Place asked) {
        try {
            return tree(operation.answer(this, asked));
        } catch (DocumentException | CancellationException e) {
            throw e;
        } catch (OutOfRangeException e) {
            Place at = inside(asked, e.name());
            throw at == asked
                    ? at.wrong(e.problem(), Phrase.of("json.checkMeasuresUnit"), e)
                    : at.wrong(e.problem(), e.tryThis(), e);
        } catch (WrongValueException e) {
            throw asked.member(e.name()).wrong(e.problem(), e.tryThis(), e);
        } catch (RuntimeException e) {
            throw new DocumentException("$", Phrase.of("json.thisUnitCannot"), Phrase.of("json.checkMeasuresUnit"), e);
        }
    }

    /** The place that a name or a way such as plan.stages[1].weirCrestMm leads to; the whole when it is none of the request's. */
    private static Place inside(Place asked, String way) {
        Place at = asked;
        for (String step : way.split("[.\\[]")) {
            at = step.endsWith("]")
                    ? at.element(Integer.parseInt(step.substring(0, step.length() - 1)))
                    : at.member(step);
            if (at.isMissing()) {
                return asked;
            }
        }
        return at;
    }

    @SuppressWarnings("unchecked")
    private JsonNode tree(Object told) {
        return told instanceof JsonNode tree ? tree : ((Shape<Object>) write.of(told.getClass())).write(told);
    }

    Object advise(Request request) {
        return advice(new Adviser(options.adviser())
                .advise(request.unit(), request.settings(), request.journal(), request.now()));
    }

    /** An advice in the wanted detail; a look that is asked for says how it is written down. */
    private ObjectNode advice(Advice advice) {
        ObjectNode told = (ObjectNode) tree(advice);
        if (advice.step() instanceof Step.Look look) {
            told.set("recordAs", tree(RecordAs.of(look.what())));
        }
        return options.detail() == ServiceOptions.Detail.STEP ? told.remove(MORE_THAN_THE_STEP) : told;
    }

    /** From the state that came, or the first time from unit and settings; all that is needed next time goes along. */
    Object extend(Asked.Extension asked) {
        KeptState before = asked.state().map(StateText::state).orElseGet(() -> fresh(asked));
        KeptState state = before.extended(asked.journal().entries());
        ObjectNode told = advice(new Adviser(options.adviser()).advise(state, asked.now()));
        return told.set("state", tree(StateText.of(state)));
    }

    private static KeptState fresh(Asked.Extension asked) {
        return KeptState.of(first("unit", asked.unit()), first("settings", asked.settings()), Journal.EMPTY);
    }

    private static <T> T first(String member, Optional<T> given) {
        return given.orElseThrow(() ->
                new WrongValueException(member, Phrase.of("json.missing"), Phrase.of("json.giveOrState", member)));
    }

    Object score(Asked.Past asked) {
        return Told.ScoreTold.of(JournalScore.of(asked.unit(), asked.settings(), asked.journal()));
    }

    /** The step of the plan that runs, or of a new one; without a plan, when there is none or it has to end, the usual advice. */
    Object learn(Asked.Learning asked) {
        Journal journal = asked.journal().until(asked.now());
        Optional<LearningPlan> plan = asked.plan()
                .or(() -> LearningPlan.of(
                        asked.unit(),
                        asked.settings(),
                        journal,
                        asked.now(),
                        asked.wish().orElse(LearningPlan.Wish.USUAL)));
        Advice given = new Adviser(options.adviser()).advise(asked.unit(), asked.settings(), journal, asked.now());
        Settings settings = journal.settingsAfter(asked.settings());
        Optional<Advice> step = plan.flatMap(each -> LearningStep.of(each, given, asked.unit(), settings, asked.now()));
        ObjectNode told = advice(step.orElse(given));
        return step.isPresent() ? told.set("plan", tree(plan.orElseThrow())) : told;
    }

    Object point(Asked.Point asked) {
        return OperatingPoint.of(asked.unit(), asked.settings());
    }

    Object fit(Asked.Site asked) {
        return Told.FitTold.of(FitCheck.of(asked.installation()));
    }

    Object startUp(Asked.Site asked) {
        return Told.StartTold.of(StartUpPlan.of(FitCheck.of(asked.installation())));
    }

    Object upkeep(Asked.Upkeep asked) {
        return new Told.UpkeepTold(
                asked.plan().items().stream().map(Told.UpkeepLine::of).toList());
    }

    Object calendar(Asked.Calendar asked) {
        Set<CareTask> tasks = asked.tasks().isEmpty()
                ? EnumSet.complementOf(EnumSet.of(CareTask.LOOK))
                : EnumSet.copyOf(asked.tasks());
        CareCalendar calendar = CareCalendar.of(asked.upkeep().plan(), asked.zone(), asked.days(), tasks);
        String file = new CareCalendarFile(options.book(), asked.name(), asked.now()).of(calendar);
        return new Told.CalendarTold(calendar.dates().size(), file);
    }

    Object table(Asked.Table asked) {
        ImportedTable table = new ReadingTable(asked.zone(), asked.dateOrder()).read(asked.text());
        return Told.TableTold.of(asked.soundRowsOnly() ? table : table.orNothing());
    }

    Object watch(Asked.Watch asked) {
        GivenBook book = new GivenBook(asked.journal());
        Counsel counsel = Counsel.of(asked.unit(), asked.settings(), options.adviser());
        SensorWatch watch = new SensorWatch(
                book, counsel, WatchOptions.DEFAULT, asked.state().orElse(WatchState.NEW));
        List<Attention> calls = new ArrayList<>();
        asked.values().forEach(each -> calls.addAll(watch.take(each)));
        asked.tick().ifPresent(now -> calls.addAll(watch.tick(now)));
        return new Told.WatchTold(
                book.added, calls.stream().map(Told.CallLine::of).toList(), watch.state());
    }

    /** The journal that came with a request, and what the watch adds to it. */
    private static final class GivenBook implements UnitBook {
        private Journal journal;
        private final List<JournalEntry> added = new ArrayList<>();

        GivenBook(Journal journal) {
            this.journal = journal;
        }

        @Override
        public Journal journal() {
            return journal;
        }

        @Override
        public void add(Reading reading) {
            journal = journal.with(reading);
            added.add(reading);
        }
    }
}
