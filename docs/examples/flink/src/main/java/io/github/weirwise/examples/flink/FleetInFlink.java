package io.github.weirwise.examples.flink;

import java.io.BufferedWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.flink.api.common.eventtime.WatermarkStrategy;
import org.apache.flink.configuration.Configuration;
import org.apache.flink.connector.file.src.FileSource;
import org.apache.flink.connector.file.src.reader.TextLineInputFormat;
import org.apache.flink.streaming.api.environment.StreamExecutionEnvironment;
import org.apache.flink.util.CloseableIterator;

/**
 * The library inside Apache Flink, in local mode on two threads: a file of visits in, a file of answers and a file of refused visits
 * out, with checkpoints. On a cluster the source and the sink change, {@link NextStep} does not.
 */
public final class FleetInFlink {
    private static final String REFUSED = "refused\t";

    private FleetInFlink() {}

    /**
     * Runs it.
     *
     * @param args file of visits (tank, tab, request document), file for the answers (tank, tab, time, tab, answer document), file for
     *     refused visits (tank, tab, error document), folder for checkpoints, and {@code true} to fail once in the middle
     */
    public static void main(String[] args) throws Exception {
        StreamExecutionEnvironment flink = StreamExecutionEnvironment.createLocalEnvironment(2, options(args[3]));
        FileSource<String> visits = FileSource.forRecordStreamFormat(
                        new TextLineInputFormat(), new org.apache.flink.core.fs.Path(Path.of(args[0]).toUri()))
                .build();
        var answers = flink.fromSource(visits, WatermarkStrategy.noWatermarks(), "visits")
                .setParallelism(1) // one reader, so that each tank's visits come in their order
                .map(Visit::of)
                .returns(Visit.class)
                .setParallelism(1)
                .map(new StopsOnce(Boolean.parseBoolean(args[4])))
                .returns(Visit.class)
                .setParallelism(1)
                .keyBy(Visit::tank)
                .process(new NextStep());
        var all = answers.union(answers.getSideOutput(NextStep.REFUSED).map(line -> REFUSED + line));
        try (CloseableIterator<String> lines = all.executeAndCollect("fleet");
                BufferedWriter answered = Files.newBufferedWriter(Path.of(args[1]));
                BufferedWriter refused = Files.newBufferedWriter(Path.of(args[2]))) {
            while (lines.hasNext()) {
                String line = lines.next();
                boolean sound = !line.startsWith(REFUSED);
                BufferedWriter out = sound ? answered : refused;
                out.write(sound ? line : line.substring(REFUSED.length()));
                out.write('\n');
            }
        }
        System.out.println("restarts: " + StopsOnce.restarts());
    }

    private static Configuration options(String checkpoints) {
        Configuration options = new Configuration();
        options.setString("execution.checkpointing.interval", "200 ms");
        options.setString("execution.checkpointing.dir", Path.of(checkpoints).toUri().toString());
        options.setString("restart-strategy.type", "fixed-delay");
        options.setString("restart-strategy.fixed-delay.attempts", "3");
        options.setString("restart-strategy.fixed-delay.delay", "100 ms");
        return options;
    }
}
