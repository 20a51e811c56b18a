package jackwork.app.core;

import java.io.IOException;
import java.nio.file.Path;

/** A program that makes a workshop one of today's and takes that back, again and again. */
final class RenewingChild {

    private RenewingChild() {}

    /** @param arguments the workshop */
    public static void main(String[] arguments) throws IOException {
        Renewal renewal = new Renewal(Path.of(arguments[0]));
        for (int i = 0; i < 1_000_000; i++) {
            renewal.renew();
            System.out.println("made");
            renewal.takeBack();
            System.out.println("back");
        }
    }
}
