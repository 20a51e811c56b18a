package jackwork.web;

import jackwork.DemoCopy;
import jackwork.app.core.Benches;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.extension.AfterAllCallback;
import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/** The real server on a free port: registered in a static field, one for all tests of a class; else one for each. */
final class Serving implements BeforeAllCallback, BeforeEachCallback, AfterEachCallback, AfterAllCallback {

    private final boolean copied;
    private boolean forAll;
    private @Nullable Path folder;
    private @Nullable PageServer server;

    private Serving(boolean copied) {
        this.copied = copied;
    }

    /** Serves the demo itself, which nobody changes. */
    static Serving demo() {
        return new Serving(false);
    }

    /** Serves a fresh copy of the demo, to be changed. */
    static Serving copy() {
        return new Serving(true);
    }

    @Override
    public void beforeAll(ExtensionContext context) throws IOException {
        forAll = true;
        start();
    }

    @Override
    public void beforeEach(ExtensionContext context) throws IOException {
        if (!forAll) {
            start();
        }
    }

    @Override
    public void afterEach(ExtensionContext context) {
        if (!forAll) {
            server().stop();
        }
    }

    @Override
    public void afterAll(ExtensionContext context) {
        server().stop();
    }

    private void start() throws IOException {
        folder = copied ? DemoCopy.here() : Path.of("demo");
        server = PageServer.start(Benches.at(folder), 0);
    }

    /** The same files served by another, as after the program was ended and begun. */
    void startAgain() {
        server().stop();
        server = PageServer.start(Benches.at(folder()), 0);
    }

    PageServer server() {
        return Objects.requireNonNull(server);
    }

    /** The workshop that is served. */
    Path folder() {
        return Objects.requireNonNull(folder);
    }

    Asking asking() {
        return new Asking(server().address());
    }
}
