package io.github.weirwise.json;

import io.github.weirwise.advice.Advice;
import io.github.weirwise.advice.Adviser;
import io.github.weirwise.advice.KeptState;
import io.github.weirwise.advice.Step;
import io.github.weirwise.care.CareCalendar;
import io.github.weirwise.care.CarePlan;
import io.github.weirwise.care.CareTask;
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
import io.github.weirwise.watch.Attention;
import io.github.weirwise.watch.Counsel;
import io.github.weirwise.watch.SensorWatch;
import io.github.weirwise.watch.UnitBook;
import io.github.weirwise.watch.WatchOptions;
import io.github.weirwise.watch.WatchState;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CancellationException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Every operation of the contract: from the members that are asked with to the members that are told. Keeps nothing. */
final class Service {
    private static final Shapes READ = new Shapes();
    private static final Shape<Request> REQUEST = READ.of(Request.class);
    private static final Shape<Asked.Point> POINT = READ.of(Asked.Point.class);
    private static final Shape<Asked.Site> SITE = READ.of(Asked.Site.class);
    private static final Shape<Asked.Upkeep> UPKEEP = READ.of(Asked.Upkeep.class);
    private static final Shape<Asked.Calendar> CALENDAR = READ.of(Asked.Calendar.class);
    private static final Shape<Asked.Table> TABLE = READ.of(Asked.Table.class);

    private static final Shape<Asked.Watch> WATCH = READ.of(Asked.Watch.class);

    private static final Shape<Asked.Extension> EXTENSION = READ.of(Asked.Extension.class);
    private static final Shape<Asked.Past> PAST = READ.of(Asked.Past.class);

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
            return told(operation, asked);
        } catch (DocumentException | CancellationException e) {
            throw e;
        } catch (OutOfRangeException e) {
            throw new DocumentException("$", e.problem(), Phrase.of("json.checkMeasuresUnit"), e);
        } catch (WrongValueException e) {
            throw asked.member(e.name()).wrong(e.problem(), e.tryThis(), e);
        } catch (RuntimeException e) {
            throw new DocumentException("$", Phrase.of("json.thisUnitCannot"), Phrase.of("json.checkMeasuresUnit"), e);
        }
    }

    private JsonNode told(Operation operation, Place asked) {
        return switch (operation) {
            case ADVISE -> advise(REQUEST.read(asked));
            case OPERATING_POINT -> point(POINT.read(asked));
            case FIT -> fit(SITE.read(asked));
            case START_UP -> startUp(SITE.read(asked));
            case UPKEEP_DUE -> upkeep(UPKEEP.read(asked));
            case CALENDAR -> calendar(CALENDAR.read(asked), asked);
            case IMPORT -> table(TABLE.read(asked), asked);
            case WATCH -> watch(WATCH.read(asked));
            case EXTEND -> extend(EXTENSION.read(asked), asked);
            case SCORE -> score(PAST.read(asked));
        };
    }

    private JsonNode advise(Request request) {
        return advice(new Adviser(options.adviser())
                .advise(request.unit(), request.settings(), request.journal(), request.now()));
    }

    /** An advice in the wanted detail; a look that is asked for says how it is written down. */
    private JsonNode advice(Advice advice) {
        ObjectNode told = tell(Advice.class, advice);
        if (advice.step() instanceof Step.Look look) {
            told.set("recordAs", write.of(RecordAs.class).write(RecordAs.of(look.what())));
        }
        return options.detail() == ServiceOptions.Detail.STEP ? told.remove(MORE_THAN_THE_STEP) : told;
    }

    /** From the state that came, or the first time from unit and settings; all that is needed next time goes along. */
    private JsonNode extend(Asked.Extension asked, Place at) {
        KeptState before = asked.state().isPresent() ? asked.state().get().state() : fresh(asked, at);
        KeptState state = before.extended(asked.journal().entries());
        ObjectNode told = (ObjectNode) advice(new Adviser(options.adviser()).advise(state, asked.now()));
        return told.set("state", write.of(StateText.class).write(StateText.of(state)));
    }

    private static KeptState fresh(Asked.Extension asked, Place at) {
        for (String member : List.of("unit", "settings")) {
            if (at.member(member).isMissing()) {
                throw at.member(member).wrong(Phrase.of("json.missing"), Phrase.of("json.giveOrState", member));
            }
        }
        return KeptState.of(asked.unit().orElseThrow(), asked.settings().orElseThrow(), Journal.EMPTY);
    }

    private JsonNode score(Asked.Past asked) {
        JournalScore score = JournalScore.of(asked.unit(), asked.settings(), asked.journal());
        return tell(Told.ScoreTold.class, Told.ScoreTold.of(score));
    }

    private JsonNode point(Asked.Point asked) {
        return tell(OperatingPoint.class, OperatingPoint.of(asked.unit(), asked.settings()));
    }

    private JsonNode fit(Asked.Site asked) {
        return tell(Told.FitTold.class, Told.FitTold.of(FitCheck.of(asked.installation())));
    }

    private JsonNode startUp(Asked.Site asked) {
        return tell(Told.StartTold.class, Told.StartTold.of(StartUpPlan.of(FitCheck.of(asked.installation()))));
    }

    private JsonNode upkeep(Asked.Upkeep asked) {
        CarePlan plan = asked.plan();
        return tell(
                Told.UpkeepTold.class,
                new Told.UpkeepTold(
                        plan.items().stream().map(Told.UpkeepLine::of).toList()));
    }

    private JsonNode calendar(Asked.Calendar asked, Place at) {
        Set<CareTask> tasks = asked.tasks().isEmpty()
                ? EnumSet.complementOf(EnumSet.of(CareTask.LOOK))
                : EnumSet.copyOf(asked.tasks());
        CareCalendar calendar = CareCalendar.of(asked.upkeep().plan(), zone(asked.zone(), at), asked.days(), tasks);
        Instant stamp = asked.now();
        String file = new CareCalendarFile(options.book(), asked.name(), stamp).of(calendar);
        return tell(
                Told.CalendarTold.class, new Told.CalendarTold(calendar.dates().size(), file));
    }

    private JsonNode table(Asked.Table asked, Place at) {
        ReadingTable reader = new ReadingTable(zone(asked.zone(), at), asked.dateOrder());
        ImportedTable table = reader.read(asked.text());
        return tell(Told.TableTold.class, Told.TableTold.of(asked.soundRowsOnly() ? table : table.orNothing()));
    }

    private JsonNode watch(Asked.Watch asked) {
        GivenBook book = new GivenBook(asked.journal());
        Counsel counsel = Counsel.of(asked.unit(), asked.settings(), options.adviser());
        SensorWatch watch = new SensorWatch(
                book, counsel, WatchOptions.DEFAULT, asked.state().orElse(WatchState.NEW));
        List<Attention> calls = new ArrayList<>();
        asked.values().forEach(each -> calls.addAll(watch.take(each)));
        asked.tick().ifPresent(now -> calls.addAll(watch.tick(now)));
        return tell(
                Told.WatchTold.class,
                new Told.WatchTold(
                        book.added(), calls.stream().map(Told.CallLine::of).toList(), watch.state()));
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

        List<JournalEntry> added() {
            return added;
        }
    }

    private static ZoneId zone(String name, Place at) {
        try {
            return ZoneId.of(name);
        } catch (DateTimeException e) {
            Place member = at.member("zone");
            throw member.wrong(Phrase.of("json.notTimeZone", member.found()), Phrase.of("json.writeEuropeLisbon"));
        }
    }

    private <T> ObjectNode tell(Class<T> type, T value) {
        return (ObjectNode) write.of(type).write(value);
    }
}
