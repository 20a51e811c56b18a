package jackwork.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.HttpStatus;
import jackwork.app.core.Editor;
import jackwork.app.core.Workbench;
import jackwork.app.wire.BadRequestException;
import jackwork.app.wire.StaleException;

/** The workshop's designs: looked at, changed, changes taken back. */
final class DesignRoutes implements Routes {

    private final Workbench workbench;
    private final Editor editor;

    DesignRoutes(Workbench workbench, Editor editor) {
        this.workbench = workbench;
        this.editor = editor;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/api/workshop", context -> Answers.json(context, workbench.workshopJson()));
        routes.get("/api/designs/<id>", context -> Answers.json(context, editor.viewJson(context.pathParam("id"))));
        routes.get("/api/version/<id>", context -> Answers.json(context, editor.versionJson(context.pathParam("id"))));
        routes.get(
                "/api/standing/<id>", context -> Answers.json(context, editor.standingJson(context.pathParam("id"))));
        routes.post(
                "/api/edit/<id>",
                context -> Answers.json(context, editor.editJson(context.pathParam("id"), context.body())));
        routes.post(
                "/api/undo/<id>",
                context -> Answers.json(context, editor.undoJson(context.pathParam("id"), context.body())));
        routes.post(
                "/api/redo/<id>",
                context -> Answers.json(context, editor.redoJson(context.pathParam("id"), context.body())));
        routes.post(
                "/api/glimpse/<id>",
                context -> Answers.json(context, editor.glimpseJson(context.pathParam("id"), context.body())));
        routes.get(
                "/api/picture/<id>",
                context -> context.contentType("image/png")
                        .result(editor.picture(context.pathParam("id"), Answers.word(context, "part"))));
        routes.exception(
                BadRequestException.class,
                (e, context) -> Answers.refuse(
                        context, HttpStatus.BAD_REQUEST, e.getMessage(), "Reload the page and try again."));
        routes.exception(
                StaleException.class,
                (e, context) -> Answers.refuse(
                        context, HttpStatus.CONFLICT, e.getMessage(), "Look at what they are now, then decide again."));
    }
}
