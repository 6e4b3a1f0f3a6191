package io.github.weirwise.json;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.concurrent.locks.ReentrantLock;

/**
 * A file that is locked against other programs, and other threads of this one, until it is closed.
 *
 * <p>The operating system holds file locks for a process as a whole, and on POSIX systems closing <em>any</em> channel of a
 * file gives them up. Hence one gate for all threads of the process, and appending in the system's append mode, where no
 * write can land on another one even if a lock was lost to foreign code that opened and closed the same file.
 */
final class LockedFile implements AutoCloseable {
    private static final ReentrantLock GATE = new ReentrantLock();
    /** Far behind the end of any file: on Windows a lock on the data would also keep out our own append channel. */
    private static final long LOCKED_BYTE = Long.MAX_VALUE - 1;

    private static final long PATIENCE_NANOS = TimeUnit.SECONDS.toNanos(30);
    private static final long PAUSE_NANOS = TimeUnit.MILLISECONDS.toNanos(2);

    private final Path path;
    private final FileChannel channel;

    private LockedFile(Path path, FileChannel channel) {
        this.path = path;
        this.channel = channel;
    }

    /** To read; other readers may read at the same time. */
    static LockedFile toRead(Path path) throws IOException {
        return open(path, true, StandardOpenOption.READ);
    }

    /** To write to a file that exists. */
    static LockedFile toWrite(Path path) throws IOException {
        return open(path, false, StandardOpenOption.READ, StandardOpenOption.WRITE);
    }

    /** To write to a file that is made when it does not exist. */
    static LockedFile toCreate(Path path) throws IOException {
        return open(path, false, StandardOpenOption.READ, StandardOpenOption.WRITE, StandardOpenOption.CREATE);
    }

    private static LockedFile open(Path path, boolean shared, StandardOpenOption... options) throws IOException {
        GATE.lock();
        FileChannel channel = null;
        try {
            channel = FileChannel.open(path, options);
            waitForLock(path, channel, shared);
            return new LockedFile(path, channel);
        } catch (IOException | RuntimeException e) {
            if (channel != null) {
                channel.close();
            }
            GATE.unlock();
            throw e;
        }
    }

    private static void waitForLock(Path path, FileChannel channel, boolean shared) throws IOException {
        long start = System.nanoTime();
        while (!locked(channel, shared)) {
            if (System.nanoTime() - start > PATIENCE_NANOS) {
                throw new IOException(
                        path + " is locked by another program for 30 s; close that program and try again");
            }
            LockSupport.parkNanos(PAUSE_NANOS);
        }
    }

    private static boolean locked(FileChannel channel, boolean shared) throws IOException {
        try {
            FileLock lock = channel.tryLock(LOCKED_BYTE, 1, shared);
            return lock != null;
        } catch (OverlappingFileLockException heldInThisProcess) {
            return false;
        }
    }

    long size() throws IOException {
        return channel.size();
    }

    byte[] read(long from, int length) throws IOException {
        ByteBuffer buffer = ByteBuffer.allocate(length);
        while (buffer.hasRemaining() && channel.read(buffer, from + buffer.position()) >= 0) {
            // goes on until all is there or the file ends
        }
        byte[] read = new byte[buffer.position()];
        buffer.flip().get(read);
        return read;
    }

    /** Adds to the end and does not return before the disk has it. */
    void append(byte[] bytes) throws IOException {
        append(path, bytes, StandardOpenOption.APPEND);
    }

    static void append(Path path, byte[] bytes, StandardOpenOption... options) throws IOException {
        try (FileChannel end = FileChannel.open(path, options)) {
            ByteBuffer buffer = ByteBuffer.wrap(bytes);
            while (buffer.hasRemaining()) {
                end.write(buffer);
            }
            end.force(true);
        }
    }

    void truncate(long size) throws IOException {
        channel.truncate(size);
        channel.force(true);
    }

    @Override
    public void close() throws IOException {
        try {
            channel.close();
        } finally {
            GATE.unlock();
        }
    }
}
