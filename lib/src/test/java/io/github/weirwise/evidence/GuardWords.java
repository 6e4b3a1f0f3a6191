package io.github.weirwise.evidence;

import io.github.weirwise.reading.DarknessWord;
import io.github.weirwise.reading.Finding;
import io.github.weirwise.reading.FoamLookWord;
import io.github.weirwise.reading.Happening;
import io.github.weirwise.reading.JournalEntry;
import io.github.weirwise.reading.Observation;
import io.github.weirwise.reading.Reading;
import io.github.weirwise.reading.Service;
import io.github.weirwise.reading.SettingChange;
import io.github.weirwise.reading.WeirMove;
import io.github.weirwise.unit.Part;
import io.github.weirwise.unit.SkimmerUnit;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The words in which the guard's grid notes what was seen, done and what happened. */
final class GuardWords {
    private static final Instant TODAY = Instant.parse("2026-03-20T00:00:00Z");
    private static final double MORNING_HOURS = 8;

    private static final Map<String, FoamLookWord> FOAM = Map.of(
            "none", FoamLookWord.NONE,
            "low", FoamLookWord.LOW_IN_NECK,
            "stiff", FoamLookWord.STIFF,
            "creamy", FoamLookWord.CREAMY,
            "runny", FoamLookWord.RUNNY,
            "streaming", FoamLookWord.STREAMING);

    private static final Map<String, DarknessWord> COLOUR = Map.of(
            "clear", DarknessWord.CLEAR,
            "straw", DarknessWord.STRAW,
            "light", DarknessWord.LIGHT_TEA,
            "tea", DarknessWord.DARK_TEA,
            "coffee", DarknessWord.COFFEE);

    private static final Map<String, Happening.Kind> HAPPENED = Map.ofEntries(
            Map.entry("flood", Happening.Kind.FLOOD),
            Map.entry("animal died", Happening.Kind.ANIMAL_DIED),
            Map.entry("pumps stopped", Happening.Kind.PUMP_STOPPED),
            Map.entry("pumps started", Happening.Kind.PUMP_RESTARTED),
            Map.entry("fed", Happening.Kind.FED),
            Map.entry("fed heavily", Happening.Kind.FED_HEAVILY),
            Map.entry("hands in tank", Happening.Kind.HANDS_IN_TANK),
            Map.entry("conditioner", Happening.Kind.CONDITIONER),
            Map.entry("sealant", Happening.Kind.SEALANT),
            Map.entry("medicine", Happening.Kind.MEDICATION),
            Map.entry("water changed", Happening.Kind.WATER_CHANGE),
            Map.entry("topped off", Happening.Kind.TOP_OFF),
            Map.entry("cup emptied", Happening.Kind.CUP_EMPTIED),
            Map.entry("first start", Happening.Kind.FIRST_START));

    private static final Map<String, Part> PARTS = Map.of(
            "neck", Part.NECK_AND_CUP,
            "pad", Part.FILTER_PAD,
            "air line", Part.AIR_LINE,
            "injector pump", Part.INJECTOR_PUMP,
            "nozzle", Part.INJECTOR_NOZZLE,
            "return pump", Part.RETURN_PUMP,
            "vent", Part.CUP_VENT,
            "weir plate", Part.WEIR_PLATE);

    private GuardWords() {}

    /** A clock time of today, or of so many days ago: {@code 08:05}, {@code -3d 14:00}. */
    static Instant instant(String words) {
        String[] parts = words.strip().split(" ");
        int days = parts.length > 1 ? Integer.parseInt(parts[0].replace("d", "")) : 0;
        String[] clock = parts[parts.length - 1].split(":");
        return TODAY.plus(Duration.ofDays(days))
                .plus(Duration.ofHours(Integer.parseInt(clock[0])))
                .plus(Duration.ofMinutes(Integer.parseInt(clock[1])));
    }

    /** Mornings before today, one reading a day: {@code none}, or so many {@code good}, {@code dry} or {@code wet} days. */
    static List<JournalEntry> history(SkimmerUnit unit, String words) {
        List<JournalEntry> entries = new ArrayList<>();
        if (words.equals("none")) {
            return entries;
        }
        String[] parts = words.split(" ");
        int days = Integer.parseInt(parts[1]);
        for (int day = -days; day < 0; day++) {
            entries.add(morning(unit, parts[0], day));
        }
        return entries;
    }

    private static Reading morning(SkimmerUnit unit, String kind, int day) {
        double share = switch (kind) {
            case "good" -> day % 2 == 0 ? 1.05 : 0.95;
            case "dry" -> 0.2;
            case "wet" -> 2.6;
            default -> throw new IllegalArgumentException("no days are " + kind);
        };
        double levelMm =
                unit.target().submergenceMm() + 4 * Math.signum(Math.log(share)) * (kind.equals("good") ? 0 : 1);
        return Reading.of(
                TODAY.plus(Duration.ofDays(day)).plus(Duration.ofHours((long) MORNING_HOURS)),
                new Observation.FunnelLevel(levelMm),
                new Observation.CupVolume(Math.round(share * unit.target().skimmateMlPerDay()), 24, false),
                new Observation.Darkness(kind.equals("wet") ? DarknessWord.LIGHT_TEA : DarknessWord.DARK_TEA),
                new Observation.FoamLook(kind.equals("wet") ? FoamLookWord.RUNNY : FoamLookWord.CREAMY));
    }

    /** One entry: a time, then what was done, happened or seen; several sights at once with commas between. */
    static JournalEntry entry(String words) {
        int cut = words.indexOf(' ', words.indexOf(':'));
        Instant at = instant(words.substring(0, cut));
        String what = words.substring(cut + 1).strip();
        if (HAPPENED.containsKey(what)) {
            return new Happening(at, HAPPENED.get(what));
        }
        if (what.startsWith("weir to ")) {
            return new WeirMove(at, number(what.substring(8)), false);
        }
        if (what.startsWith("air to ")) {
            return new SettingChange(at, SettingChange.Knob.AIR, number(what.substring(7)));
        }
        if (what.startsWith("flow to ")) {
            return new SettingChange(at, SettingChange.Knob.FLOW, number(what.substring(8)));
        }
        if (what.startsWith("cleaned ")) {
            return new Service(at, part(what.substring(8)));
        }
        List<Observation> seen = new ArrayList<>();
        for (String sight : what.split(",")) {
            seen.add(sight(sight.strip()));
        }
        return new Reading(at, "", seen);
    }

    private static Observation sight(String words) {
        String[] parts = words.split(" ");
        String last = parts[parts.length - 1];
        if (words.startsWith("cup ")) {
            double hours = number(parts[3].replace("h", ""));
            return new Observation.CupVolume(number(parts[1]), hours, last.equals("full"));
        }
        if (words.startsWith("looked at ")) {
            Part part = part(words.substring(10, words.lastIndexOf(' ')));
            return new Observation.Inspection(part, last.equals("bad") ? Finding.BAD : Finding.GOOD);
        }
        return switch (parts[0]) {
            case "foam" -> new Observation.FoamLook(FOAM.get(last));
            case "colour" -> new Observation.Darkness(COLOUR.get(last));
            case "level" -> new Observation.FunnelLevel(number(last));
            case "salinity" -> new Observation.Salinity(number(last));
            case "crest" -> new Observation.CrestAgainstMark(number(last));
            case "head" -> new Observation.HeadOverCrest(number(last));
            case "beyond" -> new Observation.LevelBeyondWeir(number(last));
            case "air" -> new Observation.AirFlow(number(last));
            default -> throw new IllegalArgumentException("nothing is seen like this: " + words);
        };
    }

    private static Part part(String words) {
        Part part = PARTS.get(words);
        if (part == null) {
            throw new IllegalArgumentException("no part " + words);
        }
        return part;
    }

    private static double number(String words) {
        return Double.parseDouble(words);
    }
}
