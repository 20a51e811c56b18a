package jackwork.cli;

/** A port as typed. */
final class Port {

    private static final int MOST = 65_535;

    private Port() {}

    /** @param port 0 for none typed */
    static int checked(int port) {
        if (port < 0 || port > MOST) {
            throw new BadInputException("--port reads " + port + ", expected 1 to " + MOST);
        }
        return port;
    }
}
