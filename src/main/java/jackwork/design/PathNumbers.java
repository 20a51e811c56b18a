package jackwork.design;

import jackwork.stock.Basis;
import jackwork.stock.Uncertain;
import java.util.LinkedHashMap;
import java.util.Map;

/** Every number with its interval that a record and those in it hold, by its path as it is written: {@code laser.price}. */
public final class PathNumbers {

    private PathNumbers() {}

    /** Yes and no are 1 and 0; what the file leaves out is not there. */
    public static Map<String, Uncertain> of(Record record) {
        Map<String, Uncertain> numbers = new LinkedHashMap<>();
        Walk.over(record, "", (path, entry, word, value) -> {
            if (value instanceof Uncertain number) {
                numbers.put(path, number);
            } else if (value instanceof Boolean truth) {
                double number = truth ? 1 : 0;
                numbers.put(path, new Uncertain(number, number, number, "yes or no", Basis.MEASURED, "workshop.yaml"));
            }
        });
        return numbers;
    }
}
