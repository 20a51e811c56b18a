package jackwork.design;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * The unit a bare number is in. The file may also say it ({@code 0.5 in}, {@code 12 mm},
 * {@code 14 deg}); inches become mm on reading.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.RECORD_COMPONENT, ElementType.FIELD, ElementType.METHOD})
@interface Unit {
    /** One of mm, deg, g, N, mm/s, or 1 for a pure number. */
    String value();
}
