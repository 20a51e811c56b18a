package jackwork.motion.model;

/** Keeps something between two bounds: a row that only pushes for each. */
abstract class Stop extends Joint {

    Stop(String name) {
        super(name);
    }

    @Override
    public int rows() {
        return 2;
    }

    @Override
    public boolean pushesOnly(int row) {
        return true;
    }

    @Override
    String what(int row) {
        return "stop " + name();
    }
}
