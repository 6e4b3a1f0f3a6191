package io.github.weirwise.evidence;

import io.github.weirwise.Weirwise;
import io.github.weirwise.advice.Advice;
import io.github.weirwise.advice.Step;
import io.github.weirwise.json.Request;
import java.util.List;
import java.util.Optional;

/**
 * A short written case of common practice: what was seen, what a seasoned technician would do and would not do.
 *
 * @param name short name
 * @param title what it is about
 * @param seen what was seen, in words
 * @param wouldDo what a seasoned technician would do, in words
 * @param wouldNotDo what they would not do, in words
 * @param source how the expectation is known
 * @param worked the heading under which it stands among the worked journals, if it does
 * @param allowed the steps that meet the expectation
 * @param forbidden the steps that go against it
 * @param knownMiss why the adviser does something else at present, if it does
 * @param request the case as the library's own request document
 */
record Vignette(
        String name,
        String title,
        String seen,
        String wouldDo,
        String wouldNotDo,
        String source,
        Optional<String> worked,
        List<StepPattern> allowed,
        List<StepPattern> forbidden,
        Optional<String> knownMiss,
        Request request) {
    /** What the adviser says. */
    Advice advice() {
        return Weirwise.advise(request.unit(), request.settings(), request.journal(), request.now());
    }

    /** Whether a step is what a seasoned technician might do. */
    boolean meets(Step step) {
        return allowed.stream().anyMatch(each -> each.fits(step))
                && forbidden.stream().noneMatch(each -> each.fits(step));
    }

    @Override
    public String toString() {
        return name;
    }
}
