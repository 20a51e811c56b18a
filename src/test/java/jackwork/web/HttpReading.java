package jackwork.web;

import jackwork.DemoCopy;
import jackwork.app.core.Workbench;
import jackwork.fuzz.Reading;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.Socket;
import java.net.SocketException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * One request to the real server over a real socket. In the input {@code {host}} stands for the server's own name and
 * {@code {version}} for the state of the heron's files; a head with bare line ends gets the usual ones, and a length where
 * it has none; each gets the pass of whoever opened the page. Whatever is asked: an answer that is no fault of ours, in time, with nothing of what lies outside the
 * workshop; nothing is changed outside, and inside only by what was answered with yes.
 */
public final class HttpReading extends Reading {

    private static final HttpReading READING = new HttpReading();
    private static final Pattern NAMES = Pattern.compile(".");
    private static final Pattern STATUS = Pattern.compile("\\AHTTP/1\\.[01] (\\d{3}) ");
    private static final Pattern RUNNING = Pattern.compile("\"number\":(\\d+),.{0,200}\"state\":\"running\"");
    private static final Pattern LENGTH = Pattern.compile("(?i)\r\n(content-length|transfer-encoding):");
    private static final String SECRET = "nobody-may-read-this";
    private static final int SECONDS = 50;

    private final Path root = folder("http");
    private final Path workshop = root.resolve("hut");
    private final PageServer server;
    private final Asking asking;
    /** Whoever has none is refused before anything is read. */
    private final String pass;

    private String version = "";

    private HttpReading() {
        try {
            Files.writeString(root.resolve("secret.txt"), SECRET);
            Files.writeString(root.resolve("secret.svg"), SECRET);
            DemoCopy.at(workshop);
            // No address at which a phone could be let in: this machine's network is none of a test's business.
            server = PageServer.start(new Workbench(workshop), 0, List::of);
            asking = new Asking(server.address());
            pass = "\r\nCookie: " + asking.pass();
            learnVersion();
        } catch (IOException | InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Asked by the fuzzer. */
    public static void fuzzerTestOneInput(byte[] input) {
        READING.once(input);
    }

    private void learnVersion() {
        try {
            JsonNode told = JsonMapper.shared()
                    .readTree(asking.send("GET", "api/version/heron", "").body());
            version = told.path("version").asString();
        } catch (IOException e) {
            throw new IllegalStateException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    protected void read(byte[] input) throws IOException {
        Map<Path, String> before = state(root);
        String answer = answer(request(input));
        Matcher status = STATUS.matcher(answer);
        boolean answered = status.find();
        int code = answered ? Integer.parseInt(status.group(1)) : 0;
        if (!answer.isEmpty() && !answered) {
            throw new AssertionError("no HTTP answer: " + answer);
        }
        if (code >= 500 && code != 501 && code != 505) {
            throw new AssertionError("our own fault: " + answer);
        }
        if (tells(answer, SECRET, input)
                || tells(answer, pass.substring(pass.indexOf('=') + 1), input)
                || tells(answer, "\tat ", input)) {
            throw new AssertionError("says what is none of its business: " + answer);
        }
        Matcher running = RUNNING.matcher(answer);
        if (running.find()) {
            endWork(running.group(1));
        }
        Map<Path, String> after = state(root);
        if (!after.equals(before)) {
            requireAllowed(before, after, code);
            delete(workshop);
            DemoCopy.at(workshop);
            learnVersion();
        }
    }

    /** A refusal may quote what was asked, and a fuzzer finds out what it is looked for. */
    private static boolean tells(String answer, String word, byte[] input) {
        return answer.contains(word) && !said(input, word);
    }

    private void requireAllowed(Map<Path, String> before, Map<Path, String> after, int code) {
        boolean inside = before.entrySet().stream()
                .filter(file -> !file.getKey().startsWith(workshop))
                .allMatch(file -> file.getValue().equals(after.get(file.getKey())));
        boolean newInside = after.keySet().stream()
                .filter(file -> !file.startsWith(workshop))
                .allMatch(before::containsKey);
        if (!inside || !newInside || code / 100 != 2) {
            after.entrySet().removeAll(before.entrySet());
            throw new AssertionError("answered " + code + ", yet the disk was changed: " + after.keySet());
        }
    }

    private void endWork(String number) throws IOException {
        try {
            asking.finished(JsonMapper.shared()
                    .readTree(asking.send("DELETE", "api/jobs/" + number, "").body()));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private byte[] request(byte[] input) {
        String text = new String(input, StandardCharsets.ISO_8859_1)
                .replace("{host}", "127.0.0.1:" + server.port())
                .replace("{version}", version);
        if (text.indexOf('\r') >= 0) {
            return text.replaceFirst("\r\n", Matcher.quoteReplacement(pass + "\r\n"))
                    .getBytes(StandardCharsets.ISO_8859_1);
        }
        int blank = text.indexOf("\n\n");
        String head = (blank < 0 ? text : text.substring(0, blank)).replace("\n", "\r\n");
        String body = blank < 0 ? "" : text.substring(blank + 2);
        String length = LENGTH.matcher(head).find() ? "" : "\r\nContent-Length: " + body.length();
        return (head + length + pass + "\r\n\r\n" + body).getBytes(StandardCharsets.ISO_8859_1);
    }

    private String answer(byte[] request) throws IOException {
        ByteArrayOutputStream answer = new ByteArrayOutputStream();
        try (Socket socket = new Socket("127.0.0.1", server.port())) {
            socket.setSoTimeout(SECONDS * 1000);
            socket.getOutputStream().write(request);
            socket.shutdownOutput();
            try (InputStream in = socket.getInputStream()) {
                in.transferTo(answer);
            }
        } catch (SocketException e) {
            // It hung up on what it would not read to its end; what it said before counts.
        }
        return answer.toString(StandardCharsets.ISO_8859_1);
    }

    @Override
    protected @Nullable String complaint(Exception thrown) {
        return null;
    }

    @Override
    protected Pattern names() {
        return NAMES;
    }
}
