package io.github.weirwise.json;

import io.github.weirwise.reading.Happening;
import io.github.weirwise.unit.Part;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.SplittableRandom;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Requests made by a grammar, all operations: most are legal, numbers lie at the ends of their ranges or beyond, every third line is
 * damaged. What is answered goes into later lines: states, readings of the watch, the step that was advised.
 */
final class ServiceGrammar {
    private static final Instant START = Instant.parse("2026-03-01T08:00:00Z");

    private final Random random;
    private final DocumentMutator mutator;
    private JsonNode kept;
    private JsonNode watched;
    private int lines;

    ServiceGrammar(long seed) {
        random = new Random(new SplittableRandom(seed).nextLong());
        mutator = new DocumentMutator(seed);
    }

    /** The next line. */
    String line() {
        String line = request().toString();
        return lines++ % 3 == 2 ? mutator.mutateTree(line) : line;
    }

    /** Takes up what came. */
    void answered(JsonNode answer) {
        if (answer.has("state")) {
            if (answer.at("/operation").stringValue("").equals("extend")) {
                kept = answer.get("state");
            } else {
                watched = answer.get("state");
            }
        }
    }

    private ObjectNode request() {
        Operation operation = Operation.values()[random.nextInt(Operation.values().length)];
        ObjectNode request = (ObjectNode) Fixtures.tree("{\"version\": 2}");
        request.put("operation", operation.word()).put("id", "line " + random.nextInt(9));
        switch (operation) {
            case ADVISE -> unit(request).put("now", at(random.nextInt(500))).set("journal", journal());
            case OPERATING_POINT -> unit(request);
            case FIT, START_UP -> installation(request);
            case UPKEEP_DUE -> request.put("now", at(random.nextInt(500))).set("journal", journal());
            case CALENDAR ->
                request.put("now", at(random.nextInt(500)))
                        .put("days", Integer.parseInt(pick("1", "3", "40", "3660")))
                        .put("name", "Tank ; , \\n \u202e <b>")
                        .put("zone", pick("UTC", "Europe/Lisbon", "Mars/Crater"))
                        .set("journal", journal());
            case IMPORT -> table(request);
            case WATCH -> sensors(unit(request));
            case EXTEND -> extension(request);
            case SCORE -> unit(request).set("journal", journal());
            case LEARN -> learning(unit(request).put("now", at(random.nextInt(500))));
        }
        return request;
    }

    /** With a wish that may be out of its limits, now and then with a plan that somebody made up. */
    private void learning(ObjectNode request) {
        request.set("journal", random.nextBoolean() ? journal() : journal().removeAll());
        if (random.nextInt(3) == 0) {
            request.putObject("wish")
                    .put("mostDays", Integer.parseInt(pick("3", "4", "7", "22")))
                    .put("mostFloodChance", 0.02)
                    .put("withAir", random.nextBoolean());
        }
        if (random.nextInt(3) == 0) {
            ObjectNode plan = request.putObject("plan");
            ArrayNode stages = plan.putArray("stages");
            for (int i = 0; i < 3; i++) {
                ObjectNode stage = stages.addObject();
                stage.put("from", at(24 * i)).put("until", at(24 * i + 24)).put("floodChance", 0.01);
                stage.put("weirCrestMm", number(206, 1, 2000)).put("airLitresPerHour", 150);
                stage.putObject("skimmateMlPerDay").put("low", 1).put("high", number(300, 1, 1e9));
            }
            plan.put("end", at(9)).put("homeCrestMm", 206).put("homeAirLitresPerHour", 0);
            plan.put("daysOut", 1);
            for (String each : new String[] {"slopeNow", "slopeAfter", "airNow", "airAfter"}) {
                plan.putObject(each).put("low", 0.1).put("high", 0.2);
            }
        }
    }

    /** Goes on from the state of an answer before, now and then with a letter of it changed. */
    private void extension(ObjectNode request) {
        if (kept != null && random.nextInt(4) > 0) {
            request.set("state", kept.deepCopy());
            if (random.nextInt(4) == 0) {
                ArrayNode data = (ArrayNode) request.at("/state/data");
                data.set(0, data.get(0).stringValue().replaceFirst("[A-M]", "Z"));
            }
        } else {
            unit(request);
        }
        request.put("now", at(400 + random.nextInt(500))).set("journal", journal());
    }

    private ObjectNode unit(ObjectNode request) {
        request.put("unit", pick("jetty", "kelp-hall", "seahorse-room"))
                .putObject("settings")
                .put("weirCrestMm", number(206, 1, 2000))
                .put("flowLitresPerHour", number(2200, 0.5, 100_000))
                .put("airLitresPerHour", number(150, 0, 20_000))
                .put("waterCelsius", number(25, 5, 40))
                .put("practicalSalinity", number(35, 0, 42));
        return request;
    }

    private ArrayNode journal() {
        ArrayNode journal = Fixtures.tree("[]").asArray();
        int entries = random.nextInt(30);
        for (int i = 0; i < entries; i++) {
            ObjectNode entry = journal.addObject();
            switch (random.nextInt(5)) {
                case 0 ->
                    entry.put("type", "happening").put("at", at(i * 12)).put("kind", pick((Object[])
                            Happening.Kind.values()));
                case 1 ->
                    entry.put("type", "service").put("at", at(i * 12)).put("part", pick((Object[]) Part.values()));
                case 2 -> entry.put("type", "weirMove").put("at", at(i * 12)).put("toCrestMm", number(206, 1, 2000));
                default -> {
                    ArrayNode seen = entry.put("type", "reading")
                            .put("at", at(i * 12 + random.nextInt(9)))
                            .put("by", pick("", "Ana", "\u202e<b>&\u0000".substring(0, 5)))
                            .putArray("observations");
                    seen.addObject().put("type", "funnelLevel").put("mm", number(13, -300, 500));
                    seen.addObject()
                            .put("type", "cupVolume")
                            .put("ml", number(200, 0, 100_000))
                            .put("hours", number(24, 0.1, 700));
                }
            }
        }
        return journal;
    }

    private void installation(ObjectNode request) {
        ObjectNode installation = (ObjectNode) Fixtures.tree(Fixtures.text("installation.json"));
        installation.remove("version");
        ((ObjectNode) installation.get("tank")).put("lengthMm", number(1200, 100, 20_000));
        ((ObjectNode) installation.get("hose")).put("hoseFallMm", number(120, -500, 5000));
        request.set("installation", installation);
    }

    private void table(ObjectNode request) {
        ArrayNode lines = request.put("soundRowsOnly", random.nextBoolean()).putArray("lines");
        lines.add(pick("time,level (mm),cup (ml),hours", "date;level (mm)", "a\tb", "\"", ""));
        for (int i = random.nextInt(20); i > 0; i--) {
            lines.add(pick("2026-05-04 08:30,22,200,24", "5/1/2026;2,5", "\"\"\",,,", "x".repeat(15_000), "=1+1,2"));
        }
    }

    private void sensors(ObjectNode request) {
        request.set("journal", journal());
        Optional.ofNullable(watched)
                .filter(state -> random.nextBoolean())
                .ifPresent(state -> request.set("state", state));
        ArrayNode values = request.putArray("values");
        for (int i = 0; i < 60; i++) {
            values.addObject()
                    .put("at", at(random.nextInt(10) == 0 ? random.nextInt(3000) : i))
                    .put("kind", pick("FUNNEL_LEVEL", "AIR_FLOW", "SALINITY"))
                    .put("value", number(22, -1e6, 1e6));
        }
        request.put("tick", at(random.nextInt(900)));
    }

    /** Usually the usual, now and then the ends of the range or beyond. */
    private double number(double usual, double low, double high) {
        return switch (random.nextInt(12)) {
            case 0 -> low;
            case 1 -> high;
            case 2 -> high * 1e3;
            case 3 -> -0.0;
            case 4 -> Double.MIN_VALUE;
            default -> usual * (0.7 + 0.6 * random.nextDouble());
        };
    }

    private static String at(int hour) {
        return START.plusSeconds(3600L * hour).toString();
    }

    private String pick(Object... options) {
        return String.valueOf(List.of(options).get(random.nextInt(options.length)));
    }
}
