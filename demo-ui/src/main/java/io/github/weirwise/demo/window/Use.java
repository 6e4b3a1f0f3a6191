package io.github.weirwise.demo.window;

import io.github.weirwise.demo.desk.TankTime;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.picture.Scene;
import java.util.Optional;
import javax.swing.JComponent;

/** One of the ways in which the window is used. All of them share the picture and the clock. */
interface Use {
    /** Name of its texts. */
    String key();

    /** What stands in the picture's place, if it is something else. */
    default Optional<JComponent> picture() {
        return Optional.empty();
    }

    /** What stands under the picture. */
    JComponent controls();

    /** What stands beside the picture. */
    JComponent panel();

    /** What the picture shows; asked only where nothing stands in its place. */
    Scene scene();

    /** The weir was moved in the picture. */
    default void moveWeir(double crestMm) {}

    /** Its clock, when it can be made to run. */
    default Optional<TankTime> time() {
        return Optional.empty();
    }

    /** What is worked on. */
    String title(Dress dress);

    /** Shows what is so now. */
    void refresh();

    /** Other words or colours. */
    void dress(Dress dress);

    /** Calls this after every change of its own. */
    default void onChange(Runnable listener) {}

    /** Begins to make what it consists of, piece by piece; does {@code between} after each and {@code last} when all is there. */
    void build(Runnable between, Runnable last);
}
