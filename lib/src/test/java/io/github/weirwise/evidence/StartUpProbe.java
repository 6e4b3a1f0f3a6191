package io.github.weirwise.evidence;

import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import io.github.weirwise.Weirwise;
import io.github.weirwise.json.WeirwiseJson;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.unit.FirstRoundUnits;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Instant;
import java.util.List;
import tools.jackson.databind.json.JsonMapper;

/** Asks the library one thing for the first and for the second time, in a program that has just started. */
final class StartUpProbe {

    private static final String REQUEST = """
            {"version": 2, "unit": "jetty", "settings": {"weirCrestMm": 206, "flowLitresPerHour": 2200, "airLitresPerHour": 150,
             "waterCelsius": 25, "practicalSalinity": 35}, "journal": [{"type": "reading", "at": "2026-03-02T08:00:00Z", "observations":
             [{"type": "funnelLevel", "mm": 3}, {"type": "cupVolume", "ml": 32, "hours": 24}]}], "now": "2026-03-02T08:05:00Z"}
            """;

    private StartUpProbe() {}

    /** The request's members as Jackson binds records and sealed types by itself. */
    record MappedRequest(int version, String unit, MappedSettings settings, List<MappedEntry> journal, Instant now) {}

    record MappedSettings(
            double weirCrestMm,
            double flowLitresPerHour,
            double airLitresPerHour,
            double waterCelsius,
            double practicalSalinity) {}

    @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "type")
    @JsonSubTypes({
        @JsonSubTypes.Type(name = "reading", value = MappedReading.class),
        @JsonSubTypes.Type(name = "note", value = MappedNote.class)
    })
    sealed interface MappedEntry {}

    record MappedReading(Instant at, List<MappedSeen> observations) implements MappedEntry {}

    record MappedNote(Instant at, String text) implements MappedEntry {}

    @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "type")
    @JsonSubTypes({
        @JsonSubTypes.Type(name = "funnelLevel", value = MappedLevel.class),
        @JsonSubTypes.Type(name = "cupVolume", value = MappedCup.class)
    })
    sealed interface MappedSeen {}

    record MappedLevel(double mm) implements MappedSeen {}

    record MappedCup(double ml, double hours) implements MappedSeen {}

    /**
     * Prints milliseconds of the first and of the second time.
     *
     * @param args what to ask, a name of {@link Question}
     */
    public static void main(String[] args) {
        Runnable question = Question.valueOf(args[0]).asked;
        System.out.println(milliseconds(question) + " " + milliseconds(question));
    }

    private static double milliseconds(Runnable question) {
        long from = System.nanoTime();
        question.run();
        return (System.nanoTime() - from) / 1e6;
    }

    /** Questions, the least first; a runnable touches no class of the library before it is run. */
    enum Question {
        /** The front door stands open: classes loaded, one state at rest computed. */
        DOOR(() -> Weirwise.operatingPoint(unit(), unit().ratedSettings(205))),
        /** The door for texts stands open: readers and writers made, a state at rest written. */
        JSON(() -> WeirwiseJson.writeOperatingPoint(Weirwise.operatingPoint(unit(), unit().ratedSettings(205)))),
        /** A request read and written by the library's own binding. */
        BINDING(() -> WeirwiseJson.writeRequest(WeirwiseJson.readRequest(REQUEST))),
        /** One like it by Jackson's own mapper. */
        MAPPER(() -> {
            JsonMapper mapper = JsonMapper.builder().build();
            mapper.writeValueAsString(mapper.readValue(REQUEST, MappedRequest.class));
        }),
        /** One reading: nearly all of it is loading. */
        SMALL_ADVICE(() -> Weirwise.advise(
                unit(),
                unit().ratedSettings(205),
                Journal.of(Reading.of(now(), new Observation.FunnelLevel(20))),
                now())),
        /** Thirty entries and the usual belief, by code that no compiler has yet seen. */
        FULL_ADVICE(() -> new AdviceScene(30).advise());

        private final Runnable asked;

        Question(Runnable asked) {
            this.asked = asked;
        }

        private static SkimmerUnit unit() {
            return FirstRoundUnits.middle();
        }

        private static Instant now() {
            return Instant.parse("2026-03-02T08:00:00Z");
        }
    }
}
