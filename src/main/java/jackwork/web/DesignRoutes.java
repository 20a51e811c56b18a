package jackwork.web;

import io.javalin.config.RoutesConfig;
import jackwork.app.Workbench;

/** The workshop's designs, to be looked at. */
final class DesignRoutes implements Routes {

    private final Workbench workbench;

    DesignRoutes(Workbench workbench) {
        this.workbench = workbench;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/api/workshop", context -> Answers.json(context, workbench.workshopJson()));
        routes.get(
                "/api/designs/<id>", context -> Answers.json(context, workbench.designJson(context.pathParam("id"))));
    }
}
