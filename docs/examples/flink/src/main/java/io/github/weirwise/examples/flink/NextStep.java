package io.github.weirwise.examples.flink;

import io.github.weirwise.Weirwise;
import io.github.weirwise.json.Request;
import io.github.weirwise.json.WeirwiseJson;
import io.github.weirwise.reading.Journal;
import io.github.weirwise.reading.JournalEntry;
import org.apache.flink.api.common.functions.OpenContext;
import org.apache.flink.api.common.state.ValueState;
import org.apache.flink.api.common.state.ValueStateDescriptor;
import org.apache.flink.streaming.api.functions.KeyedProcessFunction;
import org.apache.flink.util.Collector;

/** Keeps each tank's journal as a document in the engine's own state and answers every visit with the next step. */
final class NextStep extends KeyedProcessFunction<String, Visit, String> {
    private static final long serialVersionUID = 1L;

    private transient ValueState<String> journal;

    @Override
    public void open(OpenContext context) {
        journal = getRuntimeContext().getState(new ValueStateDescriptor<>("journal", String.class));
    }

    @Override
    public void processElement(Visit visit, Context context, Collector<String> answers) throws Exception {
        Request request = WeirwiseJson.readRequest(visit.request());
        Journal known = journal.value() == null ? Journal.EMPTY : WeirwiseJson.readJournal(journal.value());
        for (JournalEntry entry : request.journal().entries()) {
            known = known.with(entry);
        }
        journal.update(WeirwiseJson.writeJournal(known));
        String answer = WeirwiseJson.writeAdvice(
                Weirwise.advise(request.unit(), request.settings(), known, request.now()));
        answers.collect(visit.tank() + "\t" + request.now() + "\t" + answer);
    }
}
