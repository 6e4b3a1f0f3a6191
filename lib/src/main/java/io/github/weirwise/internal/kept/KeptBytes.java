package io.github.weirwise.internal.kept;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.Constructor;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.zip.CRC32C;
import java.util.zip.DataFormatException;
import java.util.zip.Deflater;
import java.util.zip.Inflater;

/**
 * Records of numbers, words, instants, lists, maps by word and further records, as bytes. The bytes hold no names but begin with a
 * number for version and layout: they can be read by the same version of the library only.
 *
 * @since 0.2
 */
public final class KeptBytes {
    private static final int MOST_BYTES = 4_000_000;
    private static final int SUM_BYTES = 4;

    private KeptBytes() {}

    /** The bytes of a record, made small, a checksum before them. */
    public static byte[] seal(Record value) {
        byte[] plain = write(value);
        Deflater deflater = new Deflater();
        deflater.setInput(plain);
        deflater.finish();
        byte[] small = new byte[plain.length + 1000];
        int length = SUM_BYTES;
        while (!deflater.finished()) {
            length += deflater.deflate(small, length, small.length - length);
        }
        deflater.end();
        ByteBuffer.wrap(small).putInt(sum(plain, plain.length));
        return Arrays.copyOf(small, length);
    }

    /**
     * The record that was sealed.
     *
     * @throws IllegalArgumentException if a byte was changed, or another version of the library wrote them
     */
    public static <T extends Record> T unseal(Class<T> type, byte[] sealed) {
        Inflater inflater = new Inflater();
        try {
            inflater.setInput(sealed, SUM_BYTES, sealed.length - SUM_BYTES);
            byte[] plain = new byte[MOST_BYTES];
            int length = inflater.inflate(plain);
            if (!inflater.finished()
                    || sum(plain, length) != ByteBuffer.wrap(sealed).getInt()) {
                throw new IllegalArgumentException("the checksum does not agree");
            }
            return read(type, Arrays.copyOf(plain, length));
        } catch (DataFormatException | IndexOutOfBoundsException e) {
            throw new IllegalArgumentException("these are not sealed bytes", e);
        } finally {
            inflater.end();
        }
    }

    private static int sum(byte[] bytes, int length) {
        CRC32C sum = new CRC32C();
        sum.update(bytes, 0, length);
        return (int) sum.getValue();
    }

    /** A number for version and layout of a record and all that it holds; it changes with any component. */
    private static int layout(Class<? extends Record> type) {
        StringBuilder text = new StringBuilder(LibraryVersion.current());
        describe(type, text, new ArrayList<>());
        byte[] all = text.toString().getBytes(StandardCharsets.UTF_8);
        return sum(all, all.length);
    }

    private static void describe(Type type, StringBuilder text, List<Type> known) {
        text.append(type.getTypeName()).append(' ');
        if (known.contains(type)) {
            return;
        }
        known.add(type);
        if (type instanceof ParameterizedType generic) {
            Arrays.stream(generic.getActualTypeArguments()).forEach(each -> describe(each, text, known));
        } else if (type instanceof Class<?> plain) {
            if (plain.isEnum()) {
                text.append(Arrays.toString(plain.getEnumConstants()));
            } else if (plain.isRecord()) {
                for (RecordComponent each : plain.getRecordComponents()) {
                    text.append(each.getName()).append(':');
                    describe(each.getGenericType(), text, known);
                }
            } else if (plain.isSealed()) {
                Arrays.stream(plain.getPermittedSubclasses()).forEach(each -> describe(each, text, known));
            }
        }
    }

    /** The bytes of a record. */
    public static byte[] write(Record value) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (DataOutputStream out = new DataOutputStream(bytes)) {
            out.writeInt(layout(value.getClass()));
            write(value.getClass(), value, out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    /**
     * The record that bytes hold.
     *
     * @throws IllegalArgumentException if they do not hold one
     */
    public static <T extends Record> T read(Class<T> type, byte[] bytes) {
        try (DataInputStream in = new DataInputStream(new ByteArrayInputStream(bytes))) {
            if (in.readInt() != layout(type)) {
                throw new IllegalArgumentException("another version of the library wrote this");
            }
            T value = type.cast(read(type, in));
            if (in.read() >= 0) {
                throw new IllegalArgumentException("there is more than was written");
            }
            return value;
        } catch (IOException | RuntimeException e) {
            throw new IllegalArgumentException("these are not the bytes of what was kept", e);
        }
    }

    private static void write(Type type, Object value, DataOutputStream out) throws IOException {
        if (type instanceof ParameterizedType generic) {
            writeGeneric(generic, value, out);
        } else if (value instanceof Double number) {
            out.writeDouble(number);
        } else if (value instanceof double[] numbers) {
            out.writeInt(numbers.length);
            for (double each : numbers) {
                out.writeDouble(each);
            }
        } else if (value instanceof byte[] bytes) {
            out.writeInt(bytes.length);
            out.write(bytes);
        } else if (value instanceof Integer number) {
            out.writeInt(number);
        } else if (value instanceof Boolean flag) {
            out.writeBoolean(flag);
        } else if (value instanceof String text) {
            byte[] utf8 = text.getBytes(StandardCharsets.UTF_8);
            out.writeInt(utf8.length);
            out.write(utf8);
        } else if (value instanceof Instant at) {
            out.writeLong(at.getEpochSecond());
            out.writeInt(at.getNano());
        } else if (value instanceof Enum<?> word) {
            out.writeByte(word.ordinal());
        } else if (value instanceof OptionalDouble number) {
            out.writeBoolean(number.isPresent());
            out.writeDouble(number.orElse(0));
        } else {
            Class<?> declared = (Class<?>) type;
            if (declared.isSealed()) {
                out.writeByte(List.of(declared.getPermittedSubclasses()).indexOf(value.getClass()));
            }
            for (RecordComponent each : value.getClass().getRecordComponents()) {
                write(each.getGenericType(), component(each, value), out);
            }
        }
    }

    private static Object component(RecordComponent component, Object value) {
        try {
            component.getAccessor().setAccessible(true);
            return component.getAccessor().invoke(value);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("cannot read " + component, e);
        }
    }

    private static void writeGeneric(ParameterizedType type, Object value, DataOutputStream out) throws IOException {
        Type[] of = type.getActualTypeArguments();
        if (value instanceof Map<?, ?> map) {
            out.writeInt(map.size());
            for (Map.Entry<?, ?> each : map.entrySet()) {
                write(of[0], each.getKey(), out);
                write(of[1], each.getValue(), out);
            }
            return;
        }
        List<?> all = value instanceof Optional<?> maybe ? maybe.stream().toList() : (List<?>) value;
        out.writeInt(all.size());
        for (Object each : all) {
            write(of[0], each, out);
        }
    }

    private static Object read(Type type, DataInputStream in) throws IOException {
        if (type instanceof ParameterizedType generic) {
            return readGeneric(generic, in);
        }
        Class<?> plain = (Class<?>) type;
        if (plain == double.class || plain == Double.class) {
            return in.readDouble();
        }
        if (plain == double[].class) {
            double[] numbers = new double[count(in, Double.BYTES)];
            for (int i = 0; i < numbers.length; i++) {
                numbers[i] = in.readDouble();
            }
            return numbers;
        }
        if (plain == byte[].class) {
            return in.readNBytes(count(in, 1));
        }
        if (plain == int.class) {
            return in.readInt();
        }
        if (plain == boolean.class) {
            return in.readBoolean();
        }
        if (plain == String.class) {
            return new String(in.readNBytes(count(in, 1)), StandardCharsets.UTF_8);
        }
        if (plain == Instant.class) {
            return Instant.ofEpochSecond(in.readLong(), in.readInt());
        }
        if (plain.isEnum()) {
            return plain.getEnumConstants()[in.readUnsignedByte()];
        }
        if (plain == OptionalDouble.class) {
            boolean present = in.readBoolean();
            double number = in.readDouble();
            return present ? OptionalDouble.of(number) : OptionalDouble.empty();
        }
        return record(plain.isSealed() ? plain.getPermittedSubclasses()[in.readUnsignedByte()] : plain, in);
    }

    /** Never more than can still follow, so that broken bytes do not ask for memory that they do not have. */
    private static int count(DataInputStream in, int bytesEach) throws IOException {
        int count = in.readInt();
        if (count < 0 || (long) count * bytesEach > in.available()) {
            throw new EOFException("too few bytes for " + count);
        }
        return count;
    }

    private static Object record(Class<?> type, DataInputStream in) throws IOException {
        RecordComponent[] components = type.getRecordComponents();
        Object[] values = new Object[components.length];
        for (int i = 0; i < values.length; i++) {
            values[i] = read(components[i].getGenericType(), in);
        }
        try {
            Constructor<?> constructor = type.getDeclaredConstructor(
                    Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new));
            constructor.setAccessible(true);
            return constructor.newInstance(values);
        } catch (ReflectiveOperationException e) {
            throw new IllegalArgumentException(type + " cannot be read", e);
        }
    }

    @SuppressWarnings({"unchecked", "rawtypes"})
    private static Object readGeneric(ParameterizedType type, DataInputStream in) throws IOException {
        Type[] of = type.getActualTypeArguments();
        int count = count(in, 0);
        if (type.getRawType() == Map.class) {
            Map map = new EnumMap((Class) of[0]);
            for (int i = 0; i < count; i++) {
                map.put((Enum) read(of[0], in), read(of[1], in));
            }
            return map;
        }
        List<Object> all = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            all.add(read(of[0], in));
        }
        return type.getRawType() == Optional.class ? all.stream().findFirst() : all;
    }
}
