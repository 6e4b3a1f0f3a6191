package io.github.weirwise.examples.flink;

import io.github.weirwise.advice.Adviser;
import io.github.weirwise.advice.AdviserOptions;
import io.github.weirwise.advice.KeptState;
import io.github.weirwise.json.DocumentException;
import io.github.weirwise.json.Request;
import io.github.weirwise.json.WeirwiseJson;
import io.github.weirwise.reading.Journal;
import org.apache.flink.api.common.functions.OpenContext;
import org.apache.flink.api.common.state.ValueState;
import org.apache.flink.api.common.state.ValueStateDescriptor;
import org.apache.flink.streaming.api.functions.KeyedProcessFunction;
import org.apache.flink.util.Collector;
import org.apache.flink.util.OutputTag;

/**
 * Keeps what each tank's journal comes to, of a bounded size, in the engine's own state and answers every visit with the next step.
 * A visit that cannot be read, or comes too late, goes to a side output; the tank goes on as if it had not come.
 */
final class NextStep extends KeyedProcessFunction<String, Visit, String> {
    /** Visits that were refused: tank, tab, error document. */
    static final OutputTag<String> REFUSED = new OutputTag<>("refused") {};

    private static final long serialVersionUID = 1L;

    private transient ValueState<byte[]> kept;

    @Override
    public void open(OpenContext context) {
        kept = getRuntimeContext().getState(new ValueStateDescriptor<>("kept", byte[].class));
    }

    @Override
    public void processElement(Visit visit, Context context, Collector<String> answers) throws Exception {
        byte[] before = kept.value();
        try {
            Request request = WeirwiseJson.readRequest(visit.request());
            KeptState known = before == null
                    ? KeptState.of(request.unit(), request.settings(), Journal.EMPTY)
                    : KeptState.of(before);
            KeptState now = known.extended(request.journal().entries());
            String answer = WeirwiseJson.writeAdvice(new Adviser(AdviserOptions.DEFAULT).advise(now, request.now()));
            kept.update(now.toBytes());
            answers.collect(visit.tank() + "\t" + request.now() + "\t" + answer);
        } catch (DocumentException e) {
            context.output(REFUSED, visit.tank() + "\t" + WeirwiseJson.writeError(e));
        } catch (IllegalArgumentException e) {
            context.output(REFUSED, visit.tank() + "\t" + e.getMessage());
        }
    }
}
