package io.github.weirwise.evidence;

import io.github.weirwise.reading.Happening;
import io.github.weirwise.unit.Part;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.StringJoiner;

/** Legal requests that cost as much as we could make them cost: the longest journal, the longest calendar, sensors that never agree. */
final class DearRequests {
    private static final Instant START = Instant.parse("2026-03-02T08:00:00Z");
    private static final long HOURS_BETWEEN = 3;
    private static final int LONGEST_CALENDAR_DAYS = 3660;
    private static final String UNIT =
            "\"unit\": \"jetty\", \"settings\": {\"weirCrestMm\": 206, \"flowLitresPerHour\": 2200,"
                    + " \"airLitresPerHour\": 150, \"waterCelsius\": 25, \"practicalSalinity\": 35}";

    private DearRequests() {}

    /**
     * One of each operation that can be made dear.
     *
     * @param entries of the journal, lines of the table and values of the sensors
     */
    static Map<String, String> of(int entries) {
        String journal = ", \"journal\": " + journal(entries);
        String now = ", \"now\": \"" + at(entries) + "\"";
        Map<String, String> requests = new LinkedHashMap<>();
        requests.put("advise", UNIT + journal + now);
        requests.put("extend", UNIT + journal + now);
        requests.put("score", UNIT + journal);
        requests.put("learn", UNIT + journal + now);
        requests.put("upkeepDue", (journal + now).substring(2));
        requests.put("calendar", "\"name\": \"tank\", \"days\": " + LONGEST_CALENDAR_DAYS + journal + now);
        requests.put("import", "\"soundRowsOnly\": true, \"lines\": " + lines(entries));
        requests.put("watch", UNIT + ", \"journal\": " + journal(entries / 2) + ", \"values\": " + values(entries));
        requests.replaceAll((name, members) -> "{\"version\": 2, \"operation\": \"" + name + "\", " + members + "}");
        return requests;
    }

    private static Instant at(long entry) {
        return START.plusSeconds(3600 * HOURS_BETWEEN * entry);
    }

    private static String journal(int entries) {
        Random random = new Random(1);
        StringJoiner journal = new StringJoiner(",", "[", "]");
        for (int i = 0; i < entries; i++) {
            String type = switch (random.nextInt(10)) {
                case 0 -> "\"happening\", \"kind\": \"" + any(random, Happening.Kind.values()) + "\"";
                case 1 -> "\"service\", \"part\": \"" + any(random, Part.values()) + "\"";
                case 2 -> "\"weirMove\", \"toCrestMm\": " + (196 + random.nextInt(20));
                default ->
                    String.format(
                            Locale.ROOT,
                            "\"reading\", \"observations\": [{\"type\": \"funnelLevel\", \"mm\": %d}, "
                                    + "{\"type\": \"cupVolume\", \"ml\": %d, \"hours\": 12}]",
                            random.nextInt(25),
                            random.nextInt(300));
            };
            journal.add("{\"at\": \"" + at(i) + "\", \"type\": " + type + "}");
        }
        return journal.toString();
    }

    /** A level that creeps to and fro, so that every second window is a reading of its own and asks the adviser. */
    private static String values(int values) {
        StringJoiner told = new StringJoiner(",", "[", "]");
        Instant from = at(values / 2);
        for (int i = 0; i < values; i++) {
            int window = i / 3;
            int climbed = window / 100 % 2 == 0 ? window % 100 : 100 - window % 100;
            told.add(String.format(
                    Locale.ROOT,
                    "{\"at\": \"%s\", \"kind\": \"FUNNEL_LEVEL\", \"value\": %.1f}",
                    from.plusSeconds(400L * i),
                    8 + 2.1 * climbed + 0.1 * (i % 3)));
        }
        return told.toString();
    }

    private static String lines(int lines) {
        StringJoiner table = new StringJoiner(",", "[", "]");
        table.add("\"date;level (mm);cup (ml);hours;air (L/h);flow (L/h);salinity;temp (C);note\"");
        for (int i = 1; i < lines; i++) {
            table.add("\"" + at(i).toString().substring(0, 16) + ";2,5;1.200,5;24;150;2 200;35;77 F;\\\"a; b\\\"\"");
        }
        return table.toString();
    }

    private static Object any(Random random, Object[] some) {
        return some[random.nextInt(some.length)];
    }
}
