package io.github.weirwise.examples.flink;

import org.apache.flink.api.common.functions.RichMapFunction;
import org.apache.flink.api.common.state.CheckpointListener;

/**
 * A failure for the trial: passes visits on until a checkpoint is complete and some more have come, then fails once. The engine
 * starts again from the checkpoint, and each visit after it is answered a second time from the state of then.
 */
final class StopsOnce extends RichMapFunction<Visit, Visit> implements CheckpointListener {
    private static final long serialVersionUID = 1L;
    private static final int VISITS_AFTER = 60;

    /** Over all starts in this process. */
    private static volatile boolean stopped;

    private final boolean wanted;
    private transient int afterCheckpoint;
    private transient boolean complete;

    StopsOnce(boolean wanted) {
        this.wanted = wanted;
    }

    static int restarts() {
        return stopped ? 1 : 0;
    }

    @Override
    public Visit map(Visit visit) throws InterruptedException {
        if (wanted && !stopped) {
            Thread.sleep(2); // time for a checkpoint before a short file is at its end
            if (complete && ++afterCheckpoint > VISITS_AFTER) {
                stopped = true;
                throw new IllegalStateException("stopped for the trial");
            }
        }
        return visit;
    }

    @Override
    public void notifyCheckpointComplete(long checkpoint) {
        complete = true;
    }
}
