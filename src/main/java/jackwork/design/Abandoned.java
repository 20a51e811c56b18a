package jackwork.design;

import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Names of unfinished files and folders: they say which program makes them, so that those of a killed one are known. */
public final class Abandoned {

    private static final Pattern MARK = Pattern.compile("\\.making-(\\d{1,18})-\\d+(\\.|$)");
    private static final AtomicLong NUMBER = new AtomicLong();

    private Abandoned() {}

    /** A part of a name that no other unfinished file has. */
    public static String mark() {
        return "making-" + ProcessHandle.current().pid() + "-" + NUMBER.incrementAndGet();
    }

    /** Whether it has such a name, and the program that it was made by is no more. */
    public static boolean isAbandoned(Path file) {
        Matcher mark = MARK.matcher(String.valueOf(file.getFileName()));
        return mark.find()
                && ProcessHandle.of(Long.parseLong(mark.group(1)))
                        .filter(ProcessHandle::isAlive)
                        .isEmpty();
    }
}
