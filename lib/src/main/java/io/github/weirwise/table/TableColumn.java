package io.github.weirwise.table;

import io.github.weirwise.reading.Observation;
import io.github.weirwise.table.TableUnit.Kind;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;

/** What a column of a reading table can hold, by the names that people give it; case, blanks, -, _ and / do not count. */
enum TableColumn {
    /** Day and time of day, or the time of day when there is a day too. */
    TIME(Kind.NONE, "time", "when", "timestamp", "date time", "datetime", "date and time", "clock"),
    /** Day. */
    DAY(Kind.NONE, "date", "day"),
    /** Who read. */
    BY(Kind.NONE, "by", "person", "observer", "who", "read by"),
    /** Level in the column over the funnel base. */
    LEVEL(
            Kind.LENGTH,
            Observation.FunnelLevel::new,
            "level",
            "funnel level",
            "level over funnel",
            "level over funnel base",
            "submergence"),
    /** Collected skimmate. */
    CUP(Kind.VOLUME, "cup", "cup volume", "skimmate", "collected", "skimmate volume"),
    /** Collected skimmate as a rate. */
    RATE(Kind.VOLUME_PER_DAY, "skimmate rate", "skimmate per day", "daily skimmate"),
    /** How long it took. */
    HOURS(Kind.TIME, "collected for", "since emptied", "collection time", "hours"),
    /** Whether the cup had run full. */
    FULL(Kind.NONE, "full", "cup full", "ran full"),
    /** Darkness in words or numbers. */
    DARKNESS(Kind.COLOUR, "darkness", "colour", "color", "skimmate colour", "skimmate color"),
    /** Look of the foam in words. */
    FOAM(Kind.NONE, "foam", "foam look", "look"),
    /** Head over the crest. */
    HEAD(Kind.LENGTH, Observation.HeadOverCrest::new, "head", "head over crest", "weir head"),
    /** Level outside the column over the funnel base. */
    OUTSIDE(Kind.LENGTH, Observation.OutsideLevel::new, "outside level", "level outside", "chamber level"),
    /** Level beyond the weir over the crest. */
    BEYOND(Kind.LENGTH, Observation.LevelBeyondWeir::new, "level beyond weir", "beyond weir", "biofilter level"),
    /** Air. */
    AIR(Kind.FLOW, Observation.AirFlow::new, "air", "air flow", "airflow", "air draw"),
    /** Return flow. */
    FLOW(Kind.FLOW, Observation.ReturnFlow::new, "flow", "return flow", "water flow"),
    /** Salinity. */
    SALINITY(Kind.SALINITY, Observation.Salinity::new, "salinity", "practical salinity", "salt", "specific gravity"),
    /** Water temperature. */
    TEMPERATURE(
            Kind.TEMPERATURE,
            Observation.WaterTemperature::new,
            "temperature",
            "temp",
            "water temperature",
            "water temp"),
    /** Half life of the foam with the injector off. */
    COLLAPSE(
            Kind.TIME,
            hours -> new Observation.FoamCollapse(3600 * hours),
            "foam collapse",
            "collapse",
            "foam half life"),
    /** Where the weir stands. */
    WEIR(Kind.LENGTH, "weir", "weir crest", "crest", "weir height"),
    /** Free words. */
    NOTE(Kind.NONE, "note", "notes", "remark", "remarks", "comment", "comments");

    private static final int LONGEST_NAME = 60;

    private final Kind kind;
    private final DoubleFunction<Observation> seen;
    private final List<String> names;

    TableColumn(Kind kind, String... names) {
        this(kind, null, names);
    }

    /** @param seen what its number shows in metric units; null where a number alone does not say it */
    TableColumn(Kind kind, DoubleFunction<Observation> seen, String... names) {
        this.kind = kind;
        this.seen = seen;
        this.names = Stream.of(names).map(TableColumn::plain).toList();
    }

    /** What its unit must measure. */
    Kind kind() {
        return kind;
    }

    /** What its number shows, in metric units, if the number alone says it. */
    Optional<DoubleFunction<Observation>> seen() {
        return Optional.ofNullable(seen);
    }

    /** The first of its names. */
    String shownName() {
        return names.get(0);
    }

    /** The column of a name, if there is one. */
    static Optional<TableColumn> of(String name) {
        if (name.length() > LONGEST_NAME) {
            return Optional.empty();
        }
        String plain = plain(name);
        return Stream.of(values())
                .filter(column -> column.names.contains(plain))
                .findFirst();
    }

    private static String plain(String name) {
        StringBuilder plain = new StringBuilder();
        for (char c : name.toLowerCase(Locale.ROOT).toCharArray()) {
            if (!Character.isWhitespace(c) && "_-/".indexOf(c) < 0) {
                plain.append(c);
            }
        }
        return plain.toString();
    }
}
