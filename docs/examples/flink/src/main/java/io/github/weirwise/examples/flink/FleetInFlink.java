package io.github.weirwise.examples.flink;

import java.io.BufferedWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.flink.api.common.eventtime.WatermarkStrategy;
import org.apache.flink.connector.file.src.FileSource;
import org.apache.flink.connector.file.src.reader.TextLineInputFormat;
import org.apache.flink.streaming.api.environment.StreamExecutionEnvironment;
import org.apache.flink.util.CloseableIterator;

/**
 * The library inside Apache Flink, in local mode on two threads: a file of visits in, a file of answers out. On a cluster the
 * source and the sink change, {@link NextStep} does not.
 */
public final class FleetInFlink {
    private FleetInFlink() {}

    /**
     * Runs it.
     *
     * @param args file of visits (tank, tab, request document), file for the answers (tank, tab, time, tab, answer document)
     */
    public static void main(String[] args) throws Exception {
        StreamExecutionEnvironment flink = StreamExecutionEnvironment.createLocalEnvironment(2);
        FileSource<String> visits = FileSource.forRecordStreamFormat(
                        new TextLineInputFormat(), new org.apache.flink.core.fs.Path(Path.of(args[0]).toUri()))
                .build();
        var answers = flink.fromSource(visits, WatermarkStrategy.noWatermarks(), "visits")
                .setParallelism(1) // one reader, so that each tank's visits come in their order
                .map(Visit::of)
                .returns(Visit.class)
                .setParallelism(1)
                .keyBy(Visit::tank)
                .process(new NextStep());
        try (CloseableIterator<String> lines = answers.executeAndCollect("fleet");
                BufferedWriter out = Files.newBufferedWriter(Path.of(args[1]))) {
            while (lines.hasNext()) {
                out.write(lines.next());
                out.write('\n');
            }
        }
    }
}
