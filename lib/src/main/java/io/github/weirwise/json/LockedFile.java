package io.github.weirwise.json;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;

/**
 * A file that is locked against other programs, and other threads of this one, until it is closed.
 *
 * <p>The operating system holds file locks for a process as a whole, and on POSIX systems closing <em>any</em> channel of a
 * file gives them up. Hence one gate a file for all threads of the process, and appending in the system's append mode, where no
 * write can land on another one even if a lock was lost to foreign code that opened and closed the same file. Everything is
 * opened once, and only counts when the path still names that file once the lock is held.
 */
final class LockedFile implements AutoCloseable {
    /** Empty whenever no file is in use. */
    private static final FileGates GATES = new FileGates();
    /** Far behind the end of any file: on Windows a lock on the data would also keep out our own append channel. */
    private static final long LOCKED_BYTE = Long.MAX_VALUE - 1;

    private static final long PATIENCE_NANOS = TimeUnit.SECONDS.toNanos(30);
    private static final long PAUSE_NANOS = TimeUnit.MILLISECONDS.toNanos(2);

    private final Path path;
    private final Object key;
    private final FileGates.Gate gate;
    private final FileChannel channel;
    private final FileChannel end;

    private LockedFile(Path path, Object key, FileGates.Gate gate, FileChannel channel, FileChannel end) {
        this.path = path;
        this.key = key;
        this.gate = gate;
        this.channel = channel;
        this.end = end;
    }

    /** To read; other programs may read at the same time. */
    static LockedFile toRead(Path path) throws IOException {
        return locked(path, true);
    }

    /** To write to a file that exists. */
    static LockedFile toWrite(Path path) throws IOException {
        return locked(path, false);
    }

    /** To write to a file that is made when it does not exist. */
    static LockedFile toCreate(Path path) throws IOException {
        if (!Files.exists(path)) {
            make(path);
        }
        return locked(path, false);
    }

    /** Never opens a file that is there, since closing it again would give up a lock of ours. */
    private static void make(Path path) throws IOException {
        try {
            Files.createFile(path);
        } catch (FileAlreadyExistsException madeMeanwhile) {
            return;
        }
    }

    private static LockedFile locked(Path path, boolean shared) throws IOException {
        long deadline = System.nanoTime() + PATIENCE_NANOS;
        while (true) {
            LockedFile file = open(path, shared, deadline);
            if (file.isInPlace()) {
                return file;
            }
            file.close();
        }
    }

    private static LockedFile open(Path path, boolean shared, long deadline) throws IOException {
        Object key = FileGates.key(path);
        FileGates.Gate gate = GATES.enter(key, deadline - System.nanoTime());
        if (gate == null) {
            throw new IOException(path + " is in use by this program for 30 s; try again");
        }
        FileChannel channel = null;
        FileChannel end = null;
        try {
            channel = shared
                    ? FileChannel.open(path, StandardOpenOption.READ)
                    : FileChannel.open(path, StandardOpenOption.READ, StandardOpenOption.WRITE);
            end = shared ? null : FileChannel.open(path, StandardOpenOption.APPEND);
            waitForLock(path, channel, shared, deadline);
            return new LockedFile(path, key, gate, channel, end);
        } catch (IOException | RuntimeException e) {
            close(channel, end, gate);
            throw e;
        }
    }

    private static void waitForLock(Path path, FileChannel channel, boolean shared, long deadline) throws IOException {
        while (!locked(channel, shared)) {
            if (System.nanoTime() > deadline) {
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

    /** Whether the path still names this file, and not one that was moved over it meanwhile. */
    boolean isInPlace() throws IOException {
        return Files.exists(path) && FileGates.key(path).equals(key);
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
        write(end, bytes);
    }

    /** Adds to the end of another file, which is made when it does not exist. */
    static void append(Path path, byte[] bytes) throws IOException {
        try (FileChannel end = FileChannel.open(path, StandardOpenOption.CREATE, StandardOpenOption.APPEND)) {
            write(end, bytes);
        }
    }

    private static void write(FileChannel end, byte[] bytes) throws IOException {
        ByteBuffer buffer = ByteBuffer.wrap(bytes);
        while (buffer.hasRemaining()) {
            end.write(buffer);
        }
        end.force(true);
    }

    void truncate(long size) throws IOException {
        channel.truncate(size);
        channel.force(true);
    }

    @Override
    public void close() throws IOException {
        close(channel, end, gate);
    }

    /** The last first; a file that was never opened is null. */
    private static void close(FileChannel channel, FileChannel end, FileGates.Gate gate) throws IOException {
        try (gate;
                channel;
                end) {
            return;
        }
    }
}
