package io.github.weirwise.evidence;

import io.github.weirwise.json.ScenarioJson;
import io.github.weirwise.practice.Hands;
import io.github.weirwise.practice.Outcome;
import io.github.weirwise.practice.PracticeSession;
import io.github.weirwise.practice.Scenario;
import io.github.weirwise.practice.SessionOptions;
import io.github.weirwise.practice.TrackPoint;
import io.github.weirwise.practice.WholeSession;
import io.github.weirwise.reading.Instrument;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.Service;
import io.github.weirwise.reading.WeirMove;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Ninety days on a virtual tank, judged by common practice (from memory): the adviser is played through them and must not flood
 * by its own raise, must look where a seasoned technician would by a day, may not cost more than the careful keeper, and leaves
 * the weir alone while all is well.
 *
 * @param name short name
 * @param title what is hidden
 * @param wouldDo what a seasoned technician would do
 * @param scenario the ninety days
 * @param right parts and instruments, one of which should be looked at, read or serviced
 * @param fromDay from this day on
 * @param byDay and up to this one
 * @param mostMoves more moves of the weir than this are restless
 * @param misses what the adviser is known to miss
 */
record LongVignette(
        String name,
        String title,
        String wouldDo,
        Scenario scenario,
        List<String> right,
        int fromDay,
        int byDay,
        int mostMoves,
        Set<Rule> misses) {
    /** What common practice asks. */
    enum Rule {
        /** No flood begins within two days of a raise. */
        NO_FLOOD_BY_A_RAISE,
        /** What is the matter is looked at in time. */
        LOOKS_THERE,
        /** It costs no more than the careful keeper. */
        COSTS_NO_MORE,
        /** Few moves of the weir, and hardly any while the amount is well inside its band. */
        NOT_RESTLESS
    }

    private static final String FILE = "/io/github/weirwise/evidence/long-vignettes.json";
    private static final JsonMapper JSON = new JsonMapper();
    private static final double DAYS = 90;
    private static final double NOON = 12;
    private static final double RAISE_HOURS = 48;
    private static final double INSIDE_LOW = 0.6;
    private static final double INSIDE_HIGH = 1.7;
    private static final int MOST_INSIDE = 2;

    /**
     * How it went.
     *
     * @param costDays its cost, in days of a badly running unit
     * @param keeperDays the careful keeper's
     * @param moves of the weir
     * @param broken rules that were broken
     */
    record Verdict(double costDays, double keeperDays, int moves, Set<Rule> broken) {}

    static List<LongVignette> all() {
        try (InputStream in = LongVignette.class.getResourceAsStream(FILE)) {
            List<LongVignette> all = new ArrayList<>();
            JSON.readTree(in.readAllBytes()).forEach(each -> all.add(of(each)));
            return List.copyOf(all);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static LongVignette of(JsonNode node) {
        Set<Rule> misses = EnumSet.noneOf(Rule.class);
        node.path("knownMisses").forEach(each -> misses.add(Rule.valueOf(each.asString())));
        List<String> right = new ArrayList<>();
        node.get("right").forEach(each -> right.add(each.asString()));
        return new LongVignette(
                node.get("name").asString(),
                node.get("title").asString(),
                node.get("wouldDo").asString(),
                scenario(node),
                right,
                node.get("fromDay").asInt(),
                node.get("byDay").asInt(),
                node.get("mostMoves").asInt(),
                misses);
    }

    /** The quiet tank of the scenario "less each week" over ninety days, with what this case hides. */
    private static Scenario scenario(JsonNode node) {
        ObjectNode scenario = (ObjectNode) JSON.readTree(ScenarioJson.builtInText("creeping-scale"));
        scenario.put("name", node.get("name").asString());
        ObjectNode parameters = (ObjectNode) scenario.get("tank").get("parameters");
        parameters.put("NOISE_SIGMA", 0.15).put("NOISE_HOURS", 48).put("NECK_PER_DAY", 0.03);
        node.path("parameters").properties().forEach(each -> parameters.set(each.getKey(), each.getValue()));
        if (node.has("celsius")) {
            ((ObjectNode) scenario.get("start").get("settings")).set("waterCelsius", node.get("celsius"));
        }
        ArrayNode events = scenario.putArray("events");
        for (JsonNode each : node.path("events")) {
            ObjectNode event = (ObjectNode) each.deepCopy();
            event.put("atHours", 24.0 * event.remove("day").asInt() + NOON);
            JsonNode noted = event.remove("noted");
            ObjectNode held = events.addObject();
            held.set("event", event);
            if (noted != null) {
                held.set("noted", noted);
            }
        }
        scenario.putArray("faults");
        scenario.putObject("coaching").put("guidance", "NONE");
        ((ObjectNode) scenario.get("goals"))
                .put("lastsHours", 24 * DAYS)
                .put("mostChanges", 100)
                .putArray("lookAfter");
        return ScenarioJson.readScenario(scenario.toString());
    }

    Verdict judged(Hands hands, int seed) {
        PracticeSession start = PracticeSession.begin(scenario, SessionOptions.DEFAULT.withSeed(seed));
        PracticeSession end = WholeSession.by(hands, start);
        Outcome outcome = Outcome.of(end);
        Outcome keeper = Outcome.of(WholeSession.by(WholeSession.KEEPER, start));
        Set<Rule> broken = EnumSet.noneOf(Rule.class);
        if (floodsByARaise(start, end)) {
            broken.add(Rule.NO_FLOOD_BY_A_RAISE);
        }
        if (end.journal().entries().stream().noneMatch(entry -> isRight(start, entry))) {
            broken.add(Rule.LOOKS_THERE);
        }
        if (outcome.costDays() > keeper.costDays()) {
            broken.add(Rule.COSTS_NO_MORE);
        }
        if (outcome.moves() > mostMoves || insideTheBand(start, end) > MOST_INSIDE) {
            broken.add(Rule.NOT_RESTLESS);
        }
        return new Verdict(outcome.costDays(), keeper.costDays(), outcome.moves(), broken);
    }

    private boolean isRight(PracticeSession start, JournalEntry entry) {
        Instant from = start.now().plus(Duration.ofDays(fromDay));
        Instant until = start.now().plus(Duration.ofDays(byDay));
        if (entry.at().isBefore(from) || entry.at().isAfter(until)) {
            return false;
        }
        if (entry instanceof Service service) {
            return right.contains(service.part().name());
        }
        return entry instanceof Reading reading
                && reading.observations().stream().anyMatch(seen -> right.contains(nameOf(seen)));
    }

    private static String nameOf(Observation seen) {
        return seen instanceof Observation.Inspection look
                ? look.part().name()
                : Instrument.of(seen).name();
    }

    private static double hours(PracticeSession start, Instant at) {
        return start.hours() + Duration.between(start.now(), at).toMinutes() / 60.0;
    }

    private static boolean floodsByARaise(PracticeSession start, PracticeSession end) {
        double crest = start.markMm();
        for (WeirMove move : end.journal().all(WeirMove.class)) {
            double at = hours(start, move.at());
            if (move.toCrestMm() > crest
                    && floodsWithin(end, at, at + RAISE_HOURS)
                    && !floodsWithin(end, at - RAISE_HOURS, at)) {
                return true;
            }
            crest = move.toCrestMm();
        }
        return false;
    }

    private static boolean floodsWithin(PracticeSession end, double from, double until) {
        return end.track().stream()
                .anyMatch(point -> point.flooding() && point.hours() > from && point.hours() <= until);
    }

    /** Moves of the weir made while the true amount of the day before was well inside the band. */
    private static long insideTheBand(PracticeSession start, PracticeSession end) {
        double wanted = end.scenario().unit().target().skimmateMlPerDay();
        return end.journal().all(WeirMove.class).stream()
                .mapToDouble(move -> hours(start, move.at()))
                .filter(at -> {
                    double share = end.track().stream()
                                    .filter(point -> point.hours() > at - 24 && point.hours() <= at)
                                    .mapToDouble(TrackPoint::skimmateMlPerDay)
                                    .average()
                                    .orElse(0)
                            / wanted;
                    return share > INSIDE_LOW && share < INSIDE_HIGH;
                })
                .count();
    }
}
