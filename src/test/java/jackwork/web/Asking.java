package jackwork.web;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Asks the real server over the wire, as any program could. */
record Asking(URI server) {

    private static final HttpClient CLIENT = HttpClient.newHttpClient();

    HttpResponse<String> send(String method, String path, String body, String... headers)
            throws IOException, InterruptedException {
        return CLIENT.send(request(method, path, body, headers), HttpResponse.BodyHandlers.ofString());
    }

    HttpResponse<byte[]> bytes(String method, String path, String body) throws IOException, InterruptedException {
        return CLIENT.send(request(method, path, body), HttpResponse.BodyHandlers.ofByteArray());
    }

    private HttpRequest request(String method, String path, String body, String... headers) {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(server + path))
                .method(method, HttpRequest.BodyPublishers.ofString(body));
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
