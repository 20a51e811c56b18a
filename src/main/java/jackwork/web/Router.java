package jackwork.web;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Predicate;
import org.eclipse.jetty.http.HttpMethod;
import org.eclipse.jetty.http.HttpStatus;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;
import org.jspecify.annotations.Nullable;

/**
 * Who answers what: the guard is asked first, then the first route whose method and template fit. Whatever is thrown is
 * answered by the fault that fits it most closely.
 */
final class Router extends Handler.Abstract {

    /** What answers a request, or throws; it may wait for as long as it needs. */
    interface Answering {
        void answer(Exchange exchange) throws Exception;
    }

    /** What is answered to a request, as JSON. */
    interface Telling {
        String of(Exchange exchange) throws Exception;
    }

    private record Route(String method, Template template, Answering answering) {}

    /** Told of each request that begins so, before it is answered and after, whatever became of it. */
    private record Watcher(String beginning, Consumer<Exchange> before, Consumer<Exchange> after) {}

    private final int mostBytes;
    private final Predicate<Exchange> guard;
    private final Consumer<Exchange> missing;
    private final List<Watcher> watchers = new ArrayList<>();
    private final List<Route> routes = new ArrayList<>();
    private final Map<Class<? extends Throwable>, BiConsumer<Throwable, Exchange>> faults = new HashMap<>();

    /**
     * @param mostBytes of a body that is read whole as text
     * @param guard answers by itself whom it does not let on, and nothing else is asked then
     * @param missing answers what no route fits
     */
    Router(int mostBytes, Predicate<Exchange> guard, Consumer<Exchange> missing) {
        this.mostBytes = mostBytes;
        this.guard = guard;
        this.missing = missing;
    }

    void watch(String beginning, Consumer<Exchange> before, Consumer<Exchange> after) {
        watchers.add(new Watcher(beginning, before, after));
    }

    void get(String template, Answering answering) {
        add(HttpMethod.GET, template, answering);
    }

    void post(String template, Answering answering) {
        add(HttpMethod.POST, template, answering);
    }

    void delete(String template, Answering answering) {
        add(HttpMethod.DELETE, template, answering);
    }

    void getJson(String template, Telling telling) {
        get(template, json(telling));
    }

    void postJson(String template, Telling telling) {
        post(template, json(telling));
    }

    void deleteJson(String template, Telling telling) {
        delete(template, json(telling));
    }

    private static Answering json(Telling telling) {
        return exchange -> Answers.json(exchange, telling.of(exchange));
    }

    private void add(HttpMethod method, String template, Answering answering) {
        routes.add(new Route(method.asString(), Template.of(template), answering));
    }

    /** How a fault is answered, and each that is of its kind and has no answer of its own. */
    <T extends Throwable> void exception(Class<T> kind, BiConsumer<T, Exchange> answering) {
        faults.put(kind, (thrown, exchange) -> answering.accept(kind.cast(thrown), exchange));
    }

    @Override
    public boolean handle(Request request, Response response, Callback sent) {
        Exchange exchange = new Exchange(request, response, mostBytes);
        if (isLet(exchange)) {
            List<Watcher> told = watchers.stream()
                    .filter(watcher -> exchange.path().startsWith(watcher.beginning))
                    .toList();
            told.forEach(watcher -> watcher.before.accept(exchange));
            try {
                answer(exchange);
            } finally {
                told.forEach(watcher -> watcher.after.accept(exchange));
            }
        }
        exchange.send(sent);
        return true;
    }

    /** The guard reads what was sent, which may be anything. */
    private boolean isLet(Exchange exchange) {
        try {
            return guard.test(exchange);
        } catch (RuntimeException e) {
            answerFault(e, exchange);
            return false;
        }
    }

    private void answer(Exchange exchange) {
        try {
            if (!answers(exchange, exchange.method()) && !isOnlyLookedFor(exchange)) {
                missing.accept(exchange);
            }
        } catch (Throwable e) {
            answerFault(e, exchange);
        }
    }

    /** Whether a route fits, which has answered then. */
    private boolean answers(Exchange exchange, String method) throws Exception {
        Route route = route(method, exchange);
        if (route == null) {
            return false;
        }
        route.answering.answer(exchange);
        return true;
    }

    /** HEAD asks whether there is something: nothing is worked out for it. */
    private boolean isOnlyLookedFor(Exchange exchange) {
        return HttpMethod.HEAD.is(exchange.method()) && route(HttpMethod.GET.asString(), exchange) != null;
    }

    private @Nullable Route route(String method, Exchange exchange) {
        for (Route route : routes) {
            Map<String, String> parameters = route.method.equals(method) ? route.template.match(exchange.path()) : null;
            if (parameters != null) {
                exchange.setParameters(parameters);
                return route;
            }
        }
        return null;
    }

    private void answerFault(Throwable thrown, Exchange exchange) {
        for (Class<?> kind = thrown.getClass(); kind != null; kind = kind.getSuperclass()) {
            BiConsumer<Throwable, Exchange> answering = faults.get(kind);
            if (answering != null) {
                answering.accept(thrown, exchange);
                return;
            }
        }
        exchange.setStatus(HttpStatus.INTERNAL_SERVER_ERROR_500);
    }
}
