package io.github.weirwise.demo.timing;

import java.awt.AWTEvent;
import java.awt.EventQueue;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;

/**
 * An event queue that notes how long each event keeps the event thread, in ms: by the clock on the wall, and by the
 * processor's time alone, which a busy machine does not stretch.
 */
final class EventWatch extends EventQueue {
    private static final double BAR_MS = 16;

    private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    private Seen seen = Seen.NOTHING;
    private volatile String at = "";

    /**
     * What was seen.
     *
     * @param events how many
     * @param late how many over 16 ms by the wall
     * @param lateCpu how many over 16 ms by the processor
     * @param longestMs the longest by the wall
     * @param longestCpuMs the longest by the processor
     * @param where what was going on then
     */
    record Seen(long events, long late, long lateCpu, double longestMs, double longestCpuMs, String where) {
        static final Seen NOTHING = new Seen(0, 0, 0, 0, 0, "");

        Seen with(double ms, double cpuMs, String at) {
            return new Seen(
                    events + 1,
                    late + (ms > BAR_MS ? 1 : 0),
                    lateCpu + (cpuMs > BAR_MS ? 1 : 0),
                    Math.max(longestMs, ms),
                    Math.max(longestCpuMs, cpuMs),
                    cpuMs > longestCpuMs ? at : where);
        }
    }

    @Override
    protected void dispatchEvent(AWTEvent event) {
        long start = System.nanoTime();
        long startCpu = threads.getCurrentThreadCpuTime();
        super.dispatchEvent(event);
        double cpuMs = (threads.getCurrentThreadCpuTime() - startCpu) / 1e6;
        double ms = (System.nanoTime() - start) / 1e6;
        synchronized (this) {
            seen = seen.with(ms, cpuMs, at);
        }
        if (Boolean.getBoolean("weirwise.timing.verbose") && cpuMs > BAR_MS) {
            System.err.printf("%8.1f ms cpu %8.1f ms wall  %s  %s%n", cpuMs, ms, at, event.paramString());
        }
    }

    /** What is done from now on. */
    void at(String what) {
        at = what;
    }

    /** Gives what was seen, and begins anew. */
    synchronized Seen take() {
        Seen taken = seen;
        seen = Seen.NOTHING;
        return taken;
    }
}
