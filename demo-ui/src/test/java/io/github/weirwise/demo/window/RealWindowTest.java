package io.github.weirwise.demo.window;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.weirwise.demo.Parts;
import io.github.weirwise.demo.Sample;
import io.github.weirwise.demo.look.Dress;
import io.github.weirwise.demo.picture.UnitPicture;
import java.awt.AWTEvent;
import java.awt.Component;
import java.awt.EventQueue;
import java.awt.GraphicsEnvironment;
import java.awt.KeyboardFocusManager;
import java.awt.Point;
import java.awt.Robot;
import java.awt.Toolkit;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import javax.swing.AbstractButton;
import javax.swing.JFrame;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A real window on a real or virtual screen, driven by mouse and keys. Without a screen these fail, they do not skip. */
@Tag("display")
class RealWindowTest {
    private static final long LONGEST_WAIT_MS = 60_000;

    private JFrame frame;
    private MainPanel panel;
    private Robot robot;

    @BeforeEach
    void open() throws Exception {
        assertThat(GraphicsEnvironment.isHeadless())
                .as("these tests need a display")
                .isFalse();
        robot = new Robot();
        robot.setAutoDelay(20);
        frame = Parts.onEvents(() -> MainWindow.open(Sample::desk, Sample.RAISE_FOUR, Dress.USUAL, true));
        panel = (MainPanel) frame.getContentPane();
        Parts.onEvents(() -> {
            panel.choose("use.tune");
            return null;
        });
        until(() -> panel.ready());
        Parts.onEvents(() -> panel.picture().requestFocusInWindow());
        until(() -> panel.complete()
                && panel.picture().isShowing()
                && panel.picture().isFocusOwner());
    }

    @AfterEach
    void close() {
        if (frame != null) {
            Parts.onEvents(() -> {
                frame.dispose();
                return null;
            });
        }
    }

    @Test
    void theWeirFollowsTheMouse() {
        UnitPicture picture = panel.picture();
        double before = crest();
        Point at = Parts.onEvents(() -> {
            Point corner = picture.getLocationOnScreen();
            return new Point(
                    corner.x + (int) picture.weirHandle().getCenterX(),
                    corner.y + (int) picture.weirHandle().getCenterY());
        });
        robot.mouseMove(at.x, at.y);
        robot.mousePress(InputEvent.BUTTON1_DOWN_MASK);
        for (int step = 1; step <= 10; step++) {
            robot.mouseMove(at.x, at.y - step);
        }
        robot.mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
        until(() -> crest() > before + 4);
    }

    @Test
    void theWeirFollowsTheArrowKeys() {
        double before = crest();
        type(KeyEvent.VK_UP);
        until(() -> crest() == before + 0.5);
    }

    @Test
    void theJobIsDoneByKeysAlone() {
        int readings = panel.desk().journal().entries().size();
        alt(KeyEvent.VK_L);
        until(() -> panel.desk().journal().entries().size() == readings + 1);
        alt(KeyEvent.VK_N);
        until(() -> Parts.onEvents(
                () -> Parts.named(panel, "do.done", AbstractButton.class).isEnabled()));
        alt(KeyEvent.VK_N);
        until(() -> crest() == 209);
        var now = panel.desk().now();
        alt(KeyEvent.VK_G);
        until(() -> panel.desk().now().isAfter(now));
    }

    /** A hidden text once asked to be laid out for ever, which kept the event thread at work while nothing moved. */
    @Test
    void theEventThreadRestsWhenNothingMoves() throws Exception {
        for (String use : List.of("use.try", "use.tune", "use.practise", "use.care")) {
            Parts.onEvents(() -> {
                panel.choose(use);
                return null;
            });
            robot.delay(1500);
            Counting events = new Counting();
            Toolkit.getDefaultToolkit().getSystemEventQueue().push(events);
            robot.delay(1000);
            Parts.onEvents(() -> {
                events.leave();
                return null;
            });
            assertThat(events.seen()).as(use + ": events in a second").isLessThan(60);
        }
    }

    /** Counts what it passes on. */
    private static final class Counting extends EventQueue {
        private final AtomicInteger events = new AtomicInteger();

        @Override
        protected void dispatchEvent(AWTEvent event) {
            events.incrementAndGet();
            super.dispatchEvent(event);
        }

        int seen() {
            return events.get();
        }

        void leave() {
            pop();
        }
    }

    @Test
    void tabGoesRoundAndComesBack() {
        Set<Component> visited = new LinkedHashSet<>();
        Component first = owner();
        Component current = first;
        for (int i = 0; i < 60; i++) {
            visited.add(current);
            Component before = current;
            type(KeyEvent.VK_TAB);
            until(() -> owner() != null && owner() != before);
            current = owner();
            if (current == first) {
                break;
            }
        }
        assertThat(current).as("Tab came back to where it began").isSameAs(first);
        assertThat(visited).hasSizeGreaterThan(8);
    }

    @Test
    void tabWalksTheRoundFromTopToBottom() {
        List<Component> walked = new java.util.ArrayList<>();
        Parts.onEvents(
                () -> Parts.named(panel, "ask.FUNNEL_LEVEL", Component.class).requestFocusInWindow());
        until(() -> owner() != null && "ask.FUNNEL_LEVEL".equals(owner().getName()));
        while (!"read.more".equals(owner().getName()) && walked.size() < 40) {
            walked.add(owner());
            Component before = owner();
            type(KeyEvent.VK_TAB);
            until(() -> owner() != null && owner() != before);
        }
        assertThat(walked).hasSizeGreaterThan(10);
        for (int i = 1; i < walked.size(); i++) {
            Point last = walked.get(i - 1).getLocationOnScreen();
            Point next = walked.get(i).getLocationOnScreen();
            int rowEnds = last.y + walked.get(i - 1).getHeight();
            assertThat(next.y >= rowEnds || next.y >= last.y - 12 && next.x > last.x)
                    .as(
                            "%s after %s",
                            walked.get(i).getName(), walked.get(i - 1).getName())
                    .isTrue();
        }
    }

    private static Component owner() {
        return KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    }

    private double crest() {
        return Parts.onEvents(() -> panel.desk().settings().weirCrestMm());
    }

    private void type(int key) {
        robot.keyPress(key);
        robot.keyRelease(key);
    }

    private void alt(int key) {
        robot.keyPress(KeyEvent.VK_ALT);
        type(key);
        robot.keyRelease(KeyEvent.VK_ALT);
    }

    private void until(BooleanSupplier condition) {
        long end = System.currentTimeMillis() + LONGEST_WAIT_MS;
        while (!condition.getAsBoolean()) {
            assertThat(System.currentTimeMillis()).as("waited long enough").isLessThan(end);
            robot.delay(30);
        }
    }
}
