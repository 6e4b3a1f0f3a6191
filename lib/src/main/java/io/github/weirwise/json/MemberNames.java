package io.github.weirwise.json;

import io.github.weirwise.report.Phrase;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Finds members that do not belong in an object, and guesses which name was meant. */
final class MemberNames {
    /** Words at the end of a name that tell a unit; a name is the same but for them when only the unit is wrong. */
    private static final Set<String> UNIT_WORDS = Set.of(
            ("mm cm m km in inch inches ft feet litre litres liter liters l ml gallon gallons gal oz per hour hours hr h"
                            + " minute minutes min second seconds sec s day days week celsius fahrenheit kelvin c f k pa"
                            + " kpa hpa mbar bar psi mg g kg ug gph lph lpm cfm ppt psu sg pt co percent pct")
                    .split(" "));

    private final boolean strict;

    /** Strict for what people write; answers may hold what a later library added, which is passed over. */
    MemberNames(boolean strict) {
        this.strict = strict;
    }

    /** Rejects the first member that is not one of the known. */
    void check(Place object, Collection<String> known) {
        if (strict) {
            checkAll(object, known);
        }
    }

    private static void checkAll(Place object, Collection<String> known) {
        for (String name : object.node().propertyNames()) {
            if (!known.contains(name)) {
                throw object.member(name).wrong(Phrase.of("json.notKnownHere"), hint(name, known));
            }
        }
    }

    private static Phrase hint(String name, Collection<String> known) {
        Optional<String> otherUnit = known.stream()
                .filter(each -> !stem(each).isEmpty() && stem(each).equals(stem(name)))
                .findFirst();
        if (otherUnit.isPresent()) {
            return Phrase.of("json.nameRightUnit", otherUnit.get());
        }
        return nearest(name, known)
                .map(each -> Phrase.of("json.didYouMean", each))
                .orElse(Phrase.of("json.namesKnownHere", String.join(", ", known)));
    }

    private static List<String> stem(String name) {
        List<String> words = new ArrayList<>(Arrays.asList(name.replaceAll("([a-z])([A-Z])", "$1 $2")
                .toLowerCase(Locale.ROOT)
                .split("[ _-]+")));
        while (!words.isEmpty() && UNIT_WORDS.contains(words.get(words.size() - 1))) {
            words.remove(words.size() - 1);
        }
        return words;
    }

    private static Optional<String> nearest(String name, Collection<String> known) {
        String best = null;
        int fewest = Math.max(2, name.length() / 4) + 1;
        for (String each : known) {
            int changes = changes(name.toLowerCase(Locale.ROOT), each.toLowerCase(Locale.ROOT));
            if (changes < fewest) {
                best = each;
                fewest = changes;
            }
        }
        return Optional.ofNullable(best);
    }

    /** Letters to insert, delete or replace to get from one to the other (Levenshtein 1966). */
    private static int changes(String a, String b) {
        int[] row = new int[b.length() + 1];
        Arrays.setAll(row, j -> j);
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int replaced = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(replaced, 1 + Math.min(row[j], row[j - 1]));
            }
        }
        return row[b.length()];
    }
}
