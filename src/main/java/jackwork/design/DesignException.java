package jackwork.design;

import java.util.List;
import java.util.stream.Collectors;

/** Files of a design that cannot be used as they are; carries every complaint, in the order of the files. */
public final class DesignException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient List<Problem> problems;

    /** More than these nobody reads in one go. */
    private static final int MOST_TOLD = 100;

    DesignException(List<Problem> problems) {
        super(words(problems));
        this.problems = List.copyOf(problems);
    }

    private static String words(List<Problem> problems) {
        String told = problems.stream().limit(MOST_TOLD).map(Problem::toString).collect(Collectors.joining("\n"));
        int more = problems.size() - MOST_TOLD;
        return more > 0 ? told + "\nand " + more + " more complaints; mend these first" : told;
    }

    /** One complaint about a whole file. */
    public static DesignException of(String file, String message) {
        return new DesignException(List.of(new Problem(file, 0, 0, message)));
    }

    public List<Problem> problems() {
        return problems;
    }
}
