package jackwork;

import java.util.Comparator;
import org.junit.jupiter.api.ClassDescriptor;
import org.junit.jupiter.api.ClassOrderer;
import org.junit.jupiter.api.ClassOrdererContext;

/** The browser's tests take longest, then those of the server: begun first, none is waited for at the end. */
public final class LongestFirst implements ClassOrderer {

    @Override
    public void orderClasses(ClassOrdererContext context) {
        context.getClassDescriptors()
                .sort(Comparator.comparing((ClassDescriptor one) -> !isOfBrowser(one))
                        .thenComparing(
                                one -> !one.getTestClass().getPackageName().endsWith(".web"))
                        .thenComparing(one -> one.getTestClass().getName()));
    }

    private static boolean isOfBrowser(ClassDescriptor one) {
        return one.getTestClass().getSimpleName().endsWith("BrowserTest");
    }
}
