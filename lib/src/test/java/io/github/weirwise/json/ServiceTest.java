package io.github.weirwise.json;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.advice.Advice;
import io.github.weirwise.advice.LookKind;
import io.github.weirwise.internal.kept.LibraryVersion;
import io.github.weirwise.reading.Observation;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

class ServiceTest {
    private static ObjectNode request() {
        return (ObjectNode) Fixtures.tree(Fixtures.text("request.json"));
    }

    private static JsonNode ask(JsonNode request) {
        return Fixtures.tree(WeirwiseJson.reply(request.toString()));
    }

    private static JsonNode with(String options) {
        ObjectNode request = request();
        request.set("options", Fixtures.tree(options));
        return ask(request);
    }

    @Test
    void theLibraryIsThatOfThePom() throws IOException {
        Matcher version =
                Pattern.compile("<version>(.*?)</version>").matcher(Files.readString(Path.of("..", "pom.xml")));
        assertThat(version.find()).isTrue();
        assertThat(LibraryVersion.current()).isEqualTo(version.group(1));
    }

    @Test
    void answersAndErrorsBringTheIdentifierBack() {
        ObjectNode request = request().put("id", "tank-4/17");
        assertThat(ask(request).at("/id").stringValue()).isEqualTo("tank-4/17");
        assertThat(ask(request).at("/library").stringValue()).isEqualTo(LibraryVersion.current());
        request.remove("now");
        assertThat(ask(request).at("/id").stringValue()).isEqualTo("tank-4/17");
        assertThat(ask(request).at("/error/path").stringValue()).isEqualTo("$.now");
    }

    @Test
    void aRequestWithoutAnOperationAsksForAdviceAsBefore() {
        JsonNode plain = ask(request());
        assertThat(ask(request().put("operation", "advise"))).isEqualTo(plain);
        assertThat(plain.at("/step/type").stringValue()).isNotEmpty();
    }

    @Test
    void aRequestThatStillSaysOneIsAnswered() {
        assertThat(ask(request().put("version", 1))).isEqualTo(ask(request()));
        assertThat(ask(request().put("version", 3)).at("/error/path").stringValue())
                .isEqualTo("$.version");
    }

    @Test
    void anAnswerOfALaterLibraryIsStillRead() {
        String answer = WeirwiseJson.answer(Fixtures.text("request.json"));
        Advice today = WeirwiseJson.readAdvice(answer);
        ObjectNode later = (ObjectNode) Fixtures.tree(answer);
        later.put("library", "9.0.0").put("mood", "calm");
        ((ObjectNode) later.at("/diagnosis")).putArray("futures").add(1);
        ((ObjectNode) later.at("/what")).put("spoken", "ba");
        ((ObjectNode) later.at("/step")).put("hurry", 3);
        assertThat(WeirwiseJson.readAdvice(later.toString())).isEqualTo(today);
        assertThat(SchemasTest.schema("answer").validate(later)).isEmpty();
    }

    /** A request is read strictly: there an unknown member is most often a slip. */
    @Test
    void anUnknownMemberOfARequestIsAnError() {
        assertThat(ask(request().put("mood", "calm")).at("/error/path").stringValue())
                .isEqualTo("$.mood");
        assertThat(with("{\"unit\": \"METRIC\"}").at("/error/path").stringValue())
                .isEqualTo("$.options.unit");
        assertThat(with("{\"language\": \"not a tag\"}").at("/error/path").stringValue())
                .isEqualTo("$.options.language");
    }

    @Test
    void wordsComeInTheWantedUnits() {
        JsonNode metric = with("{}");
        JsonNode us = with("{\"units\": \"US_CUSTOMARY\"}");
        assertThat(metric.at("/what/text").stringValue()).contains("mm").doesNotContain(" in");
        assertThat(us.at("/what/text").stringValue()).contains("in").doesNotContain("mm");
        assertThat(us.at("/step")).isEqualTo(metric.at("/step"));
        assertThat(us.at("/what/values")).isEqualTo(metric.at("/what/values"));
    }

    @Test
    void theShortAnswerLeavesOutTheReasonsAndNothingElse() {
        JsonNode full = with("{}");
        JsonNode step = with("{\"detail\": \"STEP\"}");
        Set<String> gone = new TreeSet<>(full.propertyNames());
        gone.removeAll(step.propertyNames());
        assertThat(gone).containsExactly("diagnosis", "why", "wouldChangeIt");
        assertThat(step.get("cautions")).isEqualTo(full.get("cautions"));
    }

    @Test
    void whatCannotBeMeasuredIsNotAskedFor() {
        ServiceOptions options = new Shapes()
                .of(ServiceOptions.class)
                .read(Parser.parse("{\"cannotMeasure\": [\"AIR_FLOW\"], \"canMeasure\": [\"FOAM_CREEP\"]}"));
        assertThat(options.adviser().looks()).contains(LookKind.FOAM_CREEP).doesNotContain(LookKind.AIR_FLOW);
        assertThat(EnumSet.allOf(LookKind.class))
                .hasSize(options.adviser().looks().size() + 1);
    }

    @Test
    void everyLookSaysHowItIsRecorded() {
        for (LookKind look : LookKind.values()) {
            RecordAs as = RecordAs.of(look);
            assertThat(as.observations()).as(look.name()).isNotEmpty();
            for (RecordAs.Form form : as.observations()) {
                assertThat(form.members()).isNotEmpty();
                assertThat(List.of(Observation.class.getPermittedSubclasses()))
                        .anyMatch(type -> ChoiceShape.nameOf(type).equals(form.type()));
            }
        }
    }

    @Test
    void everyOperationAnswersOrSaysWhatItMisses() {
        for (Operation each : Operation.values()) {
            JsonNode answer =
                    Fixtures.tree(WeirwiseJson.reply("{\"version\": 2, \"operation\": \"" + each.word() + "\"}"));
            assertThat(answer.at("/operation").stringValue()).isEqualTo(each.word());
            assertThat(answer.at("/error/problem").stringValue()).isEqualTo("is missing");
        }
    }

    @Test
    void fitAndStartUpAnswerForAnInstallation() {
        ObjectNode installation = (ObjectNode) Fixtures.tree(Fixtures.text("installation.json"));
        installation.remove("version");
        for (String operation : List.of("fit", "startUp")) {
            ObjectNode request = (ObjectNode) Fixtures.tree("{\"version\": 2}");
            request.put("operation", operation).set("installation", installation);
            JsonNode answer = ask(request);
            assertThat(answer.has("error")).as(answer.toString()).isFalse();
            assertThat(answer.get(operation.equals("fit") ? "answers" : "steps").size())
                    .isGreaterThan(9);
        }
    }

    @Test
    void upkeepThatIsDueComesFirstThingsFirst() {
        ObjectNode request = request();
        request.remove(List.of("unit", "settings"));
        JsonNode items =
                ask(request.put("operation", "upkeepDue").put("vesselMl", 500)).get("items");
        assertThat(items.size()).isEqualTo(15);
        assertThat(items.get(0).at("/due").stringValue())
                .isLessThanOrEqualTo(items.get(14).at("/due").stringValue());
    }

    /** In batches, with nothing but the state between them, the watch calls and writes the same as in one go. */
    @Test
    void theWatchGoesOnFromItsState() {
        ArrayNode values = Fixtures.tree("[]").asArray();
        Instant start = Instant.parse("2026-03-02T08:00:00Z");
        for (int minute = 0; minute < 3 * 1440; minute += 10) {
            double level = minute < 2000 ? 13 + minute % 7 * 0.1 : 60;
            values.addObject()
                    .put("at", start.plusSeconds(60L * minute).toString())
                    .put("kind", "FUNNEL_LEVEL")
                    .put("value", level);
        }
        JsonNode whole = ask(watching(values, Fixtures.tree("[]").asArray(), null));
        assertThat(whole.has("error")).as(whole.toString()).isFalse();
        assertThat(whole.get("calls").size()).isPositive();

        ArrayNode journal = Fixtures.tree("[]").asArray();
        ArrayNode calls = Fixtures.tree("[]").asArray();
        JsonNode state = null;
        for (int from = 0; from < values.size(); from += 50) {
            ArrayNode batch = Fixtures.tree("[]").asArray();
            for (int i = from; i < Math.min(from + 50, values.size()); i++) {
                batch.add(values.get(i));
            }
            JsonNode answer = ask(watching(batch, journal, state));
            answer.get("readings").forEach(journal::add);
            answer.get("calls").forEach(calls::add);
            state = answer.get("state");
        }
        assertThat(calls).isEqualTo(whole.get("calls"));
        assertThat(journal).isEqualTo(whole.get("readings"));
        assertThat(state).isEqualTo(whole.get("state"));
        assertThat(state.toString()).hasSizeLessThan(4000);
    }

    /** Day by day from the state alone, the advice is that from the whole journal, and a state that was changed is told. */
    @Test
    void adviceGoesOnFromAKeptState() {
        ObjectNode whole = request();
        ArrayNode entries = (ArrayNode) whole.get("journal");
        JsonNode state = null;
        for (int i = 0; i < entries.size(); i++) {
            ObjectNode next = request().put("operation", "extend");
            next.set("journal", Fixtures.tree("[]").asArray().add(entries.get(i)));
            if (state != null) {
                next.remove(List.of("unit", "settings"));
                next.set("state", state);
            }
            JsonNode answer = ask(next);
            assertThat(answer.has("error")).as(answer.toString()).isFalse();
            state = answer.get("state");
        }
        ObjectNode last = request().put("operation", "extend");
        last.remove(List.of("unit", "settings"));
        last.set("journal", Fixtures.tree("[]"));
        last.set("state", state);
        ObjectNode answer = (ObjectNode) ask(last);
        answer.remove("state");
        assertThat(answer.put("operation", "advise")).isEqualTo(ask(whole.put("operation", "advise")));

        assertThat(SchemasTest.schema("service-request").validate(last)).isEmpty();
        ((ObjectNode) last.get("state")).put("library", "0.0.9");
        assertThat(ask(last).at("/error/problem").stringValue()).contains("version 0.0.9 of the library");
        assertThat(ask(last).at("/error/path").stringValue()).isEqualTo("$.state");
        last.remove("state");
        assertThat(ask(last).at("/error/path").stringValue()).isEqualTo("$.unit");
    }

    @Test
    void forecastsOfAJournalAreScored() {
        ObjectNode request = request().put("operation", "score");
        request.remove("now");
        JsonNode told = ask(request);
        assertThat(told.has("error")).as(told.toString()).isFalse();
        assertThat(told.at("/amounts/count").intValue())
                .isEqualTo(told.get("forecasts").size());
    }

    @Test
    void aPlanToLearnIsToldWithItsStepAndGoesOnFromWhatWasTold() {
        ObjectNode request = request().put("operation", "learn");
        JsonNode first = ask(request);
        assertThat(first.has("error")).as(first.toString()).isFalse();
        assertThat(first.at("/plan/stages").size()).isBetween(3, 6);
        assertThat(first.at("/why/line/key").stringValue()).isEqualTo("advice.learn.why");
        request.set("plan", first.get("plan"));
        assertThat(ask(request)).isEqualTo(first);
        // With the weir where it stood, and all stages through, the usual advice stands.
        request.set("now", first.at("/plan/end"));
        assertThat(ask(request).has("plan")).isFalse();
    }

    @Test
    void whatAnOperationRefusesIsToldWhereItStands() {
        ObjectNode calendar = request().put("operation", "calendar");
        calendar.remove(List.of("unit", "settings"));
        assertThat(ask(calendar).at("/error/path").stringValue()).isEqualTo("$.name");
        assertThat(ask(calendar.put("name", "middle").put("days", 0))
                        .at("/error/path")
                        .stringValue())
                .isEqualTo("$.days");
        calendar.put("days", 3).put("vesselMl", 3);
        JsonNode error = ask(calendar).get("error");
        assertThat(error.get("path").stringValue()).isEqualTo("$.vesselMl");
        assertThat(error.get("tryThis").stringValue()).contains("what cup or container holds");
    }

    /** What comes back of a plan is a person's as much as any other document. */
    @Test
    void aPlanThatTheWeirDoesNotHaveIsRefusedWhereItStands() {
        ObjectNode request = request().put("operation", "learn");
        JsonNode plan = ask(request).get("plan");
        List<Refused> all = List.of(
                new Refused("/stages/1", "weirCrestMm", 400, "$.plan.stages[1].weirCrestMm", "400 mm", "165 to 295 mm"),
                new Refused("/stages/1", "weirCrestMm", -5, "$.plan.stages[1].weirCrestMm", "-5 mm", "1 to 2000 mm"),
                new Refused("", "homeCrestMm", 20, "$.plan.homeCrestMm", "20 mm", "165 to 295 mm"),
                new Refused("/stages/0", "airLitresPerHour", 1e9, "$.plan.stages[0].airLitresPerHour", "L/h"),
                new Refused("/stages/2", "floodChance", 2, "$.plan.stages[2].floodChance", "0 to 1"),
                new Refused("", "daysOut", -1, "$.plan.daysOut", "days"),
                new Refused("", "homeAirLitresPerHour", -1, "$.plan.homeAirLitresPerHour", "L/h"));
        for (Refused each : all) {
            JsonNode changed = plan.deepCopy();
            ((ObjectNode) changed.at(each.in())).put(each.member(), each.value());
            request.set("plan", changed);
            JsonNode error = ask(request).get("error");
            assertThat(error).as(each.toString()).isNotNull();
            assertThat(error.get("path").stringValue()).isEqualTo(each.path());
            assertThat(error.get("problem").stringValue()).contains(each.says());
            assertThat(error.get("tryThis").stringValue()).contains("as it was told");
        }
        ObjectNode short1 = (ObjectNode) plan.deepCopy();
        short1.putArray("stages");
        request.set("plan", short1);
        assertThat(ask(request).at("/error/path").stringValue()).isEqualTo("$.plan.stages");
        ObjectNode turned = (ObjectNode) plan.deepCopy();
        ((ObjectNode) turned.at("/stages/0")).set("until", turned.at("/stages/0/from"));
        request.set("plan", turned);
        assertThat(ask(request).at("/error/path").stringValue()).isEqualTo("$.plan.stages[0].until");
    }

    private record Refused(String in, String member, double value, String path, String... says) {}

    private static ObjectNode watching(ArrayNode values, ArrayNode journal, JsonNode state) {
        ObjectNode request = request().put("operation", "watch");
        request.remove("now");
        request.set("journal", journal);
        request.set("values", values);
        if (state != null) {
            request.set("state", state);
        }
        return request;
    }
}
