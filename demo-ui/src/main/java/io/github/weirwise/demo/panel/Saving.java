package io.github.weirwise.demo.panel;

import java.util.function.Supplier;

/** Saves a text to a file that a person names. */
@FunctionalInterface
public interface Saving {
    /** Asks where, suggests a name, writes the text. */
    void save(String suggestedName, Supplier<String> text);
}
