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
        routes.getJson("/api/values", exchange -> workshop.viewJson());
        routes.getJson("/api/values/version", exchange -> workshop.versionJson());
        routes.getJson("/api/values/verdict/<id>", exchange -> workshop.verdictJson(exchange.parameter("id")));
        routes.postJson("/api/values/edit", exchange -> workshop.editJson(exchange.body()));
        routes.postJson("/api/values/undo", exchange -> workshop.undoJson(exchange.body()));
        routes.postJson("/api/values/redo", exchange -> workshop.redoJson(exchange.body()));
    }
}
