package jackwork.design;

import jackwork.stock.Basis;
import jackwork.stock.Uncertain;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Every number that a record and those in it hold, by its path as it is written: {@code laser.price}. */
public final class PathNumbers {

    private PathNumbers() {}

    /** Yes and no are 1 and 0; what the file leaves out is not there. */
    public static Map<String, Uncertain> of(Record record) {
        Map<String, Uncertain> numbers = new LinkedHashMap<>();
        add("", record, numbers);
        return numbers;
    }

    private static void add(String path, @Nullable Object value, Map<String, Uncertain> numbers) {
        if (value instanceof Uncertain number) {
            numbers.put(path, number);
        } else if (value instanceof Boolean truth) {
            double number = truth ? 1 : 0;
            numbers.put(path, new Uncertain(number, number, number, "yes or no", Basis.MEASURED, "workshop.yaml"));
        } else if (value instanceof Map<?, ?> map) {
            map.forEach((key, item) -> add(below(path, String.valueOf(key)), item, numbers));
        } else if (value instanceof Record record) {
            for (RecordComponent component : record.getClass().getRecordComponents()) {
                add(below(path, Binder.key(component)), read(record, component), numbers);
            }
        }
    }

    private static String below(String path, String key) {
        return path.isEmpty() ? key : path + "." + key;
    }

    static @Nullable Object read(Record record, RecordComponent component) {
        try {
            Method accessor = component.getAccessor();
            accessor.setAccessible(true);
            return accessor.invoke(record);
        } catch (IllegalAccessException | InvocationTargetException e) {
            throw new IllegalStateException(record.getClass() + " hides its " + component.getName(), e);
        }
    }
}
