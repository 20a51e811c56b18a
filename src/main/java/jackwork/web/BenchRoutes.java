package jackwork.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import jackwork.app.bench.BenchDesk;
import jackwork.app.bench.PhoneDesk;
import jackwork.app.wire.BadRequestException;
import jackwork.bench.BenchException;
import java.util.Arrays;
import java.util.List;

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
    public void add(RoutesConfig routes) {
        routes.get(
                "/api/bench",
                context -> Answers.json(
                        context,
                        bench.viewJson(design(context), share(context, "rate"), share(context, "confidence"))));
        routes.get("/api/bench/pulse", context -> Answers.json(context, bench.pulseJson()));
        routes.post("/api/bench/freeze", context -> Answers.json(context, bench.freezeJson(context.body())));
        routes.post("/api/bench/log", context -> Answers.json(context, bench.logJson(context.body())));
        routes.post("/api/bench/measured", context -> Answers.json(context, bench.measuredJson(context.body())));
        routes.get("/api/bench/use", context -> Answers.json(context, bench.useJson(wanted(context))));
        routes.get(
                "/api/bench/effect",
                context -> Answers.json(context, bench.effectJson(wanted(context), design(context))));
        routes.post("/api/bench/use", context -> Answers.json(context, bench.applyJson(context.body())));
        routes.get(
                "/api/bench/pair",
                context -> Answers.json(
                        context,
                        bench.pairJson(
                                design(context), Answers.number(context, "before"), Answers.number(context, "after"))));
        routes.get(
                "/api/bench/picture",
                context -> context.contentType("image/svg+xml")
                        .result(bench.pictureSvg(
                                design(context),
                                Answers.number(context, "before"),
                                Answers.number(context, "after"),
                                Answers.word(context, "of").equals("before"))));
        routes.get("/api/bench/times", context -> Answers.json(context, bench.usualTimesJson(design(context))));
        routes.post("/api/bench/predict", context -> Answers.json(context, bench.predictJson(context.body())));
        routes.get("/api/bench/csv/{kind}", context -> {
            String kind = context.pathParam("kind");
            String csv = bench.csv(kind);
            Answers.download(context, "text/csv; charset=utf-8", kind + ".csv").result(csv);
        });
        routes.post("/api/bench/csv", context -> {
            byte[] bytes = Answers.body(
                    context,
                    MOST_CSV_BYTES,
                    () -> new BenchException("the file has more than " + (MOST_CSV_BYTES >> 20)
                            + " MiB; bring it in parts, or with: jackwork bench import"));
            Answers.json(context, bench.importJson(Answers.word(context, "file"), bytes));
        });
        routes.get("/api/bench/files", context -> {
            int revision = Answers.number(context, "revision");
            byte[] zip = bench.filesZip(design(context), revision);
            String name = design(context) + "-revision-" + revision + ".zip";
            Answers.download(context, "application/zip", name).result(zip);
        });
        addPhone(routes);
        routes.exception(BenchException.class, BenchRoutes::refused);
    }

    /** Only the page may let a phone in: what names no page of ours as its origin may not. */
    private void addPhone(RoutesConfig routes) {
        routes.post("/api/bench/phone", context -> {
            requireOrigin(context);
            Answers.json(context, phone.letInJson(context.body()));
        });
        routes.delete("/api/bench/phone", context -> {
            requireOrigin(context);
            Answers.json(context, phone.stopJson());
        });
        routes.get(
                "/api/bench/phone-code.svg",
                context -> context.contentType("image/svg+xml").result(phone.codeSvg()));
    }

    /** A foreign one was refused before ({@link PageServer}). */
    private static void requireOrigin(Context context) {
        if (context.header("Origin") == null) {
            throw new BadRequestException("a phone is let in and turned out from the page alone");
        }
    }

    private static void refused(BenchException e, Context context) {
        Answers.refuse(
                context,
                e.unreached() ? HttpStatus.SERVICE_UNAVAILABLE : HttpStatus.UNPROCESSABLE_CONTENT,
                e.getMessage(),
                "Nothing was changed.");
    }

    @Override
    public void close() {
        phone.close();
    }

    private static String design(Context context) {
        return Answers.word(context, "design");
    }

    private static List<String> wanted(Context context) {
        return Arrays.stream(Answers.word(context, "what").split(" "))
                .filter(name -> !name.isEmpty())
                .toList();
    }

    private static double share(Context context, String name) {
        try {
            return Double.parseDouble(Answers.word(context, name));
        } catch (NumberFormatException e) {
            throw new BadRequestException(
                    "read \"" + Answers.word(context, name) + "\" for the " + name + ", expected a share, as in 0.99");
        }
    }
}
