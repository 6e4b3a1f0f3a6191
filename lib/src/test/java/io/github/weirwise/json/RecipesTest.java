package io.github.weirwise.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The server of docs/recipes.md is started from its source and asked. */
class RecipesTest {
    @TempDir
    private Path folder;

    @Test
    void theServerAnswersOverHttp() throws Exception {
        Matcher block = Pattern.compile("```java\\n(.*?)```", Pattern.DOTALL)
                .matcher(Files.readString(Path.of("..", "docs", "recipes.md")));
        assertThat(block.find()).isTrue();
        Path source = Files.writeString(folder.resolve("Serve.java"), block.group(1));
        Process server = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        Path.of("target", "classes") + ":" + System.getProperty("jdk.module.path", "") + ":"
                                + System.getProperty("java.class.path", ""),
                        source.toString(),
                        "0")
                .redirectErrorStream(true)
                .start();
        try (BufferedReader said = server.inputReader(StandardCharsets.UTF_8)) {
            String line = said.readLine();
            assertThat(line).startsWith("listening on ");
            int port = Integer.parseInt(line.substring("listening on ".length()));
            String request = Fixtures.text("request.json");
            assertThat(post(port, request)).endsWith(WeirwiseJson.reply(request));
            assertThat(post(port, "{")).endsWith(WeirwiseJson.reply("{"));
        } finally {
            server.destroy();
        }
    }

    private static String post(int port, String body) throws Exception {
        byte[] bytes = body.getBytes(StandardCharsets.UTF_8);
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
            OutputStream out = socket.getOutputStream();
            out.write(("POST /ask HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\nContent-Length: " + bytes.length
                            + "\r\n\r\n")
                    .getBytes(StandardCharsets.US_ASCII));
            out.write(bytes);
            out.flush();
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
