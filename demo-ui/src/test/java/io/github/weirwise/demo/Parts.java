package io.github.weirwise.demo;

import java.awt.Component;
import java.awt.Container;
import java.awt.EventQueue;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicReference;
import javax.swing.JComponent;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;

/** Finds and drives components without a window. */
public final class Parts {
    private Parts() {}

    /** Does something on the event thread and gives its result. */
    public static <T> T onEvents(Callable<T> work) {
        AtomicReference<T> result = new AtomicReference<>();
        AtomicReference<Exception> failure = new AtomicReference<>();
        try {
            EventQueue.invokeAndWait(() -> {
                try {
                    result.set(work.call());
                } catch (Exception e) {
                    failure.set(e);
                }
            });
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        } catch (java.lang.reflect.InvocationTargetException e) {
            if (e.getCause() instanceof AssertionError assertion) {
                throw assertion;
            }
            throw new IllegalStateException(e.getCause());
        }
        if (failure.get() != null) {
            throw new IllegalStateException(failure.get());
        }
        return result.get();
    }

    /** All components in a tree. */
    public static List<Component> all(Container root) {
        List<Component> found = new ArrayList<>();
        for (Component child : root.getComponents()) {
            found.add(child);
            if (child instanceof Container inner) {
                found.addAll(all(inner));
            }
        }
        return found;
    }

    /** The component with a name. */
    public static <T extends Component> T named(Container root, String name, Class<T> type) {
        return all(root).stream()
                .filter(part -> name.equals(part.getName()))
                .map(type::cast)
                .findFirst()
                .orElseThrow(() -> new AssertionError("no part is named " + name));
    }

    /** Presses a key on a component that would have the focus; tells whether anything listened. */
    public static boolean press(JComponent part, String keyStroke) {
        KeyStroke stroke = KeyStroke.getKeyStroke(keyStroke);
        KeyEvent event = new KeyEvent(
                part, KeyEvent.KEY_PRESSED, 0, stroke.getModifiers(), stroke.getKeyCode(), KeyEvent.CHAR_UNDEFINED);
        Object binding = part.getInputMap(JComponent.WHEN_FOCUSED).get(stroke);
        if (binding != null && part.getActionMap().get(binding) != null) {
            SwingUtilities.notifyAction(part.getActionMap().get(binding), stroke, event, part, stroke.getModifiers());
            return true;
        }
        return SwingUtilities.processKeyBindings(event);
    }
}
