package jackwork.web;

import io.javalin.config.RoutesConfig;

/** The addresses of one room of the page: one file each, and one line in {@link PageServer}. */
interface Routes {

    void add(RoutesConfig routes);
}
