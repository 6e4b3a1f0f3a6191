package io.github.weirwise.demo;

import java.awt.Component;
import java.awt.Container;
import java.util.List;
import java.util.Optional;
import javax.swing.AbstractButton;

/**
 * One screen to be painted, and what is pressed to get there.
 *
 * @param name of its file
 * @param use key of the use that is turned to
 * @param presses names of buttons, pressed one after another
 * @param width in pixels
 * @param height in pixels
 * @param dark whether in dark colours
 * @param us whether in US units
 */
record Screen(String name, String use, List<String> presses, int width, int height, boolean dark, boolean us) {
    private static final int WIDTH = 1200;
    private static final int HEIGHT = 800;

    static Screen of(String name, String use, String... presses) {
        return new Screen(name, use, List.of(presses), WIDTH, HEIGHT, false, false);
    }

    Screen inTheDark() {
        return new Screen(name, use, presses, width, height, true, us);
    }

    Screen inUsUnits() {
        return new Screen(name, use, presses, width, height, dark, true);
    }

    Screen small() {
        return new Screen(name, use, presses, 1024, 700, dark, us);
    }

    /** Presses the button with a name somewhere in a content; nothing happens when it is not there or off. */
    static void press(Container content, String name) {
        find(content, name)
                .filter(AbstractButton.class::isInstance)
                .map(AbstractButton.class::cast)
                .ifPresent(AbstractButton::doClick);
    }

    private static Optional<Component> find(Container content, String name) {
        for (Component part : content.getComponents()) {
            if (name.equals(part.getName())) {
                return Optional.of(part);
            }
            Optional<Component> inside = part instanceof Container inner ? find(inner, name) : Optional.empty();
            if (inside.isPresent()) {
                return inside;
            }
        }
        return Optional.empty();
    }
}
