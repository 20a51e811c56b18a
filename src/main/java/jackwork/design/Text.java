package jackwork.design;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** Free text: the maker's own words, a file's name, a colour. It names nothing, whatever it reads like. */
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.RECORD_COMPONENT, ElementType.FIELD, ElementType.METHOD})
@interface Text {

    /** Whether it may be there and say nothing. */
    boolean blank() default false;
}
