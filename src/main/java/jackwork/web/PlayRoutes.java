package jackwork.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import jackwork.app.core.Jobs;
import jackwork.app.core.Remedies;
import jackwork.app.core.Workbench;
import jackwork.app.work.Player;
import jackwork.app.work.Trying;

/** Coins dropped, pieces watched, long work started, looked at and stopped. */
final class PlayRoutes implements Routes {

    private final Player player;
    private final Jobs jobs;
    private final Trying trying;
    private final Remedies remedies;

    PlayRoutes(Workbench workbench, Jobs jobs) {
        this.player = new Player(workbench);
        this.jobs = jobs;
        this.trying = new Trying(workbench, jobs);
        this.remedies = new Remedies(workbench);
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/api/tray/<id>", context -> Answers.json(context, player.trayJson(id(context))));
        routes.get(
                "/api/drop/<id>",
                context -> Answers.json(context, player.dropJson(id(context), Answers.word(context, "coin"))));
        routes.get(
                "/api/piece/<id>",
                context -> Answers.json(
                        context,
                        player.pieceJson(
                                id(context),
                                Answers.number(context, "builds"),
                                Answers.number(context, "seed"),
                                Answers.number(context, "number"))));
        routes.get(
                "/api/across/<id>",
                context -> context.contentType("image/svg+xml")
                        .result(player.acrossSvg(
                                id(context),
                                Answers.number(context, "builds"),
                                Answers.number(context, "seed"),
                                Answers.number(context, "number"))));
        routes.get(
                "/api/remedy/<id>",
                context -> Answers.json(context, remedies.remedyJson(id(context), Answers.word(context, "finding"))));
        routes.post(
                "/api/pieces/<id>", context -> Answers.json(context, trying.piecesJson(id(context), context.body())));
        routes.post("/api/tune/<id>", context -> Answers.json(context, trying.tuneJson(id(context), context.body())));
        routes.get(
                "/api/jobs/{number}",
                context -> Answers.json(context, jobs.viewJson(Answers.whole(context.pathParam("number")))));
        routes.delete(
                "/api/jobs/{number}",
                context -> Answers.json(context, jobs.stopJson(Answers.whole(context.pathParam("number")))));
    }

    @Override
    public void close() {
        jobs.close();
    }

    private static String id(Context context) {
        return context.pathParam("id");
    }
}
