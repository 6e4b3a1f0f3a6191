package io.github.weirwise.evidence;

import io.github.weirwise.diagnosis.RandomJournals;
import io.github.weirwise.json.Request;
import io.github.weirwise.json.WeirwiseJson;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.unit.FirstRoundUnits;
import io.github.weirwise.unit.SkimmerUnit;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Journals of every kind that the tests know, by name: worked cases, the first round's, the guard's grid, seeded random ones. */
final class JournalsOfAllKinds {
    private static final List<String> FIRST_ROUND = List.of(
            "unsafe-hold",
            "flood-after-good-days",
            "death-and-full-cup",
            "level-off-for-a-week",
            "air-read-fine-amount-falls",
            "on-target-never-moves",
            "air-off",
            "advise-throws",
            "air-lost-slowly-90-days");
    private static final int RANDOM = 200;

    private JournalsOfAllKinds() {}

    static Map<String, Request> all() {
        Map<String, Request> all = new LinkedHashMap<>();
        Vignettes.all().forEach(each -> all.put("case " + each.name(), each.request()));
        FIRST_ROUND.forEach(name -> all.put("first round " + name, firstRound(name)));
        int line = 0;
        for (GuardCase each : GuardGrid.all()) {
            Request request = new Request(each.unit(), each.start(), each.journal(), each.now());
            all.put("guard " + ++line, request);
        }
        for (int seed = 0; seed < RANDOM; seed++) {
            all.put("random " + seed, random(seed));
        }
        return all;
    }

    private static Request random(long seed) {
        SkimmerUnit unit = FirstRoundUnits.middle();
        Journal journal = RandomJournals.of(seed);
        Instant last = journal.entries().get(journal.entries().size() - 1).at();
        return new Request(unit, unit.ratedSettings(RandomJournals.CREST_MM), journal, last.plusSeconds(60));
    }

    private static Request firstRound(String name) {
        String file = "/io/github/weirwise/advice/cases/" + name + ".json";
        try (InputStream in = JournalsOfAllKinds.class.getResourceAsStream(file)) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            String unit = WeirwiseJson.writeUnit(FirstRoundUnits.middle());
            return WeirwiseJson.readRequest(text.replace("\"lantern-quay-middle\"", unit));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
