package jackwork.web;

import io.javalin.config.RoutesConfig;
import jackwork.app.pay.Paying;

/** Will it pay? asked as often as a slider moves; long work for it begun. */
final class PayRoutes implements Routes {

    private final Paying paying;

    PayRoutes(Paying paying) {
        this.paying = paying;
    }

    @Override
    public void add(RoutesConfig routes) {
        routes.post(
                "/api/pay/<id>",
                context -> Answers.json(context, paying.answerJson(context.pathParam("id"), context.body())));
        routes.post(
                "/api/pay-again/<id>",
                context -> Answers.json(context, paying.againJson(context.pathParam("id"), context.body())));
        routes.post(
                "/api/pay-draw/<id>",
                context -> Answers.json(context, paying.drawJson(context.pathParam("id"), context.body())));
    }
}
