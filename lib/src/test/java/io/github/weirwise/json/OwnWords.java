package io.github.weirwise.json;

import io.github.weirwise.report.Phrase;
import java.util.Set;

/**
 * The judge of errors: each has a path, and tells what is wrong and what to try by keys of our own bundles. Words that were made elsewhere,
 * and the two sentences that stand for a fault that nobody foresaw, are not ours.
 */
final class OwnWords {
    private static final Set<String> UNFORESEEN =
            Set.of("json.thisUnitCannot", "json.answerWasFound", "json.reportThisLine", "report.words");

    private OwnWords() {}

    static boolean says(DocumentException e) {
        boolean place = e.path().startsWith("$") || e.path().startsWith("line ");
        return place
                && isOwn(e.problemWords())
                && isOwn(e.tryThisWords())
                && !e.getMessage().contains("Exception");
    }

    private static boolean isOwn(Phrase words) {
        return words != null && !UNFORESEEN.contains(words.key());
    }
}
