package io.github.weirwise.json;

import java.io.Closeable;
import java.io.IOException;
import java.io.InterruptedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.ReentrantLock;

/**
 * One gate a file for the threads of this program. The operating system holds file locks for the process as a whole, so
 * threads must keep apart by themselves. A gate is there only while somebody uses it or waits for it.
 */
final class FileGates {
    private final Map<Object, Gate> used = new HashMap<>();

    /** The right to use one file until it is left. */
    final class Gate implements Closeable {
        private final Object file;
        private final ReentrantLock lock = new ReentrantLock(true);
        private int users;

        private Gate(Object file) {
            this.file = file;
        }

        @Override
        public void close() {
            lock.unlock();
            release(this);
        }
    }

    /**
     * What tells a file from others however it is called: the system's own key, or where there is none the real path.
     *
     * @throws IOException if there is no such file
     */
    static Object key(Path path) throws IOException {
        Object key = Files.readAttributes(path, BasicFileAttributes.class).fileKey();
        return key == null ? path.toRealPath() : key;
    }

    /**
     * Waits for a file's gate.
     *
     * @param file its {@link #key}
     * @return null if it does not open within the time
     */
    Gate enter(Object file, long nanos) throws InterruptedIOException {
        Gate gate = claim(file);
        boolean open = false;
        try {
            open = gate.lock.tryLock(nanos, TimeUnit.NANOSECONDS);
        } catch (InterruptedException e) {
            throw new InterruptedIOException("interrupted while another thread used the file; try again");
        } finally {
            if (!open) {
                release(gate);
            }
        }
        return open ? gate : null;
    }

    private synchronized Gate claim(Object file) {
        Gate gate = used.computeIfAbsent(file, Gate::new);
        gate.users++;
        return gate;
    }

    private synchronized void release(Gate gate) {
        gate.users--;
        if (gate.users == 0) {
            used.remove(gate.file);
        }
    }
}
