package jackwork.layout;

/** The best layout found so far, shared by searches side by side. */
final class Best {

    private Search.Found found;

    Best(Search.Found first) {
        found = first;
    }

    synchronized Search.Found get() {
        return found;
    }

    /** Whether it was better than all before. */
    synchronized boolean offer(Search.Found other) {
        boolean better = other.betterThan(found);
        if (better) {
            found = other;
        }
        return better;
    }
}
