package io.github.weirwise.demo.care;

import io.github.weirwise.setup.FitCheck;
import io.github.weirwise.setup.Installation;
import java.util.Map;
import java.util.function.Consumer;

/** Where the description of one's own tank comes from, and where it is kept. */
public interface OwnTank {
    /** Asks for the file of an installation and hands over what is in it. */
    void open(Consumer<Installation> then);

    /** Gives the form what was typed before, now and whenever it is found. */
    void again(Consumer<Map<String, String>> form);

    /** Keeps what is typed, by the names of the boxes. */
    void typed(Map<String, String> boxes);

    /** The tank was held against what its unit needs; the hand-over of that unit tells so. */
    void checked(FitCheck check);
}
