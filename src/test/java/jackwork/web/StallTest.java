package jackwork.web;

import static org.assertj.core.api.Assertions.assertThat;

import jackwork.DemoCopy;
import jackwork.app.core.Workbench;
import java.io.IOException;
import java.net.Socket;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** No design waits for another's computing, what nobody waits for ends, and nothing is computed for ever. */
@Isolated("asks what all threads do, and how long answers take")
class StallTest {

    private static final int ASKED = 50;

    @TempDir
    Path folder;

    private Workbench workbench;
    private PageServer server;
    private Asking asking;

    @AfterEach
    void stop() {
        server.stop();
    }

    private void serve(Duration longest, String... designs) throws IOException {
        workbench = new Workbench(DemoCopy.with(folder.resolve("hut"), designs), longest);
        server = PageServer.start(workbench, 0);
        asking = new Asking(server.address());
    }

    private static void require(HttpResponse<String> answer) {
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
    }

    /**
     * Warm, beside a windmill that nobody has seen yet and a thousand virtual builds. That the heron is answered while the
     * windmill is still worked out is asserted; how fast is told, since it hangs on what else the machine does.
     */
    @Test
    void aHeronIsAnsweredWhileAWindmillIsWorkedOut() throws Exception {
        serve(Duration.ofMinutes(10), "heron", "windmill", "lamplighter");
        for (int i = 0; i < 20; i++) {
            require(asking.send("GET", "api/designs/heron", ""));
        }
        JsonNode builds = JsonMapper.shared()
                .readTree(asking.send("POST", "api/pieces/lamplighter", "{\"builds\": 1000, \"seed\": 1}")
                        .body());
        CompletableFuture<Long> windmill = CompletableFuture.supplyAsync(() -> {
            try {
                require(asking.send("GET", "api/designs/windmill", ""));
                return System.nanoTime();
            } catch (IOException | InterruptedException e) {
                throw new IllegalStateException(e);
            }
        });
        Thread.sleep(300);
        double[] times = new double[ASKED];
        int meanwhile = 0;
        for (int i = 0; i < ASKED; i++) {
            long began = System.nanoTime();
            require(asking.send("GET", "api/designs/heron", ""));
            times[i] = (System.nanoTime() - began) / 1e6;
            meanwhile += windmill.isDone() ? 0 : 1;
        }
        JsonNode job = asking.json("api/jobs/" + builds.path("number").asInt());
        assertThat(job.path("state").asString()).as(job.toString()).isEqualTo("running");
        windmill.join();
        Arrays.sort(times);
        System.out.printf(
                "warm heron beside a cold windmill and 1,000 builds: median %.0f ms, longest %.0f ms of %d; %d of them before the windmill%n",
                times[ASKED / 2], times[ASKED - 1], ASKED, meanwhile);
        assertThat(meanwhile).isGreaterThanOrEqualTo(5);
        asking.finished(JsonMapper.shared()
                .readTree(asking.send(
                                "DELETE", "api/jobs/" + builds.path("number").asInt(), "")
                        .body()));
    }

    @Test
    void whatNobodyWaitsForAnyMoreIsDropped() throws Exception {
        serve(Duration.ofMinutes(10), "windmill");
        try (Socket socket = new Socket("127.0.0.1", server.port())) {
            String request = "GET /api/designs/windmill HTTP/1.1\r\nHost: 127.0.0.1:" + server.port() + "\r\nCookie: "
                    + asking.pass() + "\r\n\r\n";
            socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
            Thread.sleep(700);
            assertThat(workbench.faces().waiting()).as("still worked out").isEqualTo(1);
        }
        long began = System.nanoTime();
        while (workbench.faces().waiting() > 0 || isComputing()) {
            Thread.sleep(20);
            assertThat(System.nanoTime() - began).as("ns since it hung up").isLessThan(60_000_000_000L);
        }
        double dropped = (System.nanoTime() - began) / 1e9;
        long whole = System.nanoTime();
        require(asking.send("GET", "api/designs/windmill", ""));
        double took = (System.nanoTime() - whole) / 1e9;
        System.out.printf("hung up: dropped after %.2f s; the whole takes %.2f s%n", dropped, took);
        assertThat(dropped).as("or it was only worked out to its end").isLessThan(took / 2);
    }

    /** Else long work would leave room for ever. */
    @Test
    void whoeverIsAnsweredWaitsNoMoreWhateverTheAnswer() throws Exception {
        serve(Duration.ofMinutes(10), "heron");
        for (String path : new String[] {
            "api/no-such-thing",
            "api/designs/no-such-design",
            "api/jobs/x",
            "api/version/heron",
            "api/picture/heron?part=x"
        }) {
            asking.send("GET", path, "");
        }
        asking.send("POST", "api/edit/heron", "{}");
        asking.send("POST", "api/edit/heron", "x".repeat(70_000));
        asking.send("PATCH", "api/edit/heron", "");
        assertThat(workbench.faces().waiting()).isZero();
    }

    /** Whether any thread is in the midst of our own computing. */
    private static boolean isComputing() {
        return Thread.getAllStackTraces().values().stream()
                .anyMatch(stack -> Arrays.stream(stack)
                        .anyMatch(frame -> frame.getClassName().equals("jackwork.app.core.DesignCheck")));
    }

    @Test
    void whatTakesTooLongIsStoppedAndSaidInWords() throws Exception {
        serve(Duration.ofMillis(250), "windmill");
        Path file = workbenchFile();
        String before = Files.readString(file);
        String version = asking.json("api/version/windmill").path("version").asString();
        HttpResponse<String> view = asking.send("GET", "api/designs/windmill", "");
        assertThat(view.statusCode()).as(view.body()).isEqualTo(503);
        assertThat(view.body()).contains("longer than 250 ms").contains("Nothing was changed");
        HttpResponse<String> edit = asking.send("POST", "api/edit/windmill", """
                {"base": "%s", "label": "x", "steps": [{"kind": "SET", "path": "box.lever.throw", "value": "11.5"}]}""".formatted(version));
        assertThat(edit.statusCode()).as(edit.body()).isEqualTo(503);
        assertThat(Files.readString(file)).isEqualTo(before);
        long began = System.nanoTime();
        while (isComputing()) {
            Thread.sleep(20);
            assertThat(System.nanoTime() - began).as("goes on computing, ns").isLessThan(20_000_000_000L);
        }
    }

    private Path workbenchFile() {
        return folder.resolve("hut").resolve("windmill").resolve("design.yaml");
    }
}
