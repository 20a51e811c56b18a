package jackwork.web;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.eclipse.jetty.http.HttpCookie;
import org.eclipse.jetty.http.HttpException;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.http.HttpStatus;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.io.EndPoint;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;
import org.jspecify.annotations.Nullable;

/**
 * One request and its answer. Nothing is sent before the answer is whole: until then whoever handles the request may think
 * better of it.
 */
final class Exchange {

    private static final byte[] NOTHING = {};

    /** Bytes of a body that nobody wanted, which are still let come: a photo too large by far is, a film is not. */
    private static final int MOST_AWAITED = 16 << 20;

    private final Request request;
    private final Response response;
    private final int mostBytes;
    private final String path;
    private Map<String, String> parameters = Map.of();
    private int status = HttpStatus.OK_200;
    private byte[] answer = NOTHING;
    private @Nullable InputStream stream;

    /** @param mostBytes of a body that is read whole as text */
    Exchange(Request request, Response response, int mostBytes) {
        this.request = request;
        this.response = response;
        this.mostBytes = mostBytes;
        String asked = request.getHttpURI().getPath();
        this.path = asked == null ? "" : asked;
    }

    String method() {
        return request.getMethod();
    }

    /** As it was sent: percent signs and all. */
    String path() {
        return path;
    }

    /** The port that was asked, whatever the request says of it. */
    int port() {
        return Request.getLocalPort(request);
    }

    /** The first of that name; letters' case does not matter. */
    @Nullable
    String header(String name) {
        return request.getHeaders().get(name);
    }

    /** The first of that name. */
    @Nullable
    String query(String name) {
        return Request.extractQueryParameters(request).getValue(name);
    }

    @Nullable
    String cookie(String name) {
        for (HttpCookie cookie : Request.getCookies(request)) {
            if (cookie.getName().equals(name)) {
                return cookie.getValue();
            }
        }
        return null;
    }

    /** What stood in the path in the place of a {@link Template}'s name. */
    String parameter(String name) {
        String value = parameters.get(name);
        if (value == null) {
            throw new IllegalStateException("no \"" + name + "\" in the template that " + path + " matched");
        }
        return value;
    }

    void setParameters(Map<String, String> parameters) {
        this.parameters = parameters;
    }

    /** Whatever was kept with the request under a name. */
    @Nullable
    Object attribute(String name) {
        return request.getAttribute(name);
    }

    void setAttribute(String name, Object value) {
        request.setAttribute(name, value);
    }

    /** Bytes of the body as announced; -1 when nothing is. */
    long length() {
        return request.getLength();
    }

    /** Where the request comes from. */
    EndPoint endPoint() {
        return request.getConnectionMetaData().getConnection().getEndPoint();
    }

    /** Waits for whatever has not come yet. Not to be closed before its end: that hangs up on the sender. */
    InputStream bodyStream() {
        return Content.Source.asInputStream(request);
    }

    /** The whole body, which is text: JSON is UTF-8 whatever its header says. */
    String body() throws IOException {
        byte[] bytes = bodyStream().readNBytes(mostBytes + 1);
        if (bytes.length > mostBytes) {
            throw new HttpException.RuntimeException(HttpStatus.PAYLOAD_TOO_LARGE_413);
        }
        return new String(bytes, StandardCharsets.UTF_8);
    }

    int status() {
        return status;
    }

    Exchange setStatus(int code) {
        this.status = code;
        return this;
    }

    Exchange setHeader(String name, String value) {
        response.getHeaders().put(name, value);
        return this;
    }

    void answer(String type, String text) {
        answer(type, text.getBytes(StandardCharsets.UTF_8));
    }

    void answer(String type, byte[] bytes) {
        answer(type, bytes, null);
    }

    /** With what is read while it is sent, and closed then: more than is to be held in memory. */
    void answer(String type, InputStream bytes) {
        answer(type, NOTHING, bytes);
    }

    private void answer(String type, byte[] whole, @Nullable InputStream read) {
        close(stream);
        this.answer = whole;
        this.stream = read;
        setHeader(HttpHeader.CONTENT_TYPE.asString(), type);
    }

    private static void close(@Nullable InputStream stream) {
        if (stream != null) {
            try {
                stream.close();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    /** Sends the answer, and then lets come what is left of a body that nobody wanted. */
    void send(Callback sent) {
        response.setStatus(status);
        Callback ended = sent;
        if (isRestAwaited()) {
            ended = Callback.from(() -> Content.Source.consumeAll(request, sent), sent::failed);
        } else if (!request.consumeAvailable()) {
            setHeader(HttpHeader.CONNECTION.asString(), "close");
        }
        InputStream read = stream;
        if (read == null) {
            // No thread waits until a slow reader has it.
            response.write(true, ByteBuffer.wrap(answer), ended);
        } else {
            copy(read, ended);
        }
    }

    /**
     * To hang up on somebody who still sends takes the answer away that is on its way. A large rest is not worth that, and
     * whoever asked for leave to send is not to be given it now.
     */
    private boolean isRestAwaited() {
        return length() > 0 && length() <= MOST_AWAITED && header(HttpHeader.EXPECT.asString()) == null;
    }

    /** What breaks off is not ended: else whoever fetches it would take a half for the whole. */
    private void copy(InputStream from, Callback sent) {
        try (from) {
            OutputStream to = Content.Sink.asOutputStream(response);
            from.transferTo(to);
            to.close();
        } catch (IOException e) {
            sent.failed(e);
            return;
        }
        sent.succeeded();
    }
}
