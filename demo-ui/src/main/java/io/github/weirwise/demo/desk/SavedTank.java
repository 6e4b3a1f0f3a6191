package io.github.weirwise.demo.desk;

import io.github.weirwise.json.DocumentException;
import io.github.weirwise.json.Request;
import io.github.weirwise.json.WeirwiseJson;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * The work on the invented tank as a document of the library: unit, settings, journal and the hour. The tank itself is not
 * saved; it lives through the same days again.
 */
public final class SavedTank {
    private SavedTank() {}

    /** The document. */
    public static String of(Request saved) {
        return WeirwiseJson.writeRequest(saved);
    }

    /** The work as it was left, on a tank that nobody has touched; empty when the document is not of that tank. */
    public static Optional<TankDesk> again(String document, Supplier<TankDesk> untouched) {
        try {
            Request saved = WeirwiseJson.readRequest(document);
            TankDesk desk = untouched.get();
            boolean same = saved.unit().equals(desk.unit())
                    && saved.settings().equals(desk.told())
                    && !saved.now().isBefore(desk.start());
            if (!same) {
                return Optional.empty();
            }
            desk.liveAgain(saved);
            return Optional.of(desk);
        } catch (DocumentException e) {
            return Optional.empty();
        }
    }
}
