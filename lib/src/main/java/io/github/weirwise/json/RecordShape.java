package io.github.weirwise.json;

import io.github.weirwise.internal.physics.seawater.SpecificGravity;
import io.github.weirwise.report.OutOfRangeException;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.WrongValueException;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * A record as an object, a member for each component. What the record's own constructor refuses is reported with the
 * place of the component.
 *
 * @param <T> the record
 */
final class RecordShape<T> implements Shape<T> {
    private record Member(RecordComponent component, Shape<Object> shape, Object whenMissing) {
        String name() {
            return component.getName();
        }
    }

    private final Constructor<T> constructor;
    private final List<Member> members = new ArrayList<>();
    private final List<String> names;
    private final MemberNames spelling;

    /**
     * @param shapes gives the shape of a component
     * @param spelling what becomes of members that are not known
     */
    RecordShape(Class<T> type, Shapes shapes, MemberNames spelling) {
        this.spelling = spelling;
        RecordComponent[] components = type.getRecordComponents();
        for (RecordComponent each : components) {
            members.add(new Member(each, shapes.of(each.getGenericType()), WhenMissing.of(type, each)));
        }
        names = members.stream().map(Member::name).toList();
        try {
            constructor = type.getDeclaredConstructor(
                    Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new));
        } catch (NoSuchMethodException e) {
            throw new IllegalStateException(type + " has no canonical constructor", e);
        }
    }

    @Override
    public T read(Place at) {
        spelling.check(at.asObject(), names);
        Object[] values = new Object[members.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = read(members.get(i), at.member(names.get(i)));
        }
        return construct(at, values);
    }

    private static Object read(Member member, Place at) {
        if (at.isMissing() && member.whenMissing() != null) {
            return member.whenMissing();
        }
        Object value = member.shape().read(at.given());
        askForSalinity(member.name(), value, at);
        return value;
    }

    /** A gravity of 1.025 would pass for nearly fresh water. */
    private static void askForSalinity(String name, Object value, Place at) {
        boolean salinity = name.equals("practicalSalinity");
        double number = value instanceof Double given ? given : 0;
        if (salinity && SpecificGravity.looksLikeOne(number)) {
            throw at.wrong(
                    Phrase.of("json.whichLooksSpecific", String.valueOf(number)),
                    Phrase.of("json.givePracticalSalinity"));
        }
    }

    private T construct(Place at, Object[] values) {
        try {
            return constructor.newInstance(values);
        } catch (InvocationTargetException e) {
            throw refused(at, e.getCause());
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("cannot construct " + constructor, e);
        }
    }

    /** In the words of the record's own error. */
    private DocumentException refused(Place at, Throwable cause) {
        if (cause instanceof OutOfRangeException range && range.problem() != null) {
            Place place = names.contains(range.name()) ? at.member(range.name()) : at;
            return place.wrong(range.problem(), range.tryThis(), cause);
        }
        if (cause instanceof WrongValueException value && value.problem() != null) {
            Place place = names.contains(value.name()) ? at.member(value.name()) : at;
            return place.wrong(value.problem(), value.tryThis(), cause);
        }
        return at.wrong(Phrase.of("json.notTogether"), Phrase.of("json.checkValues"), cause);
    }

    @Override
    public JsonNode write(T value) {
        ObjectNode object = JsonNodeFactory.instance.objectNode();
        for (Member member : members) {
            JsonNode node = member.shape().write(component(member.component(), value));
            if (node != null) {
                object.set(member.name(), node);
            }
        }
        return object;
    }

    static Object component(RecordComponent component, Object value) {
        try {
            return component.getAccessor().invoke(value);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("cannot read " + component, e);
        }
    }
}
