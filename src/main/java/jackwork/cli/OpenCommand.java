package jackwork.cli;

import jackwork.app.bring.Demo;
import jackwork.app.core.PageHost;
import jackwork.app.core.Workbench;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.HttpURLConnection;
import java.net.URI;
import java.net.URLConnection;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.ServiceLoader;
import java.util.concurrent.CountDownLatch;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code jackwork open [FOLDER]}. */
@Command(name = "open", description = "Opens the page in the browser.")
final class OpenCommand extends Subcommand {

    @Parameters(
            paramLabel = "FOLDER",
            arity = "0..1",
            description = "a workshop's folder; a copy of the demo when absent")
    private @Nullable Path folder;

    @Option(names = "--port", paramLabel = "P", description = "port on 127.0.0.1; 8473 when absent, or any free one")
    private int port;

    @Option(names = "--no-browser", description = "only serve, and print the address, which lets in whoever has it")
    private boolean noBrowser;

    @Option(
            names = "--rehearse",
            hidden = true,
            description = "serve, ask for the page and its designs once, and end: trains the class archive")
    private boolean rehearse;

    @Override
    public Integer call() throws IOException, InterruptedException {
        Port.checked(port);
        Path given = folder;
        Path workshop = given;
        if (workshop == null) {
            workshop = Demo.copy(Path.of(System.getProperty("user.home"), "jackwork-demo"));
            System.err.println("A copy of the demo workshop: " + workshop);
        } else if (!Files.isRegularFile(workshop.resolve("workshop.yaml"))) {
            throw new BadInputException(workshop + " has no workshop.yaml; expected the folder of a workshop");
        }
        PageHost host = ServiceLoader.load(PageHost.class)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("this build of Jackwork has no page in it"));
        Workbench workbench = new Workbench(workshop);
        PageHost.Running server = port == 0 ? host.serve(workbench) : host.serve(workbench, port);
        if (rehearse) {
            rehearse(server.address());
            server.stop();
            return Outcome.FINE;
        }
        System.out.println(server.address());
        if (System.out.checkError()) {
            // Nobody learns where it serves.
            server.stop();
            return Outcome.FINE;
        }
        System.err.println("Serving on this machine only, to whoever opens this address. Stop with Ctrl-C.");
        Thread ahead = new Thread(workbench::lookAhead, "ahead");
        ahead.setDaemon(true);
        ahead.start();
        if (!noBrowser) {
            BrowserStart.open(server.address(), Path.of(System.getProperty("user.home")));
        }
        CountDownLatch forever = new CountDownLatch(1);
        Runtime.getRuntime().addShutdownHook(new Thread(() -> {
            server.stop();
            forever.countDown();
        }));
        forever.await();
        return Outcome.FINE;
    }

    private static void rehearse(URI address) throws IOException {
        HttpURLConnection entering = (HttpURLConnection) address.toURL().openConnection();
        entering.setInstanceFollowRedirects(false);
        String pass = String.valueOf(entering.getHeaderField("Set-Cookie"));
        for (String path :
                List.of("/", "/main.js", "/style.css", "/favicon.svg", "/api/workshop", "/api/designs/heron")) {
            URLConnection asking = address.resolve(path).toURL().openConnection();
            asking.setRequestProperty("Cookie", pass.replaceFirst(";.*", ""));
            try (InputStream in = asking.getInputStream()) {
                in.transferTo(OutputStream.nullOutputStream());
            }
        }
    }
}
