package jackwork.web;

import io.javalin.config.RoutesConfig;
import jackwork.app.core.Workbench;
import jackwork.app.workshop.MyWorkshop;

/** The workshop's own numbers: looked at, changed, changes taken back. */
final class WorkshopRoutes implements Routes {

    private final MyWorkshop workshop;

    WorkshopRoutes(Workbench workbench) {
        this.workshop = new MyWorkshop(workbench);
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/api/values", context -> Answers.json(context, workshop.viewJson()));
        routes.get("/api/values/version", context -> Answers.json(context, workshop.versionJson()));
        routes.get(
                "/api/values/verdict/<id>",
                context -> Answers.json(context, workshop.verdictJson(context.pathParam("id"))));
        routes.post("/api/values/edit", context -> Answers.json(context, workshop.editJson(context.body())));
        routes.post("/api/values/undo", context -> Answers.json(context, workshop.undoJson(context.body())));
        routes.post("/api/values/redo", context -> Answers.json(context, workshop.redoJson(context.body())));
    }
}
