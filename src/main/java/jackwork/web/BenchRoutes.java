package jackwork.web;

import jackwork.app.bench.BenchDesk;
import jackwork.app.bench.PhoneDesk;
import jackwork.app.wire.BadRequestException;
import jackwork.bench.BenchException;
import java.util.Arrays;
import java.util.List;
import org.eclipse.jetty.http.HttpStatus;

/** The bench log: seen, added to, taken out; and a phone let in. */
final class BenchRoutes implements Routes {

    private static final int MOST_CSV_BYTES = 16 << 20;

    private final BenchDesk bench;
    private final PhoneDesk phone;

    BenchRoutes(BenchDesk bench, PhoneDesk phone) {
        this.bench = bench;
        this.phone = phone;
    }

    @Override
    public void add(Router routes) {
        routes.getJson(
                "/api/bench",
                exchange -> bench.viewJson(design(exchange), share(exchange, "rate"), share(exchange, "confidence")));
        routes.getJson("/api/bench/pulse", exchange -> bench.pulseJson());
        routes.postJson("/api/bench/freeze", exchange -> bench.freezeJson(exchange.body()));
        routes.postJson("/api/bench/log", exchange -> bench.logJson(exchange.body()));
        routes.postJson("/api/bench/measured", exchange -> bench.measuredJson(exchange.body()));
        routes.getJson("/api/bench/use", exchange -> bench.useJson(wanted(exchange)));
        routes.getJson("/api/bench/effect", exchange -> bench.effectJson(wanted(exchange), design(exchange)));
        routes.postJson("/api/bench/use", exchange -> bench.applyJson(exchange.body()));
        routes.getJson(
                "/api/bench/pair",
                exchange -> bench.pairJson(
                        design(exchange), Answers.number(exchange, "before"), Answers.number(exchange, "after")));
        routes.get(
                "/api/bench/picture",
                exchange -> exchange.answer(
                        "image/svg+xml",
                        bench.pictureSvg(
                                design(exchange),
                                Answers.number(exchange, "before"),
                                Answers.number(exchange, "after"),
                                Answers.word(exchange, "of").equals("before"))));
        routes.getJson("/api/bench/times", exchange -> bench.usualTimesJson(design(exchange)));
        routes.postJson("/api/bench/predict", exchange -> bench.predictJson(exchange.body()));
        routes.get("/api/bench/csv/{kind}", exchange -> {
            String kind = exchange.parameter("kind");
            String csv = bench.csv(kind);
            Answers.toBeSaved(exchange, kind + ".csv");
            exchange.answer("text/csv; charset=utf-8", csv);
        });
        routes.post("/api/bench/csv", exchange -> {
            byte[] bytes = Answers.body(
                    exchange,
                    MOST_CSV_BYTES,
                    () -> new BenchException("the file has more than " + (MOST_CSV_BYTES >> 20)
                            + " MiB; bring it in parts, or with: jackwork bench import"));
            Answers.json(exchange, bench.importJson(Answers.word(exchange, "file"), bytes));
        });
        routes.get("/api/bench/files", exchange -> {
            int revision = Answers.number(exchange, "revision");
            byte[] zip = bench.filesZip(design(exchange), revision);
            String name = design(exchange) + "-revision-" + revision + ".zip";
            Answers.toBeSaved(exchange, name);
            exchange.answer("application/zip", zip);
        });
        addPhone(routes);
        routes.exception(BenchException.class, BenchRoutes::refused);
    }

    /** Only the page may let a phone in: what names no page of ours as its origin may not. */
    private void addPhone(Router routes) {
        routes.post("/api/bench/phone", exchange -> {
            requireOrigin(exchange);
            Answers.json(exchange, phone.letInJson(exchange.body()));
        });
        routes.delete("/api/bench/phone", exchange -> {
            requireOrigin(exchange);
            Answers.json(exchange, phone.stopJson());
        });
        routes.get("/api/bench/phone-code.svg", exchange -> exchange.answer("image/svg+xml", phone.codeSvg()));
    }

    /** A foreign one was refused before ({@link PageServer}). */
    private static void requireOrigin(Exchange exchange) {
        if (exchange.header("Origin") == null) {
            throw new BadRequestException("a phone is let in and turned out from the page alone");
        }
    }

    private static void refused(BenchException e, Exchange exchange) {
        Answers.refuse(
                exchange,
                e.unreached() ? HttpStatus.SERVICE_UNAVAILABLE_503 : HttpStatus.UNPROCESSABLE_ENTITY_422,
                e.getMessage(),
                "Nothing was changed.");
    }

    @Override
    public void close() {
        phone.close();
    }

    private static String design(Exchange exchange) {
        return Answers.word(exchange, "design");
    }

    private static List<String> wanted(Exchange exchange) {
        return Arrays.stream(Answers.word(exchange, "what").split(" "))
                .filter(name -> !name.isEmpty())
                .toList();
    }

    private static double share(Exchange exchange, String name) {
        try {
            return Double.parseDouble(Answers.word(exchange, name));
        } catch (NumberFormatException e) {
            throw new BadRequestException(
                    "read \"" + Answers.word(exchange, name) + "\" for the " + name + ", expected a share, as in 0.99");
        }
    }
}
