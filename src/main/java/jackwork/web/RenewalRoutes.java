package jackwork.web;

import jackwork.app.core.Renewal;
import jackwork.app.core.Workbench;

/** Files of an earlier format: looked at, made ones of today's, and taken back. */
final class RenewalRoutes implements Routes {

    private final Renewal renewal;

    RenewalRoutes(Workbench workbench) {
        this.renewal = new Renewal(workbench.folder());
    }

    @Override
    public void add(Router routes) {
        routes.getJson("/api/renewal", exchange -> renewal.viewJson());
        routes.postJson("/api/renewal/make", exchange -> renewal.renewJson(exchange.body()));
        routes.postJson("/api/renewal/back", exchange -> renewal.takeBackJson());
    }
}
