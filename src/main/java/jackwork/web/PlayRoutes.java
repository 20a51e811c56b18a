package jackwork.web;

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
    public void add(Router routes) {
        routes.getJson("/api/tray/<id>", exchange -> player.trayJson(id(exchange)));
        routes.getJson("/api/drop/<id>", exchange -> player.dropJson(id(exchange), Answers.word(exchange, "coin")));
        routes.getJson(
                "/api/piece/<id>",
                exchange -> player.pieceJson(
                        id(exchange),
                        Answers.number(exchange, "builds"),
                        Answers.number(exchange, "seed"),
                        Answers.number(exchange, "number")));
        routes.get(
                "/api/across/<id>",
                exchange -> exchange.answer(
                        "image/svg+xml",
                        player.acrossSvg(
                                id(exchange),
                                Answers.number(exchange, "builds"),
                                Answers.number(exchange, "seed"),
                                Answers.number(exchange, "number"))));
        routes.getJson(
                "/api/remedy/<id>", exchange -> remedies.remedyJson(id(exchange), Answers.word(exchange, "finding")));
        routes.postJson("/api/pieces/<id>", exchange -> trying.piecesJson(id(exchange), exchange.body()));
        routes.postJson("/api/tune/<id>", exchange -> trying.tuneJson(id(exchange), exchange.body()));
        routes.getJson("/api/jobs/{number}", exchange -> jobs.viewJson(Answers.whole(exchange.parameter("number"))));
        routes.deleteJson("/api/jobs/{number}", exchange -> jobs.stopJson(Answers.whole(exchange.parameter("number"))));
    }

    @Override
    public void close() {
        jobs.close();
    }

    private static String id(Exchange exchange) {
        return exchange.parameter("id");
    }
}
