package jackwork.design;

import java.util.List;
import java.util.ServiceLoader;

/** The registry of joints, in the order of its rows. */
public final class JointKinds {

    private static final List<JointKind<?>> ALL = load();

    private JointKinds() {}

    public static List<JointKind<?>> all() {
        return ALL;
    }

    /** @throws IllegalStateException when no row names that entry: our fault, not the maker's */
    static JointKind<?> of(Class<? extends JointEntry> entry) {
        return ALL.stream()
                .filter(kind -> kind.entry() == entry)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no row of the registry names " + entry));
    }

    @SuppressWarnings({"rawtypes", "unchecked"})
    private static List<JointKind<?>> load() {
        return (List) ServiceLoader.load(JointKind.class, JointKind.class.getClassLoader()).stream()
                .map(ServiceLoader.Provider::get)
                .toList();
    }
}
