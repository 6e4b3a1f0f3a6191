package io.github.weirwise.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Scanner;
import org.junit.jupiter.api.Test;

class LineFilterTest {
    private static final String REQUEST =
            Fixtures.tree(Fixtures.text("request.json")).toString();

    @Test
    void eachLineGetsItsAnswerInOrderAndABadOneDoesNotStopTheRest() throws IOException {
        List<String> answers = filter(REQUEST + "\n{\"version\":2}\n\nnonsense\n" + REQUEST + "\r\n" + REQUEST);
        assertThat(answers).hasSize(6);
        String answer = WeirwiseJson.answer(REQUEST);
        assertThat(List.of(answers.get(0), answers.get(4), answers.get(5))).containsOnly(answer);
        assertThat(WeirwiseJson.readError(answers.get(1)).path()).isEqualTo("$.unit");
        assertThat(WeirwiseJson.readError(answers.get(2)).problem()).contains("empty");
        assertThat(WeirwiseJson.readError(answers.get(3)).problem()).contains("not JSON");
    }

    /** Names whose hashes collide in a table that a parser would keep from line to line: "AB" and "B!" have the same one. */
    @Test
    void collidingNamesHarmNoLineAfterThem() throws IOException {
        StringBuilder poison = new StringBuilder("{\"version\":2");
        for (int i = 0; i < 303; i++) {
            StringBuilder name = new StringBuilder();
            for (int bit = 0; bit < 10; bit++) {
                name.append((i >> bit & 1) == 0 ? "AB" : "B!");
            }
            poison.append(",\"").append(name).append("\":0");
        }
        String whole = Fixtures.tree(Fixtures.text("request-whole.json")).toString();
        List<String> answers = filter(poison + "}\n" + whole + "\n" + poison + "}\n" + whole);
        assertThat(answers).hasSize(4);
        assertThat(WeirwiseJson.readError(answers.get(0)).path()).isEqualTo("$.ABABABABABABABABABAB");
        assertThat(List.of(answers.get(1), answers.get(3))).containsOnly(WeirwiseJson.answer(whole));
    }

    @Test
    void noInputGivesNoOutput() throws IOException {
        assertThat(filter("")).isEmpty();
    }

    @Test
    void bytesThatAreNotUtf8GiveAnError() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        LineFilter.filter(new ByteArrayInputStream(new byte[] {'"', (byte) 0xC0, '"', '\n'}), out);
        assertThat(out.toString(StandardCharsets.UTF_8)).contains("UTF-8").endsWith("\n");
    }

    @Test
    void anEndlessLineIsPassedOverInBoundedMemory() throws IOException {
        long length = 10L * LineFilter.LONGEST_LINE_BYTES;
        InputStream endless = new InputStream() {
            private long at;

            @Override
            public int read() {
                at++;
                return at < length ? 'x' : at == length ? '\n' : -1;
            }
        };
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        LineFilter.filter(endless, out);
        assertThat(out.toString(StandardCharsets.UTF_8).lines())
                .singleElement()
                .asString()
                .contains("more than");
    }

    @Test
    void anAnswerComesBeforeTheNextQuestionIsAsked() throws Exception {
        PipedOutputStream questions = new PipedOutputStream();
        PipedInputStream in = new PipedInputStream(questions, 1 << 16);
        PipedOutputStream out = new PipedOutputStream();
        Scanner answers = new Scanner(new PipedInputStream(out, 1 << 16), StandardCharsets.UTF_8);
        Thread filter = new Thread(() -> {
            try {
                LineFilter.filter(in, out);
            } catch (IOException e) {
                throw new java.io.UncheckedIOException(e);
            }
        });
        filter.start();
        for (int i = 0; i < 3; i++) {
            questions.write((REQUEST + "\n").getBytes(StandardCharsets.UTF_8));
            questions.flush();
            assertThat(answers.nextLine()).contains("\"step\"");
        }
        questions.close();
        filter.join(10_000);
        assertThat(filter.isAlive()).isFalse();
    }

    private static List<String> filter(String lines) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        LineFilter.filter(new ByteArrayInputStream(lines.getBytes(StandardCharsets.UTF_8)), out);
        return out.toString(StandardCharsets.UTF_8).lines().toList();
    }
}
