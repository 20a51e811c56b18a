package jackwork.design;

import java.lang.annotation.ElementType;
import java.lang.annotation.Repeatable;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** A key that files once had here; who still writes it is told what became of it. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
@Repeatable(Former.All.class)
@interface Former {
    String key();

    /** What became of it, as the rest of a sentence about the key. */
    String now();

    /** The number of {@code workshop.yaml} that decides it instead; empty when none does. */
    String by() default "";

    /** Of one record. */
    @Retention(RetentionPolicy.RUNTIME)
    @Target(ElementType.TYPE)
    @interface All {
        Former[] value();
    }
}
