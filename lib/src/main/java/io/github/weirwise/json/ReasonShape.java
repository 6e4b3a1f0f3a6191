package io.github.weirwise.json;

import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.Reason;
import java.util.List;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** A tree of reasons: {@code line} and, unless it is a leaf, {@code because}. */
final class ReasonShape implements Shape<Reason> {
    private static final List<String> NAMES = List.of("line", "because");

    private final Shape<Phrase> line;
    private final MemberNames spelling;
    private final ListShape<Reason> because = new ListShape<>(this);

    ReasonShape(Shape<Phrase> line, MemberNames spelling) {
        this.line = line;
        this.spelling = spelling;
    }

    @Override
    public Reason read(Place at) {
        spelling.check(at.asObject(), NAMES);
        if (at.member("line").isMissing()) {
            throw at.member("line").wrong(Phrase.of("json.missing"), Phrase.of("json.giveLine"));
        }
        Place children = at.member("because");
        return new Reason(line.read(at.member("line")), children.isMissing() ? List.of() : because.read(children));
    }

    @Override
    public JsonNode write(Reason reason) {
        ObjectNode object = JsonNodeFactory.instance.objectNode();
        object.set("line", line.write(reason.line()));
        if (!reason.because().isEmpty()) {
            object.set("because", because.write(reason.because()));
        }
        return object;
    }
}
