package io.github.weirwise.json;

import io.github.weirwise.internal.kept.LibraryVersion;
import io.github.weirwise.report.Phrase;
import io.github.weirwise.report.PhraseBook;
import java.util.Optional;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * What is round every request and every answer: format version, library, the sender's identifier, the operation and the options.
 * A member that cannot be read is an error; what could be read before it still goes into the error's document.
 */
final class ServiceLine {
    private static final Shapes SHAPES = new Shapes();
    private static final Shape<ServiceOptions> OPTIONS = SHAPES.of(ServiceOptions.class);
    private static final int LONGEST_ID = 200;

    private Optional<String> id = Optional.empty();
    private Operation operation = Operation.ADVISE;
    private ServiceOptions options = ServiceOptions.USUAL;

    /** The answer to a request. */
    String answer(String request) {
        Place document = Parser.parse(request);
        id = takeId(document.asObject());
        FormatVersion.takeOfRequest(document);
        operation = takeOperation(document);
        options = takeOptions(document);
        return stamped(Service.of(options).answer(operation, document));
    }

    private Optional<String> takeId(Place document) {
        Place member = document.take("id");
        if (member.isMissing()) {
            return Optional.empty();
        }
        String given = Plain.TEXT.read(member);
        if (given.isBlank() || given.length() > LONGEST_ID) {
            throw member.wrong(
                    Phrase.of("json.characters", given.length(), LONGEST_ID), Phrase.of("json.leaveOutGive"));
        }
        return Optional.of(given);
    }

    private Operation takeOperation(Place document) {
        Place member = document.take("operation");
        if (member.isMissing()) {
            return Operation.ADVISE;
        }
        String given = Plain.TEXT.read(member);
        for (Operation each : Operation.values()) {
            if (each.word().equals(given)) {
                return each;
            }
        }
        throw member.wrong(Phrase.of("json.notOneWords", member.found()), Phrase.of("json.useOne", Operation.words()));
    }

    private static ServiceOptions takeOptions(Place document) {
        Place member = document.take("options");
        return member.isMissing() ? ServiceOptions.USUAL : OPTIONS.read(member);
    }

    private String stamped(JsonNode content) {
        ObjectNode answer = head();
        if (content instanceof ObjectNode object) {
            answer.setAll(object);
        }
        return Tree.print(FormatVersion.stamp(answer));
    }

    private ObjectNode head() {
        ObjectNode head = JsonNodeFactory.instance.objectNode().put("library", LibraryVersion.current());
        id.ifPresent(given -> head.put("id", given));
        return head.put("operation", operation.word());
    }

    /** What is wrong, in the language that was asked for if that could be read. */
    String error(DocumentException wrong) {
        PhraseBook book = options.book();
        ObjectNode mistake = JsonNodeFactory.instance
                .objectNode()
                .put("path", wrong.path())
                .put("problem", book.say(wrong.problemWords()))
                .put("tryThis", book.say(wrong.tryThisWords()));
        ObjectNode answer = head();
        answer.set("error", mistake);
        return Tree.print(FormatVersion.stamp(answer));
    }
}
