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
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.zip.CRC32C;

/**
 * Records of numbers, words, instants, lists, maps by word and further records, as bytes. The bytes hold no names but begin with a
 * number for version and layout: they can be read by the same version of the library only.
 *
 * @since 0.2
 */
public final class KeptBytes {
    /** Asking a class for its components is slow, so it is asked once a call. */
    private final Map<Class<?>, RecordComponent[]> components = new HashMap<>();

    private final Map<Class<?>, Constructor<?>> constructors = new HashMap<>();

    private KeptBytes() {}

    /** A number for version and layout of a record and all that it holds; it changes with any component. */
    public static int layout(Class<? extends Record> type) {
        StringBuilder text = new StringBuilder(LibraryVersion.current());
        describe(type, text, new ArrayList<>());
        byte[] all = text.toString().getBytes(StandardCharsets.UTF_8);
        return sum(all, 0);
    }

    private static int sum(byte[] bytes, int from) {
        CRC32C sum = new CRC32C();
        sum.update(bytes, from, bytes.length - from);
        return (int) sum.getValue();
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

    /** The bytes of a record, a checksum and its layout before them. */
    public static byte[] write(int layout, Record value) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (DataOutputStream out = new DataOutputStream(bytes)) {
            out.writeInt(0);
            out.writeInt(layout);
            new KeptBytes().write(value.getClass(), value, out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        byte[] all = bytes.toByteArray();
        ByteBuffer.wrap(all).putInt(sum(all, Integer.BYTES));
        return all;
    }

    /**
     * The record that bytes hold.
     *
     * @throws IllegalArgumentException if a byte was changed, or another version of the library wrote them
     */
    public static <T extends Record> T read(int layout, Class<T> type, byte[] bytes) {
        try (DataInputStream in = new DataInputStream(new ByteArrayInputStream(bytes))) {
            if (in.readInt() != sum(bytes, Integer.BYTES) || in.readInt() != layout) {
                throw new IllegalArgumentException("changed, or written by another version of the library");
            }
            T value = type.cast(new KeptBytes().read(type, in));
            if (in.read() >= 0) {
                throw new IllegalArgumentException("there is more than was written");
            }
            return value;
        } catch (IOException | RuntimeException e) {
            throw new IllegalArgumentException("these are not the bytes of what was kept", e);
        }
    }

    private void write(Type type, Object value, DataOutputStream out) throws IOException {
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
            for (RecordComponent each : components(value.getClass())) {
                write(each.getGenericType(), component(each, value), out);
            }
        }
    }

    private RecordComponent[] components(Class<?> type) {
        return components.computeIfAbsent(type, each -> {
            RecordComponent[] all = each.getRecordComponents();
            for (RecordComponent one : all) {
                one.getAccessor().setAccessible(true);
            }
            return all;
        });
    }

    private static Object component(RecordComponent component, Object value) {
        try {
            return component.getAccessor().invoke(value);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("cannot read " + component, e);
        }
    }

    private Constructor<?> constructor(Class<?> type) {
        return constructors.computeIfAbsent(type, each -> {
            try {
                Constructor<?> canonical = each.getDeclaredConstructor(Arrays.stream(components(each))
                        .map(RecordComponent::getType)
                        .toArray(Class<?>[]::new));
                canonical.setAccessible(true);
                return canonical;
            } catch (NoSuchMethodException e) {
                throw new IllegalStateException(each + " has no canonical constructor", e);
            }
        });
    }

    private void writeGeneric(ParameterizedType type, Object value, DataOutputStream out) throws IOException {
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

    private Object read(Type type, DataInputStream in) throws IOException {
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

    private Object record(Class<?> type, DataInputStream in) throws IOException {
        RecordComponent[] parts = components(type);
        Object[] values = new Object[parts.length];
        for (int i = 0; i < values.length; i++) {
            values[i] = read(parts[i].getGenericType(), in);
        }
        try {
            return constructor(type).newInstance(values);
        } catch (ReflectiveOperationException e) {
            throw new IllegalArgumentException(type + " cannot be read", e);
        }
    }

    @SuppressWarnings({"unchecked", "rawtypes"})
    private Object readGeneric(ParameterizedType type, DataInputStream in) throws IOException {
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
