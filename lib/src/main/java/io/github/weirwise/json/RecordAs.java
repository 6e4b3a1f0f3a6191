package io.github.weirwise.json;

import io.github.weirwise.advice.LookKind;
import io.github.weirwise.reading.Observation;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * How a look that was asked for is written down.
 *
 * @param observations any one of these in a reading
 * @param cannot what stands in {@code options.cannotMeasure} when this look cannot be taken here
 */
record RecordAs(List<Form> observations, LookKind cannot) {
    /**
     * An observation's members.
     *
     * @param type its word
     * @param members what it is told with
     */
    record Form(String type, List<Member> members) {}

    /**
     * One member.
     *
     * @param name with its unit
     * @param words the words that may stand there; none for a number
     * @param optional whether it may be left out
     */
    record Member(String name, List<String> words, boolean optional) {}

    static RecordAs of(LookKind look) {
        Optional<String> part = look.part().map(Enum::name);
        List<Form> forms =
                look.observations().stream().map(each -> form(each, part)).toList();
        return new RecordAs(forms, look);
    }

    private static Form form(Class<? extends Observation> type, Optional<String> part) {
        List<Member> members = new ArrayList<>();
        for (RecordComponent each : type.getRecordComponents()) {
            List<String> words = each.getType().isEnum()
                    ? Arrays.stream(each.getType().getEnumConstants())
                            .map(String::valueOf)
                            .toList()
                    : List.of();
            boolean isPart = part.isPresent() && each.getName().equals("part");
            members.add(
                    new Member(each.getName(), isPart ? List.of(part.get()) : words, each.getType() == boolean.class));
        }
        return new Form(ChoiceShape.nameOf(type), members);
    }
}
