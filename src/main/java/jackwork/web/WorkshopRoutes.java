package jackwork.web;

import jackwork.app.core.Workbench;
import jackwork.app.workshop.MyWorkshop;

/** The workshop's own numbers: looked at, changed, changes taken back. */
final class WorkshopRoutes implements Routes {

    private final MyWorkshop workshop;

    WorkshopRoutes(Workbench workbench) {
        this.workshop = new MyWorkshop(workbench);
    }

    @Override
    public void add(Router routes) {
        routes.get("/api/values", exchange -> Answers.json(exchange, workshop.viewJson()));
        routes.get("/api/values/version", exchange -> Answers.json(exchange, workshop.versionJson()));
        routes.get(
                "/api/values/verdict/<id>",
                exchange -> Answers.json(exchange, workshop.verdictJson(exchange.parameter("id"))));
        routes.post("/api/values/edit", exchange -> Answers.json(exchange, workshop.editJson(exchange.body())));
        routes.post("/api/values/undo", exchange -> Answers.json(exchange, workshop.undoJson(exchange.body())));
        routes.post("/api/values/redo", exchange -> Answers.json(exchange, workshop.redoJson(exchange.body())));
    }
}
