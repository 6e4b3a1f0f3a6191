package io.github.weirwise.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Field;
import org.junit.jupiter.api.Test;
import tools.jackson.core.TokenStreamFactory;
import tools.jackson.core.json.JsonFactory;

/** The parser library holds buffers for later use unless it is told not to; a document of one customer would lie in them. */
class NothingLeftBehindTest {
    @Test
    void theParserKeepsNoBufferOnceAnAnswerIsGiven() throws ReflectiveOperationException {
        Field streams = Tree.class.getDeclaredField("STREAMS");
        streams.setAccessible(true);
        JsonFactory factory = (JsonFactory) streams.get(null);
        assertThat(WeirwiseJson.answer(Fixtures.text("request.json"))).startsWith("{");
        assertThat(factory._getRecyclerPool().pooledCount()).isZero();
        assertThat(factory.isEnabled(TokenStreamFactory.Feature.CANONICALIZE_PROPERTY_NAMES))
                .isFalse();
    }
}
