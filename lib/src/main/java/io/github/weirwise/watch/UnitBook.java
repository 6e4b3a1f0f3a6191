package io.github.weirwise.watch;

import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.Reading;

/**
 * Where the host keeps what is known of one unit: what people wrote, and the readings that the watch adds. A host may leave
 * old entries out, as long as the settings that its {@link Counsel} knows are those before the first entry left.
 *
 * @since 0.1
 */
public interface UnitBook {
    /** All that is known now. */
    Journal journal();

    /** Keeps one more reading. */
    void add(Reading reading);
}
