package jackwork.web;

import jackwork.app.pay.Paying;

/** Will it pay? asked as often as a slider moves; long work for it begun. */
final class PayRoutes implements Routes {

    private final Paying paying;

    PayRoutes(Paying paying) {
        this.paying = paying;
    }

    @Override
    public void add(Router routes) {
        routes.postJson("/api/pay/<id>", exchange -> paying.answerJson(exchange.parameter("id"), exchange.body()));
        routes.postJson("/api/pay-again/<id>", exchange -> paying.againJson(exchange.parameter("id"), exchange.body()));
        routes.postJson("/api/pay-draw/<id>", exchange -> paying.drawJson(exchange.parameter("id"), exchange.body()));
    }
}
