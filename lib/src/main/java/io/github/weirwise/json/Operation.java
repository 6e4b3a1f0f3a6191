package io.github.weirwise.json;

import java.util.Arrays;
import java.util.Locale;
import java.util.function.BiFunction;
import java.util.stream.Collectors;

/** What can be asked of the service, a row each: what it is asked with and what answers it. */
enum Operation {
    ADVISE(Request.class, Service::advise),
    OPERATING_POINT(Asked.Point.class, Service::point),
    FIT(Asked.Site.class, Service::fit),
    START_UP(Asked.Site.class, Service::startUp),
    UPKEEP_DUE(Asked.Upkeep.class, Service::upkeep),
    CALENDAR(Asked.Calendar.class, Service::calendar),
    IMPORT(Asked.Table.class, Service::table),
    WATCH(Asked.Watch.class, Service::watch),
    EXTEND(Asked.Extension.class, Service::extend),
    SCORE(Asked.Past.class, Service::score),
    LEARN(Asked.Learning.class, Service::learn);

    private final BiFunction<Service, Place, Object> answer;

    <A> Operation(Class<A> asked, BiFunction<Service, A, Object> told) {
        Shape<A> shape = Asked.SHAPES.of(asked);
        answer = (service, request) -> told.apply(service, shape.read(request));
    }

    /** What a service tells to a request: a tree, or a record that is yet to be written. */
    Object answer(Service service, Place request) {
        return answer.apply(service, request);
    }

    /** All of them, for a person. */
    static String words() {
        return Arrays.stream(values()).map(Operation::word).collect(Collectors.joining(", "));
    }

    /** As it stands in a request: {@code operatingPoint}. */
    String word() {
        StringBuilder word = new StringBuilder();
        for (String part : name().toLowerCase(Locale.ROOT).split("_")) {
            word.append(word.isEmpty() ? part : Character.toUpperCase(part.charAt(0)) + part.substring(1));
        }
        return word.toString();
    }
}
