package jackwork.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import jackwork.app.core.Jobs;
import jackwork.app.core.Workbench;
import jackwork.app.make.Making;
import jackwork.app.make.PackShelf;
import jackwork.make.MakeException;
import java.io.IOException;
import java.io.UncheckedIOException;

/** What is made of a design: shown sheet by sheet and page by page, laid out anew, packed and fetched. */
final class MakeRoutes implements Routes {

    private final Making making;

    MakeRoutes(Workbench workbench, Jobs jobs) {
        this.making = new Making(workbench, jobs);
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/api/make/<id>", context -> Answers.json(context, making.viewJson(id(context), of(context))));
        routes.get("/api/sheets/<id>", context -> Answers.json(context, making.sheetsJson(id(context), of(context))));
        routes.get("/api/solids/<id>", context -> Answers.json(context, making.solidsJson(id(context), of(context))));
        routes.get("/api/papers/<id>", context -> Answers.json(context, making.papersJson(id(context), of(context))));
        routes.get(
                "/api/paper/<id>",
                context -> context.contentType("image/png")
                        .result(making.pagePng(
                                id(context),
                                of(context),
                                Answers.word(context, "kind"),
                                Answers.number(context, "page"),
                                Answers.number(context, "width"))));
        routes.get(
                "/api/glue-step/<id>",
                context -> context.contentType("image/svg+xml")
                        .result(making.stepSvg(id(context), of(context), Answers.number(context, "number"))));
        routes.post("/api/lay/<id>", context -> Answers.json(context, making.layJson(id(context), context.body())));
        routes.post("/api/pack/<id>", context -> Answers.json(context, making.packJson(id(context), context.body())));
        routes.get("/api/packs/{number}", this::fetch);
        routes.exception(
                MakeException.class,
                (e, context) -> Answers.refuse(
                        context, HttpStatus.UNPROCESSABLE_CONTENT, e.getMessage(), "Nothing was cut or changed."));
    }

    @Override
    public void close() {
        making.close();
    }

    private void fetch(Context context) {
        try {
            PackShelf.Fetched pack = making.packed(Answers.whole(context.pathParam("number")));
            Answers.download(context, "application/zip", pack.name()).result(pack.bytes());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String id(Context context) {
        return context.pathParam("id");
    }

    private static String of(Context context) {
        return Answers.word(context, "of");
    }
}
