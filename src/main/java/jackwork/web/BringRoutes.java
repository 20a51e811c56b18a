package jackwork.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import jackwork.app.bring.BringException;
import jackwork.app.bring.Bringing;
import jackwork.app.core.Editor;
import jackwork.app.core.Workbench;
import jackwork.app.wire.BadRequestException;
import java.nio.charset.StandardCharsets;

/** Drawings and pictures brought in, new designs, drawings redrawn. */
final class BringRoutes implements Routes {

    /** A plan holds its outlines' points. */
    private static final int MOST_PLAN_BYTES = 48 << 20;

    private final Bringing bringing;

    BringRoutes(Workbench workbench, Editor editor) {
        this.bringing = new Bringing(workbench, editor);
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/api/grounds", context -> Answers.json(context, bringing.groundsJson()));
        routes.get("/api/starts", context -> Answers.json(context, bringing.startsJson()));
        routes.get(
                "/api/start-picture/<id>",
                context -> context.contentType("image/svg+xml").result(bringing.pictureSvg(context.pathParam("id"))));
        routes.post("/api/begin", context -> Answers.json(context, bringing.beginJson(context.body())));
        routes.post(
                "/api/bring",
                context -> Answers.json(
                        context,
                        bringing.readJson(
                                Answers.word(context, "file"), body(context, Bringing.mostBytes()), scale(context))));
        routes.post("/api/bring/attempt", context -> Answers.json(context, bringing.attemptJson(text(context))));
        routes.post("/api/bring/make", context -> Answers.json(context, bringing.makeJson(text(context))));
        routes.post(
                "/api/redrawn/<id>",
                context -> Answers.json(
                        context,
                        bringing.redrawnJson(
                                context.pathParam("id"),
                                Answers.word(context, "file"),
                                body(context, Bringing.mostBytes()),
                                scale(context))));
        routes.post(
                "/api/redraw/<id>",
                context -> Answers.json(context, bringing.redrawJson(context.pathParam("id"), text(context))));
        routes.exception(
                BringException.class,
                (e, context) -> Answers.refuse(context, HttpStatus.UNPROCESSABLE_CONTENT, e.getMessage(), e.remedy()));
    }

    private static double scale(Context context) {
        try {
            return Double.parseDouble(Answers.word(context, "scale"));
        } catch (NumberFormatException e) {
            throw new BadRequestException("read \"" + Answers.word(context, "scale") + "\", expected a scale");
        }
    }

    private static String text(Context context) {
        return new String(body(context, MOST_PLAN_BYTES), StandardCharsets.UTF_8);
    }

    private static byte[] body(Context context, int most) {
        return Answers.body(
                context,
                most,
                () -> new BringException(
                        "the file has more than " + (most >> 20) + " MiB",
                        "Leave pictures out of the drawing, or make the picture smaller."));
    }
}
