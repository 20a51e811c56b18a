package jackwork.web;

import jackwork.app.core.Jobs;
import jackwork.app.core.Workbench;
import jackwork.app.make.Making;
import jackwork.app.make.PackShelf;
import jackwork.make.MakeException;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.eclipse.jetty.http.HttpStatus;

/** What is made of a design: shown sheet by sheet and page by page, laid out anew, packed and fetched. */
final class MakeRoutes implements Routes {

    private final Making making;

    MakeRoutes(Workbench workbench, Jobs jobs) {
        this.making = new Making(workbench, jobs);
    }

    @Override
    public void add(Router routes) {
        routes.getJson("/api/make/<id>", exchange -> making.viewJson(id(exchange), of(exchange)));
        routes.getJson("/api/sheets/<id>", exchange -> making.sheetsJson(id(exchange), of(exchange)));
        routes.getJson("/api/solids/<id>", exchange -> making.solidsJson(id(exchange), of(exchange)));
        routes.getJson("/api/papers/<id>", exchange -> making.papersJson(id(exchange), of(exchange)));
        routes.get(
                "/api/paper/<id>",
                exchange -> exchange.answer(
                        "image/png",
                        making.pagePng(
                                id(exchange),
                                of(exchange),
                                Answers.word(exchange, "kind"),
                                Answers.number(exchange, "page"),
                                Answers.number(exchange, "width"))));
        routes.get(
                "/api/glue-step/<id>",
                exchange -> exchange.answer(
                        "image/svg+xml",
                        making.stepSvg(id(exchange), of(exchange), Answers.number(exchange, "number"))));
        routes.postJson("/api/lay/<id>", exchange -> making.layJson(id(exchange), exchange.body()));
        routes.postJson("/api/pack/<id>", exchange -> making.packJson(id(exchange), exchange.body()));
        routes.get("/api/packs/{number}", this::fetch);
        routes.exception(
                MakeException.class,
                (e, exchange) -> Answers.refuse(
                        exchange, HttpStatus.UNPROCESSABLE_ENTITY_422, e.getMessage(), "Nothing was cut or changed."));
    }

    @Override
    public void close() {
        making.close();
    }

    private void fetch(Exchange exchange) {
        try {
            PackShelf.Fetched pack = making.packed(Answers.whole(exchange.parameter("number")));
            Answers.toBeSaved(exchange, pack.name());
            exchange.answer("application/zip", pack.bytes());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String id(Exchange exchange) {
        return exchange.parameter("id");
    }

    private static String of(Exchange exchange) {
        return Answers.word(exchange, "of");
    }
}
