package io.github.weirwise.demo.window;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** The ways in which the window is used; each is made when it is first turned to, so that the window opens quickly. */
final class Uses {
    private final Map<String, Supplier<Use>> makers = new LinkedHashMap<>();
    private final Map<String, Use> made = new LinkedHashMap<>();
    private final Consumer<Use> whenMade;

    Uses(Consumer<Use> whenMade) {
        this.whenMade = whenMade;
    }

    /** One more, in the order in which their buttons stand. */
    void add(String key, Supplier<Use> maker) {
        makers.put(key, maker);
    }

    List<String> keys() {
        return List.copyOf(makers.keySet());
    }

    /** Whether it was turned to or made ready already. */
    boolean has(String key) {
        return made.containsKey(key);
    }

    Use get(String key) {
        if (!made.containsKey(key)) {
            put(makers.get(key).get());
        }
        return made.get(key);
    }

    /** Puts one in the place of the one with its key. */
    void put(Use use) {
        made.put(use.key(), use);
        whenMade.accept(use);
    }

    /** Those that were made so far. */
    Collection<Use> made() {
        return List.copyOf(made.values());
    }
}
