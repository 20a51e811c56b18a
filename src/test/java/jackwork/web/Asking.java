package jackwork.web;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Asks the real server over the wire, as any program could that was given the address which lets one in.
 *
 * @param address that
 */
record Asking(URI address) {

    private static final HttpClient CLIENT = HttpClient.newHttpClient();
    private static final Map<URI, String> PASSES = new ConcurrentHashMap<>();

    /** The pass that the address is exchanged for, as a cookie. */
    String pass() throws IOException, InterruptedException {
        String known = PASSES.get(address);
        if (known != null) {
            return known;
        }
        HttpResponse<String> entered =
                CLIENT.send(HttpRequest.newBuilder(address).build(), HttpResponse.BodyHandlers.ofString());
        String given = entered.headers().firstValue("Set-Cookie").orElseThrow().replaceFirst(";.*", "");
        PASSES.put(address, given);
        return given;
    }

    HttpResponse<String> send(String method, String path, String body, String... headers)
            throws IOException, InterruptedException {
        return CLIENT.send(request(method, path, body, headers), HttpResponse.BodyHandlers.ofString());
    }

    HttpResponse<byte[]> bytes(String method, String path, String body) throws IOException, InterruptedException {
        return CLIENT.send(request(method, path, body), HttpResponse.BodyHandlers.ofByteArray());
    }

    /** A request to a path of the page, with the pass. */
    HttpRequest.Builder request(String path) throws IOException, InterruptedException {
        return HttpRequest.newBuilder(address.resolve("/" + path)).header("Cookie", pass());
    }

    private HttpRequest request(String method, String path, String body, String... headers)
            throws IOException, InterruptedException {
        HttpRequest.Builder request = request(path).method(method, HttpRequest.BodyPublishers.ofString(body));
        return (headers.length > 0 ? request.headers(headers) : request).build();
    }

    JsonNode json(String path) throws IOException, InterruptedException {
        return JsonMapper.shared().readTree(send("GET", path, "").body());
    }

    /** Long work when it has ended. */
    JsonNode finished(JsonNode begun) throws IOException, InterruptedException {
        JsonNode now = begun;
        while (now.path("state").asString().equals("running")) {
            Thread.sleep(50);
            now = json("api/jobs/" + begun.path("number").asInt());
        }
        return now;
    }
}
