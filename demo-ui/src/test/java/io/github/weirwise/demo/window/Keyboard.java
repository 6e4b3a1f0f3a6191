package io.github.weirwise.demo.window;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.demo.Parts;
import java.awt.AWTEvent;
import java.awt.AWTException;
import java.awt.Component;
import java.awt.Container;
import java.awt.KeyboardFocusManager;
import java.awt.Robot;
import java.awt.Toolkit;
import java.awt.event.KeyEvent;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;

/**
 * A person at the keys of a real window: presses them, and waits for what comes of it. The next key is pressed when the window
 * has heard the one before, however slow the machine is: a key that was let go is told only after the focus has moved.
 */
final class Keyboard {
    private static final long LONGEST_WAIT_MS = 60_000;
    private static final int LONGEST_HEARING_MS = 5_000;
    private static final int MOST_TABS = 90;
    /** Keys whose release this program has heard of; one for all, as there is one queue of events. */
    private static final AtomicInteger HEARD = new AtomicInteger();

    static {
        Toolkit.getDefaultToolkit()
                .addAWTEventListener(
                        event -> {
                            if (event.getID() == KeyEvent.KEY_RELEASED) {
                                HEARD.incrementAndGet();
                            }
                        },
                        AWTEvent.KEY_EVENT_MASK);
    }

    private final Robot robot;
    private int pressed;

    Keyboard() throws AWTException {
        robot = new Robot();
        robot.setAutoDelay(15);
    }

    void type(int... keys) {
        for (int key : keys) {
            robot.keyPress(key);
            letGo(key);
            pressed++;
        }
    }

    private void letGo(int key) {
        int before = HEARD.get();
        robot.keyRelease(key);
        // A key that waits for a part which vanishes meanwhile is dropped by the toolkit: nothing is heard of it then.
        long end = System.currentTimeMillis() + LONGEST_HEARING_MS;
        while (HEARD.get() <= before && System.currentTimeMillis() < end) {
            robot.delay(15);
        }
        // What the key set off has been handled once an event that was sent after it has been.
        Parts.onEvents(() -> null);
    }

    /** How many keys were pressed so far; Alt with a letter is two. */
    int pressed() {
        return pressed;
    }

    void alt(int key) {
        robot.keyPress(KeyEvent.VK_ALT);
        type(key);
        pressed++;
        letGo(KeyEvent.VK_ALT);
    }

    static Component owner() {
        return KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    }

    /** Presses Tab until the part with this name, or one inside it, has the focus. */
    void tabTo(String name) {
        Predicate<Component> there = part -> {
            for (Component each = part; each != null; each = each.getParent()) {
                if (name.equals(each.getName())) {
                    return true;
                }
            }
            return false;
        };
        for (int i = 0; i < MOST_TABS && !there.test(owner()); i++) {
            type(KeyEvent.VK_TAB);
        }
        assertThat(there.test(owner())).as("Tab reaches " + name).isTrue();
    }

    private static String name(Component part) {
        return part == null ? "nothing" : String.valueOf(part.getName());
    }

    /** Waits until a condition holds on the event thread. */
    void untilThere(String what, Callable<Boolean> condition) {
        until(what, () -> Parts.onEvents(condition));
    }

    void until(String what, BooleanSupplier condition) {
        long end = System.currentTimeMillis() + LONGEST_WAIT_MS;
        while (!condition.getAsBoolean()) {
            assertThat(System.currentTimeMillis())
                    .as("waited in vain: " + what + ", while the focus is at " + name(owner()))
                    .isLessThan(end);
            robot.delay(30);
        }
    }

    /** Waits until a part is there, can be seen and is on. */
    void untilOn(Container root, String name) {
        untilThere(
                name + " is on",
                () -> Parts.all(root).stream()
                        .anyMatch(part -> name.equals(part.getName()) && part.isShowing() && part.isEnabled()));
    }
}
