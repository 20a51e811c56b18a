package jackwork.web;

import jackwork.app.bring.BringException;
import jackwork.app.bring.Bringing;
import jackwork.app.core.Editor;
import jackwork.app.core.Workbench;
import jackwork.app.wire.BadRequestException;
import java.nio.charset.StandardCharsets;
import org.eclipse.jetty.http.HttpStatus;

/** Drawings and pictures brought in, new designs, drawings redrawn. */
final class BringRoutes implements Routes {

    /** A plan holds its outlines' points. */
    private static final int MOST_PLAN_BYTES = 48 << 20;

    private final Bringing bringing;

    BringRoutes(Workbench workbench, Editor editor) {
        this.bringing = new Bringing(workbench, editor);
    }

    @Override
    public void add(Router routes) {
        routes.getJson("/api/grounds", exchange -> bringing.groundsJson());
        routes.getJson("/api/starts", exchange -> bringing.startsJson());
        routes.get(
                "/api/start-picture/<id>",
                exchange -> exchange.answer("image/svg+xml", bringing.pictureSvg(exchange.parameter("id"))));
        routes.postJson("/api/begin", exchange -> bringing.beginJson(exchange.body()));
        routes.postJson(
                "/api/bring",
                exchange -> bringing.readJson(
                        Answers.word(exchange, "file"), body(exchange, Bringing.mostBytes()), scale(exchange)));
        routes.postJson("/api/bring/attempt", exchange -> bringing.attemptJson(text(exchange)));
        routes.postJson("/api/bring/make", exchange -> bringing.makeJson(text(exchange)));
        routes.postJson(
                "/api/redrawn/<id>",
                exchange -> bringing.redrawnJson(
                        exchange.parameter("id"),
                        Answers.word(exchange, "file"),
                        body(exchange, Bringing.mostBytes()),
                        scale(exchange)));
        routes.postJson("/api/redraw/<id>", exchange -> bringing.redrawJson(exchange.parameter("id"), text(exchange)));
        routes.exception(
                BringException.class,
                (e, exchange) ->
                        Answers.refuse(exchange, HttpStatus.UNPROCESSABLE_ENTITY_422, e.getMessage(), e.remedy()));
    }

    private static double scale(Exchange exchange) {
        try {
            return Double.parseDouble(Answers.word(exchange, "scale"));
        } catch (NumberFormatException e) {
            throw new BadRequestException("read \"" + Answers.word(exchange, "scale") + "\", expected a scale");
        }
    }

    private static String text(Exchange exchange) {
        return new String(body(exchange, MOST_PLAN_BYTES), StandardCharsets.UTF_8);
    }

    private static byte[] body(Exchange exchange, int most) {
        return Answers.body(
                exchange,
                most,
                () -> new BringException(
                        "the file has more than " + (most >> 20) + " MiB",
                        "Leave pictures out of the drawing, or make the picture smaller."));
    }
}
