package jackwork.design;

import java.util.List;
import java.util.stream.Collectors;

/** Files of a design that cannot be used as they are; carries every complaint, in the order of the files. */
public final class DesignException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient List<Problem> problems;

    DesignException(List<Problem> problems) {
        super(problems.stream().map(Problem::toString).collect(Collectors.joining("\n")));
        this.problems = List.copyOf(problems);
    }

    /** One complaint about a whole file. */
    public static DesignException of(String file, String message) {
        return new DesignException(List.of(new Problem(file, 0, 0, message)));
    }

    public List<Problem> problems() {
        return problems;
    }
}
