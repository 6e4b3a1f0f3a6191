package io.github.weirwise.demo.timing;

import io.github.weirwise.demo.window.MainPanel;
import java.awt.Component;
import java.awt.Container;
import java.awt.EventQueue;
import java.awt.Toolkit;
import java.lang.management.ManagementFactory;
import java.lang.reflect.InvocationTargetException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.KeyStroke;

/**
 * Opens the window at 1200 x 800 and uses it: once through every screen (classes are loaded then), then again with a watch on
 * the event queue, then with bubbles and clock running.
 */
public final class TimingRun {
    private static final List<String> SCREENS = List.of("use.try", "use.tune", "use.practise", "use.care");
    private static final int PRESSES = 40;
    private static final int BETWEEN_MS = 60;
    private static final int MOVING_MS = 6000;
    private static final int LONGEST_WAIT_MS = 20_000;

    private final Supplier<MainPanel> open;
    private final Consumer<String> out;
    private final EventWatch watch = new EventWatch();

    /** @param open opens the window on the event thread and gives its content */
    public TimingRun(Supplier<MainPanel> open, Consumer<String> out) {
        this.open = open;
        this.out = out;
    }

    /** Measures, and prints the line for programs last. */
    public void run() throws InterruptedException, InvocationTargetException {
        Toolkit.getDefaultToolkit().getSystemEventQueue().push(watch);
        MainPanel[] content = new MainPanel[1];
        EventQueue.invokeAndWait(() -> content[0] = open.get());
        MainPanel panel = content[0];
        long patience = System.currentTimeMillis() + LONGEST_WAIT_MS;
        while (!panel.painted() && System.currentTimeMillis() < patience) {
            Thread.sleep(1);
        }
        double firstPaintMs = sinceStart();
        watch.take();
        watch.at("start");
        while (!panel.complete() && System.currentTimeMillis() < patience) {
            Thread.sleep(1);
        }
        double completeMs = sinceStart();
        while (!panel.ready() && System.currentTimeMillis() < patience) {
            Thread.sleep(1);
        }
        out.accept(String.format(
                Locale.ROOT,
                "first paint after %.0f ms, all of the first screen after %.0f ms",
                firstPaintMs,
                completeMs));
        EventWatch.Seen start = watch.take();
        say("after the first paint, until all screens are there", start);
        use(panel);
        EventWatch.Seen first = watch.take();
        say("first time through", first);
        use(panel);
        use(panel);
        EventWatch.Seen again = watch.take();
        say("used again", again);
        double framesPerSecond = moving(panel);
        EventWatch.Seen moving = watch.take();
        say("bubbles and clock running", moving);
        out.accept(String.format(
                Locale.ROOT,
                "result: firstPaintMs=%.0f completeMs=%.0f framesPerSecond=%.1f longestEventMs=%.1f longestEventCpuMs=%.1f"
                        + " startCpuMs=%.1f firstUseCpuMs=%.1f movingCpuMs=%.1f lateShare=%.4f lateCpuShare=%.4f",
                firstPaintMs,
                completeMs,
                framesPerSecond,
                Math.max(again.longestMs(), moving.longestMs()),
                Math.max(again.longestCpuMs(), moving.longestCpuMs()),
                start.longestCpuMs(),
                first.longestCpuMs(),
                moving.longestCpuMs(),
                (again.late() + moving.late()) / (double) Math.max(1, again.events() + moving.events()),
                (again.lateCpu() + moving.lateCpu()) / (double) Math.max(1, again.events() + moving.events())));
    }

    private static double sinceStart() {
        return System.currentTimeMillis() - ManagementFactory.getRuntimeMXBean().getStartTime();
    }

    private void say(String what, EventWatch.Seen seen) {
        out.accept(String.format(
                Locale.ROOT,
                "%s: longest event %.1f ms, %.1f ms of the processor (at %s); of %d events %d took over 16 ms, %d of the processor",
                what,
                seen.longestMs(),
                seen.longestCpuMs(),
                seen.where(),
                seen.events(),
                seen.late(),
                seen.lateCpu()));
    }

    private void use(MainPanel panel) throws InterruptedException, InvocationTargetException {
        for (String key : SCREENS) {
            press(panel, key);
        }
        press(panel, "use.try");
        for (int i = 0; i < PRESSES; i++) {
            key(panel.picture(), i % 8 < 4 ? "UP" : "DOWN");
        }
        for (String name : List.of("clock.hour", "clock.settle", "response.asTable", "response.asTable")) {
            press(panel, name);
        }
        press(panel, "use.tune");
        for (String name : List.of(
                "read.simulate",
                "read.note",
                "do.simulate",
                "do.done",
                "leave.runOn",
                "round.page.sums",
                "round.page.days",
                "round.page.journal",
                "round.page.round",
                "read.more",
                "read.more")) {
            press(panel, name);
        }
        press(panel, "use.practise");
        for (String name : List.of(
                "choose.begin",
                "question.pass",
                "look.round",
                "question.pass",
                "page.log",
                "page.view",
                "page.act",
                "session.hour",
                "session.leave")) {
            press(panel, name);
        }
        press(panel, "use.care");
        for (String name : List.of("care.start", "care.own", "care.fit")) {
            press(panel, name);
        }
    }

    private double moving(MainPanel panel) throws InterruptedException, InvocationTargetException {
        press(panel, "use.try");
        EventQueue.invokeAndWait(() -> panel.setStill(false));
        press(panel, "clock.run");
        Thread.sleep(500);
        long frames = panel.picture().frames();
        long start = System.nanoTime();
        Thread.sleep(MOVING_MS);
        double shown = panel.picture().frames() - frames;
        double seconds = (System.nanoTime() - start) / 1e9;
        press(panel, "clock.run");
        EventQueue.invokeAndWait(() -> panel.setStill(true));
        return shown / seconds;
    }

    private void press(Container content, String name) throws InterruptedException, InvocationTargetException {
        watch.at(name);
        EventQueue.invokeAndWait(() -> find(content, name)
                .filter(AbstractButton.class::isInstance)
                .map(AbstractButton.class::cast)
                .filter(button -> button.isShowing() && button.isEnabled())
                .ifPresent(TimingRun::click));
        Thread.sleep(BETWEEN_MS);
    }

    /** Presses without the pause of a drawn click, which would be counted as work. */
    private static void click(AbstractButton button) {
        button.getModel().setArmed(true);
        button.getModel().setPressed(true);
        button.getModel().setPressed(false);
        button.getModel().setArmed(false);
    }

    private void key(JComponent part, String stroke) throws InterruptedException, InvocationTargetException {
        watch.at("key " + stroke);
        EventQueue.invokeAndWait(() -> {
            Object name = part.getInputMap().get(KeyStroke.getKeyStroke(stroke));
            part.getActionMap().get(name).actionPerformed(null);
        });
        Thread.sleep(BETWEEN_MS / 2);
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
