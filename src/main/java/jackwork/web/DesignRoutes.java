package jackwork.web;

import jackwork.app.core.Editor;
import jackwork.app.core.Workbench;
import jackwork.app.wire.BadRequestException;
import jackwork.app.wire.StaleException;
import org.eclipse.jetty.http.HttpStatus;

/** The workshop's designs: looked at, changed, changes taken back. */
final class DesignRoutes implements Routes {

    private final Workbench workbench;
    private final Editor editor;

    DesignRoutes(Workbench workbench, Editor editor) {
        this.workbench = workbench;
        this.editor = editor;
    }

    @Override
    public void add(Router routes) {
        routes.getJson("/api/workshop", exchange -> workbench.workshopJson());
        routes.getJson("/api/designs/<id>", exchange -> editor.viewJson(exchange.parameter("id")));
        routes.getJson("/api/version/<id>", exchange -> editor.versionJson(exchange.parameter("id")));
        routes.getJson("/api/standing/<id>", exchange -> editor.standingJson(exchange.parameter("id")));
        routes.postJson("/api/edit/<id>", exchange -> editor.editJson(exchange.parameter("id"), exchange.body()));
        routes.postJson("/api/undo/<id>", exchange -> editor.undoJson(exchange.parameter("id"), exchange.body()));
        routes.postJson("/api/redo/<id>", exchange -> editor.redoJson(exchange.parameter("id"), exchange.body()));
        routes.postJson("/api/glimpse/<id>", exchange -> editor.glimpseJson(exchange.parameter("id"), exchange.body()));
        routes.get(
                "/api/picture/<id>",
                exchange -> exchange.answer(
                        "image/png", editor.picture(exchange.parameter("id"), Answers.word(exchange, "part"))));
        routes.exception(
                BadRequestException.class,
                (e, exchange) -> Answers.refuse(
                        exchange, HttpStatus.BAD_REQUEST_400, e.getMessage(), "Reload the page and try again."));
        routes.exception(
                StaleException.class,
                (e, exchange) -> Answers.refuse(
                        exchange,
                        HttpStatus.CONFLICT_409,
                        e.getMessage(),
                        "Look at what they are now, then decide again."));
    }
}
